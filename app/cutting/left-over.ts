import type { CutBatch, CutTree, Leftover, Offcut } from '../../src/vocabulary/cut-plan';
import type { Shown } from './held';

/** Leftovers of a sheet, however deep they lie. */
export const leftoversOf = (tree: CutTree): readonly Leftover[] =>
  tree.kind === 'left' ? [tree] : tree.kind === 'cut' ? tree.parts.flatMap(leftoversOf) : [];

/** Marks of the offcuts that a plan uses up. */
export const offcutsUsed = ({ batch, plan }: Shown): readonly string[] =>
  (plan.kind === 'sheets' ? plan.sheets : plan.bars).flatMap(({ stock }) => batch.from[stock]?.offcut ?? []);

/** Stuff of an offcut cut again: that of the offcut, where the rack still has it; else that of the new stock beside it. */
function materialOf({ from }: CutBatch, stock: number, rack: readonly Offcut[]): string | undefined {
  const own = from[stock];
  const was = rack.find(({ mark }) => mark === own?.offcut)?.material;
  return own?.item ?? was ?? from.find(({ item }) => item !== undefined)?.item;
}

/** To the tenth, mm: nobody measures an offcut nearer. Down, so that it holds what it is said to hold. */
const tenth = (mm: number): number => Math.floor(mm * 10 + 1e-6) / 10;

/** What is left of a plan for the rack, largest first; without marks yet. */
export function leftFor(
  { batch, plan }: Shown,
  rack: readonly Offcut[],
  isBlank: (material: string) => boolean,
  note: string,
): readonly Omit<Offcut, 'mark'>[] {
  const said = note === '' ? {} : { note };
  const section = batch.problem.kind === 'bars' ? batch.problem.section?.width : undefined;
  const left =
    plan.kind === 'sheets'
      ? plan.sheets.flatMap(({ stock, tree }) =>
          leftoversOf(tree)
            .filter(({ reusable }) => reusable)
            .map(({ length, width }) => ({ stock, length: tenth(length), width: tenth(width) })),
        )
      : plan.bars.flatMap(({ stock, offcut }) =>
          offcut ? [{ stock, length: tenth(offcut.length), width: undefined }] : [],
        );
  return left
    .flatMap(({ stock, length, width }) => {
      const material = materialOf(batch, stock, rack);
      if (material === undefined) return [];
      // Blanks are made up to a width: it is not the stuff's own, and kept with them.
      const wide = width ?? (isBlank(material) ? section : undefined);
      return [{ material, length, ...(wide === undefined ? {} : { width: tenth(wide) }), ...said }];
    })
    .sort((a, b) => b.length * (b.width ?? 1) - a.length * (a.width ?? 1));
}
