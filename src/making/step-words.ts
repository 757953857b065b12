import type { Hold, Part } from '../vocabulary/part';
import type { Batch } from './order';
import type { Touching } from './touching';

/** More than one of a thing: "studs", "lengths of skirting", "shelves". */
export function plural(name: string): string {
  if (/ing$/.test(name)) return `pieces of ${name}`;
  if (/(s|x|ch|sh)$/.test(name)) return `${name}es`;
  if (/lf$/.test(name)) return `${name.slice(0, -1)}ves`;
  return `${name}s`;
}

/** "2 plates", "1 piece of skirting". */
export const countOf = (n: number, name: string): string =>
  n === 1 ? (/ing$/.test(name) ? `1 piece of ${name}` : `1 ${name}`) : `${n} ${plural(name)}`;

/** "a, b and c". */
export const listOf = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items[items.length - 1]}`;

/** What a batch holds, by name, in its order: "2 plates and 9 studs". */
export const contentsOf = (batch: Batch): string =>
  listOf([...tally(batch.map((p) => p.name))].map(([name, n]) => countOf(n, name)));

function tally(names: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return counts;
}

const VERBS: Readonly<Record<Hold['by'], string>> = {
  screw: 'screw',
  brad: 'pin',
  bolt: 'bolt',
  dowel: 'dowel',
  glue: 'glue',
};

/** How a batch is put on, by how most of its parts are held: "glue and screw"; "fix" where nothing is said. */
export function verbOf(batch: Batch): string {
  const ways = batch.map(({ holds = [] }) => {
    const verbs = [...new Set(holds.map((hold) => VERBS[hold.by]))].filter((verb) => verb !== 'glue');
    const glued = holds.some((hold) => hold.glue !== undefined || hold.by === 'glue');
    return [...(glued ? ['glue'] : []), ...verbs].join(' and ') || 'fix';
  });
  return [...tally(ways)].sort((a, b) => b[1] - a[1])[0][0];
}

/** What a batch is put on, by name, at most two: " to the studs and plates". Empty where it is only put together. */
export function basesOf(
  batch: Batch,
  before: ReadonlySet<string>,
  by: ReadonlyMap<string, Part>,
  touching: Touching,
): string {
  const names = batch.flatMap(({ mark }) => [
    ...new Set(
      (touching.get(mark) ?? []).filter((other) => before.has(other)).map((other) => by.get(other)?.name ?? ''),
    ),
  ]);
  const own = new Set(batch.map((p) => p.name));
  const bases = [...tally(names.filter((name) => name !== '' && !own.has(name)))].sort((a, b) => b[1] - a[1]);
  const most = bases.filter(([, n]) => 2 * n > bases[0][1]).slice(0, 2);
  if (most.length === 0) return '';
  return ` to the ${listOf(most.map(([name]) => (/ing$/.test(name) ? name : plural(name))))}`;
}

/** A sentence from its words: a capital and a full stop. */
export const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
