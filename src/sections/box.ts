import { level, UP } from '../base/place';
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
    const ahead = level(direction);
    let least = Infinity;
    let most = -Infinity;
    const to = (a: number, b: number): void => {
      if (a < least) least = a;
      if (b > most) most = b;
    };
    for (const part of parts) to(...extentOf(part, ahead));
    for (const [x, y] of leftOn) to(x * direction[0] + y * direction[1], x * direction[0] + y * direction[1]);
    return most - least;
  };
  let low = Infinity;
  let high = -Infinity;
  for (const part of parts) {
    const upright = extentOf(part, UP);
    low = Math.min(low, upright[0]);
    high = Math.max(high, upright[1]);
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
