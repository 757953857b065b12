import { level, UP } from '../base/place';
import { cover, lengthOf, nothing } from '../base/reach';
import { widenBy } from '../base/solid/extent';
import { dot2 } from '../base/vec';
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
  const [long, deep, high] = [nothing(), nothing(), nothing()];
  const [ahead, forward] = [level(along), level(front)];
  for (const part of parts) {
    widenBy(long, part, ahead);
    widenBy(deep, part, forward);
    widenBy(high, part, UP);
  }
  for (const at of leftOn) {
    const [x, d] = [dot2(at, along), dot2(at, front)];
    cover(long, x, x);
    cover(deep, d, d);
  }
  return { length: lengthOf(long), depth: lengthOf(deep), height: lengthOf(high) };
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

/** The pieces of runs that each section is made of; sections from left to right. */
export function piecesBySection(rod: Rod): ReadonlyMap<string, Section['pieces']> {
  const sections = new Map<string, Section['pieces'][number][]>();
  for (const run of rod.runs)
    for (const { section, from, to } of piecesOf(run)) {
      const piece = { run: run.id, from, to };
      const mine = sections.get(section);
      if (mine) mine.push(piece);
      else sections.set(section, [piece]);
    }
  return sections;
}
