import type { Cell, Cells } from './cell';
import { fewerCuts } from './fewer-cuts';
import { offcutIn } from './offcut';
import type { Scaled } from './scaled';
import { sideParted, stagesOf, tidied } from './tidy';

/** What speaks for a way of cutting, the weightiest first. */
export interface Merits {
  /** Area (scaled, kerfs included) of pieces that are not placed. */
  readonly missing: number;
  readonly cost: number;
  /** Area of the sheets used that cost nothing: what lies in the rack is worth keeping whole. */
  readonly spent: number;
  /** Area of the largest reusable offcut, in scaled units; 0: there is none. */
  readonly offcut: number;
  /** Summed over sheets, with those that only trim a piece to its size. */
  readonly stages: number;
  /** Different widths that the fence is set to. */
  readonly settings: number;
}

/** Costs that differ by less are the same. */
export const NOISE = 1e-6;

export function meritsOf(scaled: Scaled, cells: Cells): Merits {
  let missing = scaled.kinds.reduce((sum, { length, width, quantity }) => sum + length * width * quantity, 0);
  let offcut = 0;
  const widths = new Set<number>();
  const look = (cell: Cell): void => {
    if (cell.kind === 'piece') missing -= cell.length * cell.width;
    else if (cell.kind === 'left') offcut = Math.max(offcut, offcutIn(scaled, cell.length, cell.width));
    else
      for (const part of cell.parts) {
        if (part.kind !== 'left') widths.add(sideParted(part, cell.way));
        look(part);
      }
  };
  let cost = 0;
  let spent = 0;
  let stages = 0;
  for (const { sheet, cell } of cells) {
    const tidy = fewerCuts(tidied(cell, scaled), scaled);
    look(tidy);
    const { price, length, width } = scaled.sheets[sheet];
    cost += price;
    if (price === 0) spent += length * width;
    stages += stagesOf(tidy, false);
  }
  return { missing, cost, spent, offcut, stages, settings: widths.size };
}

/** Whether the one is better than the other. */
export function isBetter(a: Merits, b: Merits): boolean {
  if (a.missing !== b.missing) return a.missing < b.missing;
  if (Math.abs(a.cost - b.cost) > NOISE) return a.cost < b.cost;
  if (a.spent !== b.spent) return a.spent < b.spent;
  if (a.offcut !== b.offcut) return a.offcut > b.offcut;
  if (a.stages !== b.stages) return a.stages < b.stages;
  return a.settings < b.settings;
}
