/** Marks of the parts in each copy of each piece, as a batch lists them. */
export type Marks = readonly (readonly (readonly string[])[])[];

/** Gives the marks of one copy of a piece after the other; undefined where there are none. */
export function dealer(marks: Marks): (piece: number) => readonly string[] | undefined {
  const taken = marks.map(() => 0);
  return (piece) => {
    const copy = taken[piece] ?? 0;
    taken[piece] = copy + 1;
    return marks[piece]?.[copy];
  };
}
