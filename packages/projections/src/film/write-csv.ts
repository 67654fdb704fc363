/**
 * Rows as comma-separated values by RFC 4180: lines end in CR LF, the last one too; a field with a comma, a quote or a line end stands in
 * quotes, quotes within it doubled. Every text comes back as it was. The first row is the header.
 */
export function csvText(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(csvField).join(',')}\r\n`).join('');
}

const csvField = (text: string): string =>
  /[",\r\n]/.test(text) || text !== text.trim() ? `"${text.replaceAll('"', '""')}"` : text;
