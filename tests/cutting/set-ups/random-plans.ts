import type { CutSheet, CutTree, Leftover, PlacedOnSheet, Rect, SheetPlan } from '../../../src/vocabulary/cut-plan';
import type { SheetPiece, SheetProblem } from '../../../src/vocabulary/cut-problem';
import { leavesOf, stagesOf } from '../verifier/tree';

/** Chance that repeats: a linear congruential generator (Numerical Recipes, from memory). */
export function chance(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

export interface Planned {
  readonly problem: SheetProblem;
  readonly plan: SheetPlan;
}

const LEAST = { length: 300, width: 100 };
const leftover = (rect: Rect): Leftover => {
  const [long, short] = [Math.max(rect.length, rect.width), Math.min(rect.length, rect.width)];
  return { kind: 'left', ...rect, reusable: long >= LEAST.length && short >= LEAST.width };
};

/**
 * Sheets parted at random, and the problem that they answer: strips of few different sizes, so that settings come again; some leave sawdust,
 * some a leftover, some nothing. Not a good plan, but one that can be cut.
 */
export function anySheets(seed: number, sheets = 3): Planned {
  const pick = chance(seed);
  const kerf = [0, 3, 3.2, 4][pick(4)];
  const trim = [0, 5, 10][pick(3)];
  const trimsFree = pick(2) === 1;
  const stock = { length: 2440, width: 1220, price: 40 };
  const whole = { x: trim, y: trim, length: stock.length - 2 * trim, width: stock.width - 2 * trim };
  const pieces: (SheetPiece & { quantity: number })[] = [];

  function place(rect: Rect): PlacedOnSheet {
    const turned = pick(3) === 0;
    const [length, width] = turned ? [rect.width, rect.length] : [rect.length, rect.width];
    let piece = pieces.findIndex((one) => one.length === length && one.width === width);
    if (piece < 0) piece = pieces.push({ length, width, quantity: 0, turnable: true }) - 1;
    pieces[piece] = { ...pieces[piece], quantity: pieces[piece].quantity + 1 };
    return { kind: 'piece', ...rect, piece, turned };
  }

  function part(rect: Rect, way: 'along' | 'across', depth: number): CutTree {
    const side = way === 'across' ? rect.length : rect.width;
    if (depth === 0 || side < 120 || pick(5) === 0) return pick(6) === 0 ? leftover(rect) : place(rect);
    const at = (from: number, size: number): Rect =>
      way === 'across' ? { ...rect, x: rect.x + from, length: size } : { ...rect, y: rect.y + from, width: size };
    const next = way === 'across' ? 'along' : 'across';
    const parts: CutTree[] = [];
    let from = 0;
    for (let n = 1 + pick(4); n > 0; n--) {
      const size = Math.round(side * [0.15, 0.2, 0.25, 0.3, 0.4][pick(5)]);
      if (from + size + 2 * kerf + 20 > side) break;
      parts.push(part(at(from, size), next, depth - 1));
      from += size + kerf;
    }
    if (parts.length === 0) return place(rect);
    const rest = side - from;
    const end = pick(3);
    if (end === 0) parts.push(part(at(from, rest), next, depth - 1));
    else if (end === 1) parts.push(leftover(at(from, rest)));
    else {
      const last = part(at(from, rest - kerf / 2), next, depth - 1);
      // What is left over reaches to the end.
      parts.push(last.kind === 'left' ? leftover(at(from, rest)) : last);
    }
    return { kind: 'cut', ...rect, way, parts };
  }

  const cut: CutSheet[] = [];
  while (cut.length < sheets) {
    const before = pieces.map((one) => ({ ...one }));
    const tree = part(whole, pick(2) ? 'along' : 'across', 4);
    const on = leavesOf(tree);
    if (on.length > 0) cut.push({ stock: 0, tree, pieces: on, stages: stagesOf(tree, false) });
    else pieces.splice(0, pieces.length, ...before);
  }
  return {
    problem: { kind: 'sheets', kerf, trim, trimsFree, stock: [stock], pieces, leastOffcut: LEAST },
    plan: {
      kind: 'sheets',
      cost: 40 * cut.length,
      bound: 0,
      proven: false,
      used: [{ stock: 0, count: cut.length }],
      unplaced: [],
      sheets: cut,
    },
  };
}
