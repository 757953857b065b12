import type { SheetPiece, SheetProblem } from '../../../src/vocabulary/cut-problem';
import { type Asked, bitsOf, copiesOf, largest, setsOf, unitsOf } from './cover';

/** A rectangle, kerf and all, from which a set can be cut; whatever is larger in both directions will do too. */
interface Box {
  readonly length: number;
  readonly width: number;
}
type Way = 'along' | 'across';

/** Sums of tenths come out this far off, at the most. */
const NOISE = 1e-6;

/**
 * Every way to cut a sheet, by all guillotine patterns of all sets of copies: for each set the smallest rectangles that hold it, built up from those of its
 * parts side by side. A kerf is added to every piece and to the sheet, and so vanishes. Stages two or more, or any.
 */
export function sheetWays(problem: SheetProblem): Asked {
  const { kerf, pieces, stock, trim } = problem;
  const copies = copiesOf(pieces);
  const boxes = boxesOf(copies, problem);
  const units = unitsOf(copies);
  const sets = setsOf(units);
  const ways = stock.map((sheet) => {
    const off = 2 * (sheet.trim ?? trim) - kerf - NOISE;
    const fits = ({ length, width }: Box): boolean => length <= sheet.length - off && width <= sheet.width - off;
    return largest(
      sets.filter((set) => boxes[set].some(fits)),
      units,
    );
  });
  return { problem, ways };
}

/** By set: the smallest boxes, whichever way is cut first. */
function boxesOf(
  copies: readonly SheetPiece[],
  { kerf, stages, trimsFree }: SheetProblem,
): readonly (readonly Box[])[] {
  const sides = copies.map(({ length, width, turnable }) => {
    const lying = { length: length + kerf, width: width + kerf };
    return turnable ? [lying, turned(lying)] : [lying];
  });
  if (stages === undefined) return anyStages(sides);
  let rows: Record<Way, readonly (readonly Box[])[]> = {
    along: strips(sides, trimsFree ?? false),
    across: strips(
      sides.map((ways) => ways.map(turned)),
      trimsFree ?? false,
    ).map((list) => list.map(turned)),
  };
  for (let stage = 2; stage <= stages; stage += 1)
    rows = { along: sideBySide(rows.across, 'along'), across: sideBySide(rows.along, 'across') };
  return rows.along.map((list, set) => smallest([...list, ...rows.across[set]]));
}

const turned = ({ length, width }: Box): Box => ({ length: width, width: length });

/** Two boxes next to one another: `across` the length they lie side by side, `along` it one above the other. */
const joined = (a: Box, b: Box, way: Way): Box =>
  way === 'across'
    ? { length: a.length + b.length, width: Math.max(a.width, b.width) }
    : { length: Math.max(a.length, b.length), width: a.width + b.width };

/** Those boxes that no other one fits into. */
function smallest(boxes: readonly Box[]): readonly Box[] {
  const rising = [...boxes].sort((a, b) => a.length - b.length || a.width - b.width);
  const kept: Box[] = [];
  for (const box of rising) if (kept.length === 0 || box.width < kept[kept.length - 1].width - NOISE) kept.push(box);
  return kept;
}

/** Any number of stages: a set is a piece, or two sets next to one another, either way. */
function anyStages(sides: readonly (readonly Box[])[]): readonly (readonly Box[])[] {
  const boxes: (readonly Box[])[] = [[]];
  for (let set = 1; set < 1 << sides.length; set += 1) {
    const one = bitsOf(set);
    const found: Box[] = one.length === 1 ? [...sides[one[0]]] : [];
    eachPart(set, (part) => {
      for (const a of boxes[part])
        for (const b of boxes[set & ~part]) found.push(joined(a, b, 'along'), joined(a, b, 'across'));
    });
    boxes.push(smallest(found));
  }
  return boxes;
}

/** Parts of a set that have its lowest member, and not all. */
function eachPart(set: number, take: (part: number) => void): void {
  const lowest = set & -set;
  const rest = set & ~lowest;
  for (let part = (rest - 1) & rest; rest > 0; part = (part - 1) & rest) {
    take(part | lowest);
    if (part === 0) return;
  }
}

/**
 * One stage, cut along: pieces one above the other in a column. Where a last cut to size counts, they are all as long as the column is; where it is
 * free, none is longer.
 */
function strips(sides: readonly (readonly Box[])[], trimsFree: boolean): readonly (readonly Box[])[] {
  return Array.from({ length: 1 << sides.length }, (_, set) => {
    if (set === 0) return [];
    const members = bitsOf(set).map((i) => sides[i]);
    const lengths = members.flatMap((ways) => ways.map(({ length }) => length));
    return smallest(
      lengths.flatMap((length): Box[] => {
        const widths = members.map((ways) =>
          Math.min(
            ...ways
              .filter((way) => (trimsFree ? way.length <= length + NOISE : Math.abs(way.length - length) < NOISE))
              .map(({ width }) => width),
          ),
        );
        const width = widths.reduce((sum, one) => sum + one, 0);
        return Number.isFinite(width) ? [{ length, width }] : [];
      }),
    );
  });
}

/** One stage more: sets that are cut the other way first, next to one another. */
function sideBySide(inner: readonly (readonly Box[])[], way: Way): readonly (readonly Box[])[] {
  const boxes: (readonly Box[])[] = [[]];
  for (let set = 1; set < inner.length; set += 1) {
    const found = [...inner[set]];
    eachPart(set, (part) => {
      for (const a of inner[part]) for (const b of boxes[set & ~part]) found.push(joined(a, b, way));
    });
    boxes.push(smallest(found));
  }
  return boxes;
}
