import { largeEnough, leastSides } from '../../src/cut';
import type { AnyCutPlan, CutBar, CutBatch, CutSheet, CutTree } from '../../src/vocabulary/cut-plan';
import type { CutProblem, SheetProblem } from '../../src/vocabulary/cut-problem';
import { laidOf } from './copies';
import type { Shown } from './held';
import { type Target, wantedOf } from './wanted';

/** What makes two stocks one and the same, however many there are. */
const stockKey = ({ problem, from }: CutBatch, stock: number): string => {
  const { name: _, count: __, price: ___, ...size } = problem.stock[stock] ?? { name: '' };
  return JSON.stringify([Object.entries(size).sort(([a], [b]) => a.localeCompare(b)), from[stock]]);
};

/**
 * What has been cut already, for a batch whose parts have changed since: of a sheet or bar that is cut a piece serves where it is wanted as it
 * is, by its marks and its size; the others are left over. One of which nothing is wanted stays all the same: it is cut, and paid for. The plan
 * that comes back holds nothing else yet; what it was cut from is in the batch, though it may have left the rack. `whole`: all that was cut is
 * still wanted. `racked`: what it left lies in the rack already, and is not left over again. Null where nothing was cut, or it was sawn otherwise.
 */
export function carried(
  { batch: old, plan, copies }: Shown,
  locked: readonly number[],
  batch: CutBatch,
  racked = false,
): { readonly shown: Shown; readonly locked: readonly number[]; readonly whole: boolean } | null {
  if (old.problem.kind !== batch.problem.kind || old.problem.kerf !== batch.problem.kerf) return null;
  if (locked.length === 0) return null;
  const wanted = wantedOf(batch);
  const kept = locked.map((index) => ({
    index,
    targets: (laidOf(plan)[index]?.pieces ?? []).map(({ piece }, place) => wanted(old, piece, copies[index]?.[place])),
  }));
  const stocked = withStock(
    old,
    batch,
    kept.map(({ index }) => laidOf(plan)[index]?.stock ?? 0),
  );
  const cut = kept.map(({ index, targets }, i) => {
    const stock = stocked.stock[i] ?? 0;
    return plan.kind === 'sheets'
      ? sheetAs(plan.sheets[index] as CutSheet, stock, targets, leastSides(batch.problem as SheetProblem), racked)
      : barAs(plan.bars[index] as CutBar, stock, targets, racked);
  });
  return {
    shown: {
      batch: stocked.batch,
      plan: onlyThese(stocked.batch.problem, cut),
      copies: kept.map(({ targets }) => targets.flatMap((one) => one?.copy ?? [])),
    },
    locked: kept.map((_, i) => i),
    whole: kept.every(({ targets }) => targets.every((one) => one)),
  };
}

/** The batch with the stock that was used in it, as many as were used where it has them no longer; and which of its stock each is. */
function withStock(
  old: CutBatch,
  batch: CutBatch,
  used: readonly number[],
): { readonly batch: CutBatch; readonly stock: readonly number[] } {
  const keys = batch.problem.stock.map((_, i) => stockKey(batch, i));
  const gone = [...new Set(used)].filter((stock) => !keys.includes(stockKey(old, stock)));
  const added = gone.map((stock) => ({
    ...old.problem.stock[stock],
    count: used.filter((one) => one === stock).length,
  }));
  const problem = { ...batch.problem, stock: [...batch.problem.stock, ...added] } as CutProblem;
  const from = [...batch.from, ...gone.map((stock) => old.from[stock] ?? {})];
  const place = (stock: number): number => {
    const there = keys.indexOf(stockKey(old, stock));
    return there >= 0 ? there : keys.length + gone.indexOf(stock);
  };
  return { batch: gone.length === 0 ? batch : { ...batch, problem, from }, stock: used.map(place) };
}

/** Pieces by their new numbers; those that are no longer wanted are gone. */
const renumbered = <Placed extends { readonly piece: number }>(
  pieces: readonly Placed[],
  targets: readonly (Target | undefined)[],
): readonly Placed[] =>
  pieces.flatMap((placed, place) => {
    const target = targets[place];
    return target ? [{ ...placed, piece: target.piece }] : [];
  });

/** A sheet with what is still wanted of it; a tree's pieces are those of the list, in whatever order. */
function sheetAs(
  sheet: CutSheet,
  stock: number,
  targets: readonly (Target | undefined)[],
  least: readonly [number, number],
  racked: boolean,
): CutSheet {
  const pieces = renumbered(sheet.pieces, targets);
  const own = (tree: CutTree): CutTree => {
    if (tree.kind === 'cut') return { ...tree, parts: tree.parts.map(own) };
    const { x, y, length, width } = tree;
    const still = tree.kind === 'piece' && pieces.find((one) => one.x === x && one.y === y);
    const reusable = tree.kind === 'left' ? tree.reusable && !racked : largeEnough(length, width, least);
    return still || { kind: 'left', x, y, length, width, reusable };
  };
  return { stock, tree: own(sheet.tree), pieces, stages: sheet.stages };
}

const barAs = (
  { offcut, pieces }: CutBar,
  stock: number,
  targets: readonly (Target | undefined)[],
  racked: boolean,
): CutBar => ({ stock, pieces: renumbered(pieces, targets), ...(offcut && !racked ? { offcut } : {}) });

/** A plan of what is cut already and nothing else: what is still to be placed is not yet. */
function onlyThese(problem: CutProblem, cut: readonly (CutSheet | CutBar)[]): AnyCutPlan {
  const cost = cut.reduce((sum, { stock }) => sum + (problem.stock[stock]?.price ?? 0), 0);
  const done = problem.pieces.map((_, i) =>
    cut.reduce((sum, { pieces }) => sum + pieces.filter(({ piece }) => piece === i).length, 0),
  );
  const common = {
    cost,
    bound: cost,
    proven: false,
    used: problem.stock.flatMap((_, stock) => {
      const count = cut.filter((one) => one.stock === stock).length;
      return count > 0 ? [{ stock, count }] : [];
    }),
    unplaced: problem.pieces.flatMap(({ quantity }, piece) => {
      const left = quantity - (done[piece] ?? 0);
      return left > 0 ? [{ piece, quantity: left, why: 'no stock left' as const }] : [];
    }),
  };
  return problem.kind === 'sheets'
    ? { kind: 'sheets', ...common, sheets: cut as readonly CutSheet[] }
    : { kind: 'bars', ...common, bars: cut as readonly CutBar[] };
}
