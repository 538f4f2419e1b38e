import type { ReferenceTable } from "../../reference";
import { type Cell, display, type Value, valuesOf } from "./values";

/** What a row says, in words that need no knowledge of how its table is laid out. */
export function valuesInWords(table: ReferenceTable, row: readonly Cell[]): Value[] {
  const values = valuesOf(table, row);
  if (has(table, "counts as")) return lossInWords(values);
  if (has(table, "unit")) return filterInWords(values);
  if (has(table, "SI unit")) return unitInWords(values);
  const names = NAMES[table.name] ?? {};
  return values.map((value) => ({ ...value, name: names[value.name] ?? value.name }));
}

const has = (table: ReferenceTable, column: string): boolean => table.columns.some(({ name }) => name === column);

/** Columns whose name says too little beside a single row. */
const NAMES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  transport: { low: "keeps moving from", high: "nothing gained above" },
  machines: { airflow: "airflow asked for", "airflow high": "up to", port: "port" },
  gates: { state: "while the gate is", gap: "width of the gap", "length / diameter": "length of the gap in diameters" },
  exposure: { fraction: "dust measured as" },
  claims: { share: "share (1 is all)" },
};

/** Axes of a loss table whose name says too little beside a single row. */
const AXES: Readonly<Record<string, string>> = {
  "r/D": "bend radius / diameter (r/D)",
  "r/H": "bend radius / height (r/H)",
  turn: "turns by",
  "opening h/D": "opening / diameter (h/D)",
  "height h/D": "height / diameter (h/D)",
  "projection L/D": "sticks out by, in diameters (L/D)",
  "length L/D": "length / diameter (L/D)",
};

/** A loss row names its axes in one cell and has their values in others. */
function lossInWords(values: readonly Value[]): Value[] {
  const find = (name: string): Value | undefined => values.find((value) => value.name === name);
  const axes = display(find("axes")?.parts[0]?.cell ?? null).split("; ");
  const angle = find("angle");
  const shape = find("shape") ?? find("diameter");
  const counts = display(find("counts as")?.parts[0]?.cell ?? null);
  const renamed = new Map<Value | undefined, string>([
    [shape, AXES[axes[0] ?? ""] ?? axes[0] ?? ""],
    [angle, AXES[axes.at(-1) ?? ""] ?? axes.at(-1) ?? ""],
    [find("coefficient"), counts === "K" ? "loss coefficient K" : counts],
  ]);
  return values
    .filter(({ name }) => !["axes", "counts as"].includes(name))
    .map((value) => ({ ...value, name: renamed.get(value) ?? value.name }));
}

/** A unit's row says in one cell how much one of it is, and in another of what. */
function unitInWords(values: readonly Value[]): Value[] {
  const unit = display(values.find(({ name }) => name === "SI unit")?.parts[0]?.cell ?? null);
  return values
    .filter(({ name }) => name !== "SI unit")
    .map((value) =>
      value.name === "one of it in SI"
        ? { name: "one of it is", parts: value.parts.map((part) => ({ ...part, unit })) }
        : value,
    );
}

/** A filter's row says in one cell per system which unit its ends have. */
function filterInWords(values: readonly Value[]): Value[] {
  const parts = values.flatMap(({ name, parts }) => parts.map((part) => ({ name, part })));
  const unitOf = (system: string): string =>
    display(parts.find(({ name, part }) => name === "unit" && part.unit === system)?.part.cell ?? null);
  const ends = (name: string): Value[] => {
    const found = parts.filter((one) => one.name === name).map(({ part }) => ({ ...part, unit: unitOf(part.unit) }));
    // a pure number is the same in both systems
    const kept = found.every(({ unit }) => unit === "") ? found.slice(0, 1) : found;
    return kept.length === 0 ? [] : [{ name: name === "low" ? "from" : "to", parts: kept }];
  };
  const place = values.findIndex(({ name }) => ["low", "high", "unit"].includes(name));
  const others = values.filter(({ name }) => !["low", "high", "unit"].includes(name));
  return place < 0 ? others : [...others.slice(0, place), ...ends("low"), ...ends("high"), ...others.slice(place)];
}
