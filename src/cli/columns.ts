/** Rows of cells as a table for reading on a screen: columns as wide as their widest cell, two spaces between. */
export function columns(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => (row[i] ?? '').length)));
  return rows
    .map(
      (row) =>
        `${row
          .map((cell, i) => cell.padEnd(widths[i] ?? 0))
          .join('  ')
          .trimEnd()}\n`,
    )
    .join('');
}
