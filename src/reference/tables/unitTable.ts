import { convertibleUnits } from "../quantities";
import type { Provenance } from "../schema";
import { provenanceCells, type ReferenceTable, referenceTable, text, number } from "./referenceTable";

interface UnitRow extends Provenance {
  readonly key: string;
  readonly names: string;
  readonly factor: number;
  readonly si: string;
}

const SI_UNITS: Readonly<Record<string, string>> = {
  airflow: "m³/s",
  velocity: "m/s",
  pressure: "Pa",
  length: "m",
  area: "m²",
  density: "kg/m³",
  power: "W",
};

const exact: Provenance = {
  source: "nistSp811",
  locator: "exact definitions of ft, in, lb and hp",
  basis: "second-hand",
  checked: null,
};
/** A column of water has no exact definition: it goes by the water's temperature. */
const water: Provenance = { ...exact, locator: "water columns", basis: "from memory" };

/** Where the definition of a unit with these names comes from. */
export const unitProvenance = (names: readonly string[]): Provenance =>
  (names[0] ?? "").includes("w.g.") ? water : exact;

const rows: readonly UnitRow[] = Object.entries(convertibleUnits).flatMap(([kind, units]) =>
  units.map(({ names, factor }) => ({
    key: `${kind} ${names[0] ?? ""}`,
    names: names.join(", "),
    factor,
    si: SI_UNITS[kind] ?? "",
    ...unitProvenance(names),
  })),
);

/** Every unit that CONVERTUNIT knows, and what one of it is in SI. */
export const unitTable: ReferenceTable = referenceTable<UnitRow>(
  "units",
  "Units and their definitions",
  rows,
  [
    text("key", (row) => row.key),
    text("label", (row) => row.names),
    number("one of it in SI", "", (row) => row.factor, 12),
    text("SI unit", (row) => row.si),
  ],
  provenanceCells,
);
