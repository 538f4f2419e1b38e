import { type ReferenceTable, referenceTables } from "../../../reference";

/** A reference table as it stands on a sheet: texts at the left in columns that all tables share, values at the right. */
export interface ArrangedTable {
  readonly name: string;
  readonly title: string;
  readonly headers: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}

type Row = ReferenceTable["rows"][number];

const LONG = 24; // characters: a text column with more is joined to the label, since no narrow column holds it
const TRUST = ["basis", "weak", "source", "where"];

const sourceKeys = new Map(
  referenceTables.find(({ name }) => name === "sources")!.rows.map((row) => [String(row[1]), String(row[0])]),
);

/** Every table but the cautions, which have a sheet of their own. */
export const arrangedTables = (): ArrangedTable[] =>
  referenceTables.filter(({ name }) => name !== "cautions").map(arranged);

/** Key; label with the long texts; note with the source's short name; how far to trust the row; then the values. */
function arranged(table: ReferenceTable): ArrangedTable {
  const place = (name: string): number => table.columns.findIndex((column) => column.name === name);
  const middle = table.columns
    .map((column, index) => ({ ...column, index }))
    .filter(({ name }) => !["key", "label", "note", ...TRUST].includes(name));
  const isLong = ({ index }: { index: number }): boolean =>
    table.rows.some((row) => typeof row[index] === "string" && row[index].length > LONG);
  const long = middle.filter(isLong);
  // a column that no row fills (a diameter among hoods) tells nothing
  const values = middle.filter(
    (column) => !isLong(column) && table.rows.some((row) => (row[column.index] ?? "") !== ""),
  );
  const cell = (row: Row, name: string): string => (place(name) < 0 ? "" : String(row[place(name)] ?? ""));
  return {
    name: table.name,
    title: table.title,
    headers: [
      "key",
      ["label", ...long.map(({ name }) => name)].join("; "),
      "note [source, where]",
      "how it was read",
      ...values.map(({ name, unit }) => (unit === "" ? name : `${name} (${unit})`)),
    ],
    rows: table.rows.map((row, index) => {
      const label = cell(row, "label");
      const note = cell(row, "note");
      const source = sourceOf(table.name, cell(row, "source"), cell(row, "where"));
      const before = table.rows[index - 1];
      // points of one family follow one another: what they share is said beside the first
      const shared = [place("label"), place("note"), ...long.map(({ index: at }) => at)].filter((at) => at >= 0);
      const again = before !== undefined && shared.every((at) => row[at] === before[at]);
      const more = again ? [] : long.map(({ name, index: at }) => joined(name, row[at]));
      return [
        cell(row, "key"),
        [label, ...more].filter(isFilled).join("; "),
        [again ? "" : note, source].filter(isFilled).join(" "),
        trust(cell(row, "basis"), cell(row, "weak")),
        ...values.map(({ index: at }) => row[at] ?? ""),
      ];
    }),
  };
}

const isFilled = (words: string): boolean => words !== "";

function joined(name: string, value: Row[number] | undefined): string {
  if (value === null || value === undefined || value === "") return "";
  return name === "also" ? `also ${value}` : name === "axes" ? `by ${value}` : String(value);
}

/** The table of sources is where the short names are spelt out, so it names none. */
function sourceOf(table: string, title: string, where: string): string {
  if (table === "sources") return "";
  return `[${[sourceKeys.get(title) ?? title, where].filter(isFilled).join(", ")}]`;
}

const trust = (basis: string, weak: string): string => (weak === "" ? basis : `${basis}: weak`);
