import type { PlacedOnSheet, Rect } from '../../../src/vocabulary/cut-plan';
import type { SheetProblem } from '../../../src/vocabulary/cut-problem';
import type { SheetCut } from '../../../src/vocabulary/set-up';

const keyOf = ({ x, y, length, width }: Rect): string =>
  [x, y, length, width].map((mm) => (mm + 0).toFixed(4)).join(' ');

/** As `expect`, which is slow where it is asked a thousand times. */
function must(holds: boolean, said: string): void {
  if (!holds) throw new Error(said);
}
const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

/**
 * Makes the cuts one after the other on a sheet as bought, by what is said of each – fence, edge, line – and by nothing of the tree: every panel
 * must lie on the bench when it is cut, what is between fence and blade must be as wide as the fence, and what is said to come free must be there.
 * Returns the pieces that came free.
 */
export function replay(problem: SheetProblem, stock: number, cuts: readonly SheetCut[]): readonly PlacedOnSheet[] {
  const { length, width, trim = problem.trim } = problem.stock[stock];
  const bench = new Set([keyOf({ x: 0, y: 0, length, width })]);
  const free: PlacedOnSheet[] = [];
  for (const { panel, way, fence, against, line, kerf, takes, frees, length: long } of cuts) {
    must(bench.delete(keyOf(panel)), `panel ${keyOf(panel)} does not lie on the bench`);
    const across = way === 'across';
    const [from, size] = across ? [panel.x, panel.length] : [panel.y, panel.width];
    const at = across ? line.x1 : line.y1;
    must((across ? line.x2 : line.y2) === at, 'a line is not straight');
    must(near(long, across ? panel.width : panel.length), 'a cut does not go from edge to edge');
    const slice = (low: number, high: number): Rect =>
      across ? { ...panel, x: low, length: high - low } : { ...panel, y: low, width: high - low };
    // The blade runs on the side of the line that is not against the fence.
    const low = against.side === 'low';
    const [kept, rest] = low
      ? [slice(from, at), slice(at + problem.kerf, from + size)]
      : [slice(at, from + size), slice(from, at - problem.kerf)];
    const blade = low ? slice(at, at + problem.kerf) : slice(at - problem.kerf, at);
    must(keyOf(kerf) === keyOf(blade), 'the kerf is not beside the line');
    if (fence === undefined) must(takes === trim, 'a trim takes off something else');
    else must(near(fence, across ? kept.length : kept.width), `the fence stands at ${fence}`);
    for (const one of [kept, rest]) if (one.length > 1e-6 && one.width > 1e-6) bench.add(keyOf(one));
    for (const one of frees) {
      const rect = one.kind === 'piece' ? one.piece : one.rect;
      must(bench.has(keyOf(rect)), `${one.kind} ${keyOf(rect)} has not come free`);
      if (one.kind === 'piece') free.push(one.piece);
    }
  }
  return free;
}

export const sorted = (pieces: readonly PlacedOnSheet[]): readonly string[] =>
  pieces.map((one) => `${one.piece} ${one.turned} ${keyOf(one)}`).sort();
