import type { CutSheet, CutTree, Parted } from '../../vocabulary/cut-plan';

/**
 * How often the direction of cutting changes within a tree, counting the first. With `trimsFree` a last cut that only brings a piece to its
 * size, leaving nothing else but leftovers, does not count.
 */
export function stagesOf(tree: CutTree, trimsFree = false, within?: Parted['way']): number {
  if (tree.kind !== 'cut') return 0;
  const { way, parts } = tree;
  const isTrim = parts.filter(({ kind }) => kind === 'piece').length === 1 && parts.every(({ kind }) => kind !== 'cut');
  if (trimsFree && isTrim) return 0;
  const deepest = Math.max(0, ...parts.map((part) => stagesOf(part, trimsFree, way)));
  return deepest + (way === within ? 0 : 1);
}

const stagesIn = (count: number): string => `${count} ${count === 1 ? 'stage' : 'stages'}`;

/** How often the direction of cutting changes on a sheet; where a last trim is free it is named by itself. */
export function stagesWords({ tree, stages }: Pick<CutSheet, 'tree' | 'stages'>, trimsFree = false): string {
  const counted = trimsFree ? stagesOf(tree, true) : stages;
  if (counted >= stages) return stagesIn(stages);
  return counted === 0 ? 'a last trim' : `${stagesIn(counted)} and a last trim`;
}
