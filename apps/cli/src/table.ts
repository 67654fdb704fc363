/** Rows as a table for people: columns as wide as their widest cell, numbers to the right. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [head, ...rows];
  const widths = head.map((_, column) => Math.max(...all.map((row) => (row[column] ?? '').length)));
  const isNumber = (cell: string) => /^-?[\d.]+$/.test(cell);
  const line = (row: readonly string[]) =>
    widths
      .map((width, column) => {
        const cell = row[column] ?? '';
        return isNumber(cell) ? cell.padStart(width) : cell.padEnd(width);
      })
      .join('  ')
      .trimEnd();
  return `${[line(head), widths.map((width) => '-'.repeat(width)).join('  '), ...rows.map(line)].join('\n')}\n`;
}
