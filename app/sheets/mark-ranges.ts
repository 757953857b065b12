/**
 * Marks as one writes them down: three or more with numbers one after another as a range, "A-ST1–4". Order is kept, nothing is
 * left out.
 */
export function markRanges(marks: readonly string[]): readonly string[] {
  const rows: { readonly stem: string; readonly first: number; last: number }[] = [];
  for (const mark of marks) {
    const [, stem = mark, digits] = /^(.*?)(\d+)$/.exec(mark) ?? [];
    const number = digits === undefined ? Number.NaN : Number(digits);
    const row = rows.at(-1);
    if (row && row.stem === stem && number === row.last + 1) row.last = number;
    else rows.push({ stem, first: number, last: number });
  }
  return rows.flatMap(({ stem, first, last }) => {
    if (Number.isNaN(first)) return [stem];
    if (last === first) return [`${stem}${first}`];
    return last === first + 1 ? [`${stem}${first}`, `${stem}${last}`] : [`${stem}${first}–${last}`];
  });
}
