import { cutBatches } from '../../../src/flow';
import type { StockItem } from '../../../src/vocabulary/book';
import type { CutBatch, Offcut } from '../../../src/vocabulary/cut-plan';
import type { BarProblem, SheetProblem } from '../../../src/vocabulary/cut-problem';
import type { Design } from '../../../src/vocabulary/design';
import type { Cutting } from '../../../src/vocabulary/job';

/** A design with other decisions about cutting, or other things in its book by id; its parts stay. */
export const withCutting = (
  made: Design,
  cutting: Partial<Cutting>,
  stock: Readonly<Record<string, Partial<StockItem>>> = {},
): Design => ({
  ...made,
  job: {
    ...made.job,
    cutting: { ...made.job.cutting, ...cutting },
    stock: {
      ...made.job.stock,
      items: made.job.stock.items.map((item) => ({ ...item, ...stock[item.id] }) as StockItem),
    },
  },
});

/** The batch of an id. Throws when there is none. */
export function batchOf(batches: readonly CutBatch[], id: string): CutBatch {
  const found = batches.find((batch) => batch.id === id);
  if (!found) throw new Error(`no batch ${id}; there are ${batches.map((batch) => batch.id).join(', ')}`);
  return found;
}

export function barsOf(made: Design, id: string, rack: readonly Offcut[] = []): BarProblem {
  const { problem } = batchOf(cutBatches(made, rack).batches, id);
  if (problem.kind !== 'bars') throw new Error(`${id} is not cut from bars`);
  return problem;
}

export function sheetsOf(made: Design, id: string, rack: readonly Offcut[] = []): SheetProblem {
  const { problem } = batchOf(cutBatches(made, rack).batches, id);
  if (problem.kind !== 'sheets') throw new Error(`${id} is not cut from sheets`);
  return problem;
}

/** How many of each length, or length × width, as text, in the problem's order. */
export const counted = ({ pieces }: BarProblem | SheetProblem): readonly string[] =>
  pieces.map((p) => `${p.quantity} × ${p.length}${'width' in p ? ` × ${p.width}` : ''}`);
