/** A piece that is wanted once, and the marks of the parts that are in it. */
export interface Wanted<P> {
  readonly piece: P;
  /** For people: what the parts in it are called. */
  readonly names: readonly string[];
  readonly marks: readonly string[];
}

/** Pieces of a problem with the marks of each copy. */
export interface Merged<P> {
  readonly pieces: readonly (P & { readonly name: string; readonly quantity: number })[];
  readonly marks: readonly (readonly (readonly string[])[])[];
}

/** A name longer than this is cut short, characters: readers of problems take no more than 200. */
const LONGEST_NAME = 120;

/** Pieces that the saw can't tell apart together, in the order of the first of each. */
export function merged<P extends object>(wanted: readonly Wanted<P>[]): Merged<P> {
  const alike = new Map<string, { piece: P; names: Set<string>; copies: (readonly string[])[] }>();
  for (const { piece, names, marks } of wanted) {
    const key = JSON.stringify(piece);
    let one = alike.get(key);
    if (!one) {
      one = { piece, names: new Set(), copies: [] };
      alike.set(key, one);
    }
    for (const name of names) one.names.add(name);
    one.copies.push(marks);
  }
  const all = [...alike.values()];
  return {
    pieces: all.map(({ piece, names, copies }) => ({ ...piece, name: short([...names]), quantity: copies.length })),
    marks: all.map(({ copies }) => copies),
  };
}

function short(names: readonly string[]): string {
  const name = names.join(', ');
  return name.length > LONGEST_NAME ? `${name.slice(0, LONGEST_NAME - 1)}…` : name;
}
