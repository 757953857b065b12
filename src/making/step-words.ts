import type { Fixing } from '../vocabulary/book';
import type { Hold, Part } from '../vocabulary/part';
import type { Batch } from './order';
import { pinned } from './pins';
import type { Touching } from './touching';

/** More than one of a thing: "studs", "lengths of skirting", "shelves". */
export function plural(name: string): string {
  if (/ing$/.test(name)) return `pieces of ${name}`;
  if (/(s|x|ch|sh)$/.test(name)) return `${name}es`;
  if (/lf$/.test(name)) return `${name.slice(0, -1)}ves`;
  return `${name}s`;
}

/** "2 plates", "1 piece of skirting". */
const countOf = (n: number, name: string): string =>
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

/** What is too thick for pins is screwed, as the fixings say. */
const verbFor = ({ by, through }: Hold, book: readonly Fixing[]): string =>
  VERBS[by === 'brad' && !pinned(through, book) ? 'screw' : by];

const comesWith = ({ hardware = [] }: Part, what: RegExp): boolean => hardware.some((one) => what.test(one.what));

/** Whether a part hangs on hinges: a flap, a door. */
const isHung = (part: Part): boolean => comesWith(part, /\bhinges?\b/);

/** Whether a part is the front of a drawer, whose box runs on runners. */
const isOnBox = (part: Part): boolean => comesWith(part, /\bdrawer runners\b/);

/** Whether a part only lies on supports that come with it, with nothing to fix it: a loose shelf. */
const isLaid = (part: Part): boolean => {
  const { holds = [], hardware = [] } = part;
  const free = holds.every(({ where }) => where.at === 'all' && where.each === 0);
  return holds.length > 0 && hardware.length > 0 && free && !isHung(part);
};

/** What isn't simply fixed to what it touches, in the order in which it goes on. */
const OTHERWISE: readonly {
  readonly is: (part: Part) => boolean;
  readonly say: (what: string, their: string) => string;
}[] = [
  { is: isLaid, say: (what, their) => `lay ${what} on ${their} supports` },
  { is: isOnBox, say: (what, their) => `screw ${what} to ${their} ${their === 'its' ? 'box' : 'boxes'}` },
  { is: isHung, say: (what, their) => `hang ${what} on ${their} hinges` },
];

/** How a batch is put on, by how most of its parts are held: "glue and screw"; "fix" where nothing is said. */
export function verbOf(batch: Batch, book: readonly Fixing[]): string {
  const ways = batch.map(({ holds = [] }) => {
    const all = [...new Set(holds.map((hold) => verbFor(hold, book)))].filter((verb) => verb !== 'glue');
    // What is bolted besides is bolted to the next section, when both stand there.
    const verbs = all.length > 1 ? all.filter((verb) => verb !== 'bolt') : all;
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
  const own = new Set(batch.map((p) => p.name));
  const times = new Map<string, { n: number; readonly parts: Set<string> }>();
  for (const { mark } of batch) {
    const counted = new Set<string>();
    for (const other of touching.get(mark) ?? []) {
      const name = by.get(other)?.name;
      if (name === undefined || own.has(name) || !before.has(other)) continue;
      const known = times.get(name) ?? { n: 0, parts: new Set() };
      if (!counted.has(name)) known.n++;
      counted.add(name);
      known.parts.add(other);
      times.set(name, known);
    }
  }
  const bases = [...times].sort((a, b) => b[1].n - a[1].n);
  const most = bases.filter(([, { n }]) => 2 * n > bases[0][1].n).slice(0, 2);
  if (most.length === 0) return '';
  const named = most.map(([name, { parts }]) => (parts.size === 1 || /ing$/.test(name) ? name : plural(name)));
  return ` to the ${listOf(named)}`;
}

/**
 * What is done with a batch: "screw 2 shelves to the bearers"; what is loose is laid on its supports, and what has hinges hung, when the rest
 * is on. `bases`: what it is put on; `book`: the fixings of the stock book.
 */
export function puttingOn(batch: Batch, bases: (some: Batch) => string, book: readonly Fixing[]): string {
  const rest = batch.filter((part) => OTHERWISE.every(({ is }) => !is(part)));
  return [
    ...(rest.length > 0 ? [`${verbOf(rest, book)} ${contentsOf(rest)}${bases(rest)}`] : []),
    ...OTHERWISE.flatMap(({ is, say }) => {
      const some = batch.filter(is);
      return some.length > 0 ? [say(contentsOf(some), some.length === 1 ? 'its' : 'their')] : [];
    }),
  ].join('; ');
}

/** A sentence from its words: a capital and a full stop. */
export const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
