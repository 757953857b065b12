import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { treeOf } from '../../../src/cutting/by-hand/index';
import type { PlacedOnSheet, Rect } from '../../../src/vocabulary/cut-plan';
import { SEED } from '../../base/seed';
import { anySheets, chance } from '../set-ups/random-plans';
import { verify } from '../verifier/index';
import { leavesOf, stagesOf } from '../verifier/tree';

const KERF = 4;
const SHEET = { x: 0, y: 0, length: 300, width: 200 };
const TERMS = { kerf: KERF, leastOffcut: [50, 50] as const };
const on = (piece: number, x: number, y: number, length: number, width: number): PlacedOnSheet => ({
  kind: 'piece',
  x,
  y,
  length,
  width,
  piece,
  turned: false,
});

/** Fewest stages by trying every cut there is, one after the other; Infinity: it can't be cut. Cuts may be made anywhere where they meet no piece. */
function fewestStages(
  pieces: readonly PlacedOnSheet[],
  rect: Rect,
  before?: 'along' | 'across',
  known = new Map<string, number>(),
): number {
  const [only] = pieces;
  if (!only || (pieces.length === 1 && only.length === rect.length && only.width === rect.width)) return 0;
  const key = `${before} ${rect.x} ${rect.y} ${rect.length} ${rect.width}`;
  let best = known.get(key);
  if (best !== undefined) return best;
  best = Number.POSITIVE_INFINITY;
  for (const way of ['along', 'across'] as const) {
    const [near, size] = way === 'across' ? (['x', 'length'] as const) : (['y', 'width'] as const);
    const from = rect[near];
    const end = rect[near] + rect[size];
    // The blade just beyond a piece, or just before one.
    const edges = pieces.flatMap((p) => [p[near] + p[size], p[near] - KERF]);
    for (const at of new Set(edges.filter((e) => e >= from && e < end))) {
      const low = pieces.filter((p) => p[near] + p[size] <= at);
      const high = pieces.filter((p) => p[near] >= at + KERF);
      if (low.length + high.length < pieces.length) continue;
      const sides = [
        { own: low, rect: { ...rect, [size]: at - from } },
        { own: high, rect: { ...rect, [near]: at + KERF, [size]: end - at - KERF } },
      ];
      const inner = Math.max(...sides.map((side) => fewestStages(side.own, side.rect, way, known)));
      best = Math.min(best, inner + (way === before ? 0 : 1));
    }
  }
  known.set(key, best);
  return best;
}

describe('a tree of cuts from rectangles', () => {
  it('of two strips with pieces side by side: two stages', () => {
    // 96 + 4 + 100 = 200; 148 + 4 + 148 = 300; 200 + 4 + 96 = 300.
    const tree = treeOf([on(0, 0, 0, 148, 96), on(1, 152, 0, 148, 96), on(2, 0, 100, 200, 100)], SHEET, TERMS);
    expect(tree).toEqual({
      kind: 'cut',
      ...SHEET,
      way: 'along',
      parts: [
        {
          kind: 'cut',
          x: 0,
          y: 0,
          length: 300,
          width: 96,
          way: 'across',
          parts: [on(0, 0, 0, 148, 96), on(1, 152, 0, 148, 96)],
        },
        {
          kind: 'cut',
          x: 0,
          y: 100,
          length: 300,
          width: 100,
          way: 'across',
          parts: [on(2, 0, 100, 200, 100), { kind: 'left', x: 204, y: 100, length: 96, width: 100, reusable: true }],
        },
      ],
    });
  });

  it('of four pieces about a fifth there is none: no cut goes through', () => {
    const wheel = [
      on(0, 0, 0, 196, 60),
      on(1, 200, 0, 100, 136),
      on(2, 104, 140, 196, 60),
      on(3, 0, 64, 100, 136),
      on(4, 104, 64, 92, 72),
    ];
    expect(treeOf(wheel, SHEET, TERMS)).toBeUndefined();
    expect(treeOf(wheel.slice(1), SHEET, TERMS)).toBeDefined();
  });

  it('closes gaps too narrow to leave anything, and keeps others as leftovers', () => {
    const gap = (x: number) => treeOf([on(0, 0, 0, 100, 200), on(1, x, 0, 100, 200)], SHEET, TERMS);
    const told = (x: number) => {
      const tree = gap(x);
      return tree?.kind === 'cut' ? tree.parts.map((part) => `${part.kind} ${part.x} ${part.length}`) : [];
    };
    expect(told(107)).toEqual(['piece 0 100', 'piece 104 100', 'left 208 92']);
    expect(told(120)).toEqual(['piece 0 100', 'left 104 12', 'piece 120 100', 'left 224 76']);
    expect(gap(103)).toBeUndefined();
  });

  it('minds the longest cut', () => {
    const one = [on(0, 0, 0, 100, 100)];
    const ways = [400, 250, 150].map((longestCut) => treeOf(one, SHEET, { ...TERMS, longestCut }));
    // 300 along or 200 across come first; where only 250 can be cut, across; and where only 150, nothing.
    expect(ways.map((tree) => (tree?.kind === 'cut' ? tree.way : undefined))).toEqual(['across', 'across', undefined]);
  });

  it(`is found wherever there is one, in the fewest stages (SEED=${SEED})`, () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2 ** 31 - 1 }), (seed) => {
        const pick = chance(seed);
        const pieces: PlacedOnSheet[] = [];
        for (let tries = 0; tries < 12 && pieces.length < 5; tries++) {
          // Places and sizes in steps of 20, so that gaps are 0 or more than two kerfs; a kerf is taken off each size.
          const [length, width] = [20 * (2 + pick(6)) - KERF, 20 * (2 + pick(4)) - KERF];
          const piece = on(0, 20 * pick(15), 20 * pick(10), length, width);
          const apart = (a: Rect, b: Rect): boolean =>
            a.x + a.length + KERF <= b.x ||
            b.x + b.length + KERF <= a.x ||
            a.y + a.width + KERF <= b.y ||
            b.y + b.width + KERF <= a.y;
          const inside = piece.x + length <= SHEET.length && piece.y + width <= SHEET.width;
          if (inside && pieces.every((other) => apart(piece, other))) pieces.push(piece);
        }
        const tree = treeOf(pieces, SHEET, TERMS);
        const least = fewestStages(pieces, SHEET);
        expect(tree ? stagesOf(tree, false) : Number.POSITIVE_INFINITY).toBe(least);
        if (tree) expect(leavesOf(tree)).toHaveLength(pieces.length);
      }),
      { numRuns: 120, seed: SEED },
    );
  });

  it(`of sheets that were cut is found again, in no more stages, and stands up to the verifier (SEED=${SEED})`, () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2 ** 31 - 1 }), (seed) => {
        const { problem, plan } = anySheets(seed, 1);
        const terms = { kerf: problem.kerf, trimsFree: problem.trimsFree, leastOffcut: [300, 100] as const };
        const [sheet] = plan.sheets;
        const tree = treeOf(sheet.pieces, sheet.tree, terms);
        expect(tree).toBeDefined();
        if (!tree) return;
        const free = problem.trimsFree ?? false;
        expect(stagesOf(tree, free)).toBeLessThanOrEqual(stagesOf(sheet.tree, free));
        const again = { ...plan, sheets: [{ stock: 0, tree, pieces: leavesOf(tree), stages: stagesOf(tree, false) }] };
        expect(verify(problem, again)).toEqual([]);
      }),
      { numRuns: 40, seed: SEED },
    );
  });
});
