import loadHighs, { type Highs } from 'highs';
import type { CutProblem } from '../../../src/vocabulary/cut-problem';

/** Every way in which each stock can be cut: sets of copies of pieces, as bits. */
export interface Asked {
  readonly problem: Pick<CutProblem, 'stock' | 'pieces'>;
  /** By stock. */
  readonly ways: readonly (readonly number[])[];
}

export const loadReferee = (): Promise<Highs> => loadHighs();

const INTEGER = 1;

/** The least cost of ways that give every piece as often as is asked, by integer programming over all of them; undefined where there is none. */
export function leastCost(highs: Highs, { problem: { stock, pieces }, ways }: Asked): number | undefined {
  const model = highs.createModel();
  try {
    // The jump heuristic takes ten times as long as everything else on programs as small as these.
    model.options.set({
      output_flag: false,
      mip_rel_gap: 0,
      mip_abs_gap: 1e-9,
      mip_heuristic_run_feasibility_jump: false,
    });
    const none = { indices: [], values: [] };
    for (const { quantity } of pieces) model.addRow(quantity, Number.POSITIVE_INFINITY, none);
    for (const { count } of stock) model.addRow(0, count ?? Number.POSITIVE_INFINITY, none);
    const owner = ownersOf(pieces);
    let columns = 0;
    ways.forEach((sets, index) => {
      for (const counts of distinct(sets.map((set) => countsOf(set, owner, pieces.length)))) {
        const rows = counts.flatMap((count, row) => (count > 0 ? [row] : []));
        const values = [...rows.map((row) => counts[row]), 1];
        model.addCol(stock[index].price, 0, Number.POSITIVE_INFINITY, {
          indices: [...rows, pieces.length + index],
          values,
        });
        columns += 1;
      }
    });
    for (let i = 0; i < columns; i += 1) model.changeColIntegrality(i, INTEGER);
    model.run();
    return model.getModelStatus() === highs.constants.modelStatus.optimal ? model.getObjectiveValue() : undefined;
  } finally {
    model.dispose();
  }
}

/** Which piece each copy is of. */
const ownersOf = (pieces: CutProblem['pieces']): readonly number[] =>
  pieces.flatMap(({ quantity }, piece) => Array<number>(quantity).fill(piece));

/** How many copies of each piece are in a set. */
function countsOf(set: number, owner: readonly number[], pieces: number): readonly number[] {
  const counts = Array<number>(pieces).fill(0);
  for (const copy of bitsOf(set)) counts[owner[copy]] += 1;
  return counts;
}

const distinct = (all: readonly (readonly number[])[]): readonly (readonly number[])[] => [
  ...new Map(all.map((counts) => [counts.join(), counts])).values(),
];

export function bitsOf(set: number): readonly number[] {
  const bits: number[] = [];
  for (let bit = 0; set >> bit > 0; bit += 1) if ((set >> bit) & 1) bits.push(bit);
  return bits;
}

/** Every copy of every piece by itself, so that sets of them are bits. */
export const copiesOf = <P extends { readonly quantity: number }>(pieces: readonly P[]): readonly P[] =>
  pieces.flatMap((piece) => Array<P>(piece.quantity).fill(piece));

/** Copies that can't be parted, each as a set: those that belong together, and every other one by itself. */
export function unitsOf(copies: readonly { readonly together?: string }[]): readonly number[] {
  const units = new Map<string | number, number>();
  copies.forEach(({ together }, i) => {
    const key = together ?? i;
    units.set(key, (units.get(key) ?? 0) | (1 << i));
  });
  return [...units.values()];
}

/** Sets made of whole units, the empty one left out. */
export function setsOf(units: readonly number[]): readonly number[] {
  const sets = [0];
  for (const unit of units) sets.push(...sets.map((set) => set | unit));
  return sets.slice(1);
}

/** Those to which no unit can be added: whoever can be cut with more on it can be cut with less. */
export function largest(sets: readonly number[], units: readonly number[]): readonly number[] {
  const known = new Set(sets);
  return sets.filter((set) => units.every((unit) => (set & unit) !== 0 || !known.has(set | unit)));
}
