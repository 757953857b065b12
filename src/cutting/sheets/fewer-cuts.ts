import type { Cell, CutCell } from './cell';
import { offcutIn } from './offcut';
import type { Scaled } from './scaled';
import { sideParted, stagesOf, tidied } from './tidy';

/*
 * Whole rips first. Where neighbouring parts are all cut at the same places – columns of which each gives a piece of the same height and a leftover –
 * one long cut does the work of many short ones, and what is left over stays in one piece. Common practice, no source.
 */

/** How often a tree is gone through at most. */
const ROUNDS = 50;

/**
 * A tidied way of cutting a sheet with fewer cuts, no more stages, and the largest offcut no smaller. Of two that are as good, the one whose
 * first cuts run along the sheet.
 */
export function fewerCuts(cell: Cell, to: Scaled): Cell {
  let best = cell;
  let effort = effortOf(best, to);
  for (let round = 0; round < ROUNDS; round++) {
    let better: Cell | undefined;
    for (const raw of variants(best, to)) {
      const one = tidied(raw, to);
      if (!isAllowed(one, to)) continue;
      const its = effortOf(one, to);
      if (!isBetter(its, effort)) continue;
      better = one;
      effort = its;
    }
    if (!better) return best;
    best = better;
  }
  return best;
}

interface Effort {
  readonly cuts: number;
  readonly stages: number;
  readonly offcut: number;
  readonly along: boolean;
}

function effortOf(cell: Cell, to: Scaled): Effort {
  let cuts = 0;
  let offcut = 0;
  const look = (one: Cell): void => {
    if (one.kind === 'left') offcut = Math.max(offcut, offcutIn(to, one.length, one.width));
    if (one.kind !== 'cut') return;
    cuts += one.parts.length - 1;
    one.parts.forEach(look);
  };
  look(cell);
  return { cuts, offcut, stages: stagesOf(cell, false), along: cell.kind === 'cut' && cell.way === 'along' };
}

function isBetter(a: Effort, b: Effort): boolean {
  if (a.offcut < b.offcut || a.stages > b.stages) return false;
  return a.cuts < b.cuts || (a.cuts === b.cuts && a.along && !b.along);
}

/** Within the limits of stages and of the saw's longest cut. */
function isAllowed(cell: Cell, to: Scaled): boolean {
  const short = (one: Cell): boolean =>
    one.kind !== 'cut' ||
    ((one.way === 'along' ? one.length : one.width) <= to.longestCut && one.parts.every((part) => short(part)));
  return stagesOf(cell, to.trimsFree) <= to.stages && short(cell);
}

/** The same way of cutting with one group of parts of one cut gathered. */
function* variants(cell: Cell, to: Scaled): Generator<Cell> {
  if (cell.kind !== 'cut') return;
  for (const group of groupsOf(cell)) yield withGroup(cell, group);
  for (const [i, part] of cell.parts.entries())
    for (const variant of variants(part, to)) yield { ...cell, parts: cell.parts.with(i, variant) };
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

function withGroup(cell: CutCell, group: readonly CutCell[]): Cell {
  const { way } = cell;
  const all = cell.parts.every((part) => part.kind === 'left' || group.includes(part as CutCell));
  // What is left over beside all of them becomes part of every row.
  const span = all ? sideParted(cell, way) : group.reduce((sum, part) => sum + sideParted(part, way), 0);
  const rows = rowsOf(group[0]).map((first, r): Cell => {
    const high = sideParted(first, group[0].way);
    const parts = group.map((part) => rowsOf(part)[r]);
    return { kind: 'cut', way, parts, ...sides(way, span, high) };
  });
  const [{ way: other }] = group;
  const merged: Cell = { kind: 'cut', way: other, parts: rows, ...sides(way, span, sideParted(cell, other)) };
  if (all) return merged;
  return { ...cell, parts: [merged, ...cell.parts.filter((part) => !group.includes(part as CutCell))] };
}

/** Of a cell that reaches so far in the way of some cuts, and so far in the other. */
const sides = (way: CutCell['way'], along: number, other: number): { length: number; width: number } =>
  way === 'across' ? { length: along, width: other } : { length: other, width: along };
