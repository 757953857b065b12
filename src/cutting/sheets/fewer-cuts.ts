import type { Cell, CutCell } from './cell';
import { offcutIn } from './offcut';
import type { Scaled } from './scaled';
import { sideParted, stagesOf, tidied } from './tidy';

/*
 * Whole rips first. Where neighbouring parts are all cut at the same places – columns of which each gives a piece of the same height and a leftover –
 * one long cut does the work of many short ones, and what is left over stays in one piece. Common practice, no source.
 */

/** How often a tree is gone through at most: what is gathered within a part may let the parts be gathered. */
const ROUNDS = 4;

/**
 * A tidied way of cutting a sheet with fewer cuts, no more stages, and the largest offcut no smaller. Of two that are as good, the one whose
 * first cuts run along the sheet. The work grows with the number of pieces, no faster.
 */
export function fewerCuts(cell: Cell, to: Scaled): Cell {
  let best = cell;
  for (let round = 0; round < ROUNDS; round++) {
    const better = gathered(best, to, true);
    if (better === best) break;
    best = tidied(better, to);
  }
  return best;
}

/** From the smallest parts up; the same object where nothing is gathered. */
function gathered(cell: Cell, to: Scaled, whole = false): Cell {
  if (cell.kind !== 'cut') return cell;
  const parts = cell.parts.map((part) => gathered(part, to));
  // A part that is cut the other way now goes on in this cell's cuts.
  const own = parts.every((part, i) => part === cell.parts[i]) ? cell : tidied({ ...cell, parts }, to);
  if (own.kind !== 'cut') return own;
  const groups = groupsOf(own);
  const anyStages = to.stages === Number.POSITIVE_INFINITY;
  if (groups.length === 0) return own;
  const grouped = new Set<Cell>(groups.flat());
  const kept = own.parts.filter((part) => part.kind !== 'left' && !grouped.has(part));
  if (groups.length === 1 && kept.length === 0) {
    const all = tidied(withAll(own, groups[0]), to);
    const [after, before] = [effortOf(all, to), effortOf(own, to)];
    if ((anyStages || after.free <= before.free) && isBetter(after, before, whole)) return all;
  }
  // Or each group as one part of the cell.
  const [stages, free] = [stagesOf(own, false) - 1, stagesOf(own, to.trimsFree) - 1];
  let better = false;
  const some = groups.flatMap((group): readonly Cell[] => {
    const one = tidied(joined(own, group), to);
    const before = effortOf({ ...own, parts: group }, to);
    const after = effortOf(one, to);
    const fits =
      after.stages <= stages && (anyStages || after.free <= free) && after.short && after.offcut >= before.offcut;
    if (!fits || after.cuts >= before.cuts) return group;
    better = true;
    return [one];
  });
  if (!better) return own;
  const lefts = own.parts.filter(({ kind }) => kind === 'left');
  return tidied({ ...own, parts: [...some, ...kept, ...lefts] }, to);
}

interface Effort {
  readonly cuts: number;
  readonly stages: number;
  /** Not counting last cuts to size where these are free. */
  readonly free: number;
  readonly offcut: number;
  /** No cut is longer than the saw can make. */
  readonly short: boolean;
  readonly along: boolean;
}

function effortOf(cell: Cell, to: Scaled): Effort {
  let [cuts, offcut, short] = [0, 0, true];
  const look = (one: Cell): void => {
    if (one.kind === 'left') offcut = Math.max(offcut, offcutIn(to, one.length, one.width));
    if (one.kind !== 'cut') return;
    cuts += one.parts.length - 1;
    if ((one.way === 'along' ? one.length : one.width) > to.longestCut) short = false;
    for (const part of one.parts) look(part);
  };
  look(cell);
  const along = cell.kind === 'cut' && cell.way === 'along';
  return { cuts, offcut, short, along, stages: stagesOf(cell, false), free: stagesOf(cell, to.trimsFree) };
}

/** `whole`: of the whole sheet, where it counts which way the first cuts run. */
function isBetter(a: Effort, b: Effort, whole: boolean): boolean {
  if (!a.short || a.offcut < b.offcut || a.stages > b.stages) return false;
  return a.cuts < b.cuts || (whole && a.cuts === b.cuts && a.along && !b.along);
}

/** Parts that are cut the other way at the same places, two or more. */
function groupsOf(cell: CutCell): readonly (readonly CutCell[])[] {
  const groups = new Map<string, CutCell[]>();
  for (const part of cell.parts) {
    if (part.kind !== 'cut') continue;
    const places = rowsOf(part)
      .map((row) => sideParted(row, part.way))
      .join();
    const group = groups.get(places);
    if (group) group.push(part);
    else groups.set(places, [part]);
  }
  return [...groups.values()].filter((group) => group.length > 1);
}

const rowsOf = (cell: CutCell): readonly Cell[] => cell.parts.filter(({ kind }) => kind !== 'left');

/** The group as one part of its cell. */
function joined(cell: CutCell, group: readonly CutCell[]): Cell {
  return rows(
    cell,
    group,
    group.reduce((sum, part) => sum + sideParted(part, cell.way), 0),
  );
}

/** The group instead of the whole cell: what is left over beside it becomes part of every row. */
const withAll = (cell: CutCell, group: readonly CutCell[]): Cell => rows(cell, group, sideParted(cell, cell.way));

function rows(cell: CutCell, group: readonly CutCell[], span: number): Cell {
  const { way } = cell;
  const [{ way: other }] = group;
  const within = group.map(rowsOf);
  const parts = within[0].map((first, r): Cell => {
    const side = sides(way, span, sideParted(first, other));
    return { kind: 'cut', way, parts: within.map((own) => own[r]), ...side };
  });
  return { kind: 'cut', way: other, parts, ...sides(way, span, sideParted(cell, other)) };
}

/** Of a cell that reaches so far in the way of some cuts, and so far in the other. */
const sides = (way: CutCell['way'], along: number, other: number): { length: number; width: number } =>
  way === 'across' ? { length: along, width: other } : { length: other, width: along };
