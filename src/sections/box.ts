import { extentOf } from '../base/solid/extent';
import type { Vec2 } from '../vocabulary/geometry';
import type { Part } from '../vocabulary/part';
import type { Rod, RodRun } from '../vocabulary/rod';
import type { Section } from '../vocabulary/section';

/** The pieces of one run, from join to join. */
export function piecesOf(
  run: RodRun,
): readonly { readonly section: string; readonly from: number; readonly to: number }[] {
  if (!run.sound) return [];
  const lines = [run.left.frameAt, ...run.joins.map((j) => j.x), run.right.frameAt];
  return run.sections.map((section, i) => ({ section, from: lines[i], to: lines[i + 1] }));
}

/** The run along which a section is longest. */
const longest = (rod: Rod, pieces: Section['pieces']): RodRun => {
  const best = [...pieces].sort((a, b) => b.to - b.from - (a.to - a.from))[0];
  return rod.runs.find((r) => r.id === best?.run) ?? rod.runs[0];
};

/** The box round the parts, its length along the longest run of theirs; what is left on to be scribed at a wall leaves the shop too. */
export function boxOf(parts: readonly Part[], rod: Rod, pieces: Section['pieces']): Section['size'] {
  const { along, front } = longest(rod, pieces);
  const leftOn = pieces.flatMap((piece) =>
    scribePoints(
      rod.runs.find((r) => r.id === piece.run),
      piece,
    ),
  );
  const reach = (direction: Vec2): number => {
    let [least, most] = [Infinity, -Infinity];
    for (const part of parts) {
      const [a, b] = extentOf(part, [direction[0], direction[1], 0]);
      least = Math.min(least, a);
      most = Math.max(most, b);
    }
    for (const [x, y] of leftOn) {
      least = Math.min(least, x * direction[0] + y * direction[1]);
      most = Math.max(most, x * direction[0] + y * direction[1]);
    }
    return most - least;
  };
  let [low, high] = [Infinity, -Infinity];
  for (const part of parts) {
    const [a, b] = extentOf(part, [0, 0, 1]);
    low = Math.min(low, a);
    high = Math.max(high, b);
  }
  return { length: reach(along), depth: reach(front), height: high - low };
}

/** As far as a piece of a run reaches before it is scribed to a wall, on its frame line in plan. */
function scribePoints(run: RodRun | undefined, { from, to }: Section['pieces'][number]): readonly Vec2[] {
  if (!run) return [];
  const at = (x: number): Vec2 => [run.origin[0] + run.along[0] * x, run.origin[1] + run.along[1] * x];
  return [
    ...(run.left.scribe > 0 && from === run.left.frameAt ? [at(-run.left.scribe)] : []),
    ...(run.right.scribe > 0 && to === run.right.frameAt ? [at(run.length + run.right.scribe)] : []),
  ];
}

/** The pieces of runs that a section is made of. */
export const piecesIn = (id: string, rod: Rod): Section['pieces'] =>
  rod.runs.flatMap((run) =>
    piecesOf(run).flatMap(({ section, from, to }) => (section === id ? [{ run: run.id, from, to }] : [])),
  );
