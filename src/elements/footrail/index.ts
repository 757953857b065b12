import { alongFace } from '../../base/place';
import type { Backing } from '../../vocabulary/backing';
import type { Obstacle } from '../../vocabulary/opening';
import type { Room } from '../../vocabulary/room';
import { restOf } from './bracket';
import { fields } from './fields';
import { bracketTop, layOut } from './layout';
import { parts } from './parts';

/** Screws stand this far in from a bracket's lower and upper edge, mm (common practice, no source). */
const SCREW_IN = 15;

/** A rail in front of the front to rest a foot on, on brackets in the bays. */
export const footrail: Room<typeof fields> = {
  kind: 'footrail',
  label: 'Foot rail',
  group: 'front',
  fields,
  demands: (decisions, book) =>
    decisions.wanted
      ? { heights: { footBracket: bracketTop(decisions, restOf(book.item('moulding', decisions.moulding).section)) } }
      : {},
  /** The brackets; the rail stands clear of the front. */
  obstacles(decisions, bench) {
    if (!decisions.wanted) return [];
    const { profile, rails } = layOut(decisions, bench);
    const { low, high, thick } = profile;
    return rails.flatMap(({ run, brackets }) =>
      brackets.map(
        (x, i): Obstacle => ({
          run: run.id,
          through: 'front',
          from: x - thick / 2,
          to: x + thick / 2,
          low,
          high,
          what: `bracket ${i + 1} of the foot rail`,
        }),
      ),
    );
  },
  /** Two noggins behind each bracket, near its lower and its upper edge. */
  backing(decisions, bench) {
    if (!decisions.wanted) return [];
    const { profile, rails } = layOut(decisions, bench);
    const { low, high, thick } = profile;
    return rails.flatMap(({ run, brackets }) =>
      brackets.flatMap((x) =>
        [low + SCREW_IN, high - SCREW_IN].map(
          (z): Backing => ({
            kind: 'noggin',
            run: run.id,
            z,
            from: x - thick / 2,
            to: x + thick / 2,
            reason: 'foot rail bracket',
          }),
        ),
      ),
    );
  },
  parts,
  marks: (run, made) =>
    made
      .filter((p) => p.code === 'FB')
      .map((p) => ({
        id: `${p.mark}-middle`,
        x: alongFace(run, p.place.origin) - p.size.thickness / 2,
        lane: 'front' as const,
        reason: 'foot rail bracket, middle',
        part: p.mark,
      })),
};
