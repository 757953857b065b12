import { type AlongBay, alongBay } from '../../base/along-bay';
import { intoBays, reachBetween } from '../../base/foot';
import { rectangle } from '../../base/outline';
import { lying } from '../../base/stuff';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Finding } from '../../vocabulary/finding';
import type { PartDraft } from '../../vocabulary/part';
import type { RodRun } from '../../vocabulary/rod';
import type { Bench, Made } from '../../vocabulary/room';
import { noRail, railNoLength, railPastMitre, railProud, railTooLong } from './findings';
import type { Decisions, Frame } from './frames';
import { onSkin } from './holds';

/** Above and below a rail at least this much of the field must show, mm (common practice, no source). */
const LEAST_MARGIN = 10;

/** Shorter than this it is no rail, mm (common practice, no source). */
const LEAST_RAIL = 30;

/** A flat rail between two rows of one bay. */
export interface Rail extends AlongBay {
  readonly run: RodRun;
  readonly where: string;
  readonly low: number;
  readonly high: number;
  readonly fault?: Finding;
}

/** The rails between rows that are both made, in the middle between them. None where the space does not hold them. */
export function railsOf(
  decisions: Decisions,
  frames: readonly Frame[],
  { rod, book }: Pick<Bench, 'rod' | 'book'>,
): readonly Rail[] {
  if (!decisions.rail || lacksRoom(decisions)) return [];
  const { thickness } = book.item('sheet', decisions.railSheet);
  const { inner } = rod.layers.panel;
  return frames.flatMap((lower, i): Rail[] => {
    const upper = frames[i + 1];
    if (upper?.bay !== lower.bay || lower.fault || upper.fault) return [];
    const { run, bay } = lower;
    const where = `bay ${bay.index + 1}, above row ${lower.row + 1}`;
    const middle = (lower.high + upper.low) / 2;
    // A strip that covers a join stands at the pillar: the rail stops at the strip.
    const covers = run.joins.filter((j) => j.behind === 'cover' && j.coverFrom < bay.to && j.coverTo > bay.from);
    const [low, high] = [middle - decisions.railHeight / 2, middle + decisions.railHeight / 2];
    const heads = reachBetween(intoBays(rod), low, high);
    const from = Math.max(bay.from + heads, ...covers.filter((j) => j.coverTo < lower.to).map((j) => j.coverTo));
    const to = Math.min(bay.to - heads, ...covers.filter((j) => j.coverFrom > lower.from).map((j) => j.coverFrom));
    const piece = alongBay(run, { ...bay, from, to }, { inner, outer: inner + thickness });
    const fault =
      piece.past > SAME_LENGTH
        ? railPastMitre(run.id, where, piece.past)
        : piece.shortest < LEAST_RAIL
          ? railNoLength(run.id, where, piece.shortest, LEAST_RAIL)
          : undefined;
    return [{ ...piece, run, where, low, high, ...(fault ? { fault } : {}) }];
  });
}

const lacksRoom = ({ rail, rows, rowGap, railHeight }: Decisions): boolean =>
  rail && rows > 1 && rowGap < railHeight + 2 * LEAST_MARGIN;

export function railParts(decisions: Decisions, rails: readonly Rail[], { rod, book }: Bench): Made {
  const findings: Finding[] = lacksRoom(decisions)
    ? [noRail(decisions.rowGap, decisions.railHeight, LEAST_MARGIN)]
    : [];
  if (rails.length === 0) return { drafts: [], findings };
  const { thickness, length } = book.item('sheet', decisions.railSheet);
  const section = rectangle(decisions.railHeight, thickness);
  const { inner } = rod.layers.panel;
  const pillars = (rod.layers.pillar?.outer ?? inner + thickness) - inner;
  if (thickness > pillars + SAME_LENGTH) findings.push(railProud(thickness, pillars));
  const drafts = rails.flatMap((rail): PartDraft[] => {
    if (rail.fault) {
      findings.push(rail.fault);
      return [];
    }
    const long = longPoint(rail, thickness);
    if (long > length + SAME_LENGTH) findings.push(railTooLong(rail.run.id, rail.where, long, length));
    return [
      {
        kind: 'panel',
        code: 'FL',
        name: 'flat rail',
        run: rail.run.id,
        material: decisions.railSheet,
        finish: 'paint',
        from: 'finished',
        edges: [],
        grooves: [],
        where: rail.where,
        holds: onSkin(thickness),
        ...(rail.meets ? { meets: rail.meets } : {}),
        ...lying(rail.run, section, { ...rail, d: inner, z: rail.low }),
      },
    ];
  });
  return { drafts, findings };
}

/** From long point to long point, mm. */
const longPoint = ({ from, to, fromPerOut, toPerOut }: AlongBay, thickness: number): number =>
  to - from + Math.max(0, toPerOut * thickness) + Math.max(0, -fromPerOut * thickness);
