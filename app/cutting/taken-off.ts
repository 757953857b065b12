import { cutBatches, type TakenOff } from '../../src/flow';
import type { Offcut } from '../../src/vocabulary/cut-plan';
import type { Design } from '../../src/vocabulary/design';

let last: { readonly design: Design; readonly offcuts: readonly Offcut[]; readonly found: TakenOff } | undefined;

/** The batches of a design and what can't be cut of it, the last ones remembered: what was taken off ahead is not taken off again. */
export function takenOff(design: Design, offcuts: readonly Offcut[]): TakenOff {
  if (last?.design !== design || last.offcuts !== offcuts)
    last = { design, offcuts, found: cutBatches(design, offcuts) };
  return last.found;
}
