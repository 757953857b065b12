import { tenth } from '../base/tenth';
import type { Backing, CornerFillet, RunFraming } from '../vocabulary/backing';
import type { Finding } from '../vocabulary/finding';
import type { Rod, RodRun } from '../vocabulary/rod';
import { movedFindings } from './bands';
import { frameCorner } from './corner';
import type { Kept } from './keep-outs';
import { layNoggins } from './noggins';
import { standStuds } from './studs';

export interface Framed {
  readonly framing: readonly RunFraming[];
  /** Studs that are needed and that an opening leaves no place. */
  readonly kept: readonly Kept[];
  readonly findings: readonly Finding[];
}

/** Meets the backing that the rooms ask for with studs and noggins, run by run. A run that is not sound gets none. */
export function frameUp(rod: Rod, backing: readonly Backing[]): Framed {
  const findings: Finding[] = [];
  const kept: Kept[] = [];
  const asked = byRun(backing);
  const framing = rod.runs
    .filter((run) => run.sound)
    .map((run) => {
      const mine = asked.get(run.id) ?? [];
      const from = run.left.frameAt;
      const to = run.right.frameAt;
      const lines = [from, ...run.joins.map((j) => j.x), to];
      const plates = lines.slice(1).map((end, i) => ({ from: lines[i], to: end }));
      const keepOuts = mine.filter((b) => b.kind === 'keep-out');
      const studWishes = mine.filter((b) => b.kind === 'stud');
      const nogginWishes = mine.filter((b) => b.kind === 'noggin');
      // Each section's frame is built for itself: its ends, its studs, its module.
      const stood = plates.map((plate) =>
        standStuds(
          run.id,
          plate.from,
          plate.to,
          rod.timber,
          studWishes.filter(({ x }) => x >= plate.from && x <= plate.to),
          keepOuts.filter((k) => k.from < plate.to && k.to > plate.from),
        ),
      );
      const laid = stood.map((s, i) =>
        layNoggins(
          s.studs,
          rod.timber,
          { low: rod.frameLow, high: rod.frameHeight },
          nogginWishes.filter(({ from: a, to: b }) => a < plates[i].to && b > plates[i].from),
          keepOuts,
          s.trimmed,
        ),
      );
      findings.push(
        ...stood.flatMap((s) => s.findings),
        ...movedFindings(
          run.id,
          laid.flatMap((l) => l.moved),
        ),
        ...packed(run, rod.timber.depth),
      );
      kept.push(...stood.flatMap((s) => s.kept));
      const studs = stood.flatMap((s) => s.studs);
      const noggins = laid.flatMap((l) => l.noggins);
      return { run: run.id, from, to, plates, studs, noggins, fillets: filletsOf(run, rod.timber.depth) };
    });
  return { framing, kept, findings };
}

function byRun(backing: readonly Backing[]): ReadonlyMap<string, readonly Backing[]> {
  const runs = new Map<string, Backing[]>();
  for (const b of backing) {
    const mine = runs.get(b.run);
    if (mine) mine.push(b);
    else runs.set(b.run, [b]);
  }
  return runs;
}

/** The corner fillets that this run holds, in its own coordinates. */
function filletsOf(run: RodRun, depth: number): readonly CornerFillet[] {
  return (['left', 'right'] as const).flatMap((side) => {
    const end = run[side];
    if (end.kind !== 'corner') return [];
    const at = ([s, d]: readonly [number, number]): readonly [number, number] => [
      side === 'left' ? s : run.length - s,
      d,
    ];
    return frameCorner(end.deflectionDeg, depth)
      .wedges.filter((wedge) => (wedge.holder === 'through') === end.through)
      .map(({ points: [a, b, c] }) => ({ points: [at(a), at(b), at(c)] as const }));
  });
}

/** Less than this is taken up in fixing (common practice, no source). */
const LEAST_PACKING = 0.5;

/** The thin wedge that a corner a little off square leaves between the frames; said once, by the run on the corner's left. */
function packed({ id, right }: RodRun, depth: number): readonly Finding[] {
  if (right.kind !== 'corner') return [];
  const { packing } = frameCorner(right.deflectionDeg, depth);
  if (packing < LEAST_PACKING) return [];
  return [
    {
      severity: 'note',
      rule: 'corner-packing',
      subject: { run: id },
      value: packing,
      message: `Between the frames of runs ${id} and ${right.neighbour} the corner leaves a wedge of ${tenth(packing)} mm at its thick end.`,
      source: 'geometry of the corner',
      remedy: 'Pack it when the frames are joined.',
    },
  ];
}
