/** Runs as rows by header, as a person types them. */
export type Row = Record<string, string | number | null>;

/** A range from rows by header; columns that no row names are left out. */
export function table(rows: readonly Row[]): (string | number | null)[][] {
  const headers = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  return [headers, ...rows.map((row) => headers.map((header) => row[header] ?? null))];
}

/** A table's answer by its first column and header, units left off. */
export function byName(answer: readonly (readonly unknown[])[]): Record<string, Record<string, string | number>> {
  const [headers, ...lines] = answer as (string | number)[][];
  const plain = headers!.map((header) => String(header).replace(/ \(.*/, ""));
  return Object.fromEntries(
    lines.map((line) => [line[0], Object.fromEntries(line.map((cell, index) => [plain[index], cell]))]),
  );
}

/** Rows without one of their columns. */
export const without = (column: string, rows: readonly Row[]): Row[] =>
  rows.map((row) => Object.fromEntries(Object.entries(row).filter(([header]) => header !== column)));
