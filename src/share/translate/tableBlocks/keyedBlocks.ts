import { constantOfClass, constantOfEuropeanClass } from "../../../core/leaks/seamLeak";
import { plain } from "../../../core/naming/findNamed";
import { gateConditions } from "../../../reference/gateConditions";
import { leakageClasses } from "../../../reference/leakageClasses";
import { materials } from "../../../reference/materials";
import { convertibleUnits, fromSI, type UnitSystem, unitOf } from "../../../reference/quantities";
import type { Provenance } from "../../../reference/schema";
import { unitProvenance } from "../../../reference/tables/unitTable";
import { type NamedSeries, stockSizes } from "../../../reference/tradeSizes";
import type { BlockCell, TableBlock } from "./block";
import { TRUST, trustCells } from "./trust";

/** The figure as it was printed, without a tail of binary rounding. */
const tidy = (value: number): number => Number(value.toPrecision(12));

interface Keyed extends Provenance {
  readonly key: string;
  readonly aliases: readonly string[];
}

/** A column of the row's own figure, or one that goes by each spelling. */
type NamedColumn<Row> =
  | { readonly header: string; readonly of: (row: Row) => BlockCell }
  | { readonly header: string; readonly ofEach: (name: string) => BlockCell };

/** One row per name; the other spellings of a row take its figures, so that a reader changes them in one place. */
export function namedRows<Row extends Keyed>(
  rows: readonly Row[],
  columns: readonly NamedColumn<Row>[],
): Pick<TableBlock, "columns" | "rows"> {
  const lines: BlockCell[][] = [];
  for (const row of rows) {
    const first = lines.length;
    lines.push([
      plain(row.key),
      ...columns.map((column) => ("of" in column ? column.of(row) : column.ofEach(plain(row.key)))),
      ...trustCells([row]),
    ]);
    for (const alias of row.aliases)
      lines.push([
        plain(alias),
        ...columns.map((column): BlockCell =>
          "of" in column ? (place) => place.cell(column.header, first) : column.ofEach(plain(alias)),
        ),
        ...trustCells([row]),
      ]);
  }
  return { columns: ["name", ...columns.map(({ header }) => header), ...TRUST], rows: lines };
}

export const materialBlock = (units: UnitSystem): TableBlock => ({
  title: `Wall roughness of duct materials, ${unitOf("diameter", units).label}`,
  inputs: true,
  ...namedRows(materials, [
    { header: "roughness", of: ({ roughness }) => tidy(fromSI(roughness, unitOf("diameter", units))) },
  ]),
});

export const gateBlock = (units: UnitSystem): TableBlock => ({
  title: `Leak of slide gates, estimates: gap ${unitOf("diameter", units).label}, length in diameters`,
  inputs: true,
  ...namedRows(gateConditions, [
    { header: "gap", of: ({ gap }) => tidy(fromSI(gap, unitOf("diameter", units))) },
    { header: "length", of: ({ lengthPerDiameter }) => lengthPerDiameter },
  ]),
});

export const leakageBlock = (): TableBlock => ({
  title: "Seam leakage: m³/s through a m² at a pressure of p Pa is constant x p^0.65",
  inputs: true,
  ...namedRows(leakageClasses, [
    {
      header: "constant",
      of: ({ system, value }) => (system === "EN" ? constantOfEuropeanClass(value) : constantOfClass(value)),
    },
  ]),
});

/** Stock diameters as they are called, in inches or mm. */
export const sizeBlock = (system: UnitSystem, series: NamedSeries | null): TableBlock => ({
  title: `Stock diameters${series === null ? "" : ` (${series})`}, ${unitOf("diameter", system).label}`,
  inputs: true,
  columns: ["size", ...TRUST],
  rows: stockSizes(system, series).map((size) => [
    tidy(fromSI(size.diameter, unitOf("diameter", system))),
    ...trustCells([size]),
  ]),
});

export const unitBlock = (): TableBlock => ({
  title: "Units: what one of it is in SI",
  inputs: false,
  columns: ["unit", "quantity", "factor", ...TRUST],
  rows: Object.entries(convertibleUnits).flatMap(([kind, units]) =>
    units.flatMap((unit) =>
      unit.names.map((name) => [plain(name), kind, unit.factor, ...trustCells([unitProvenance(unit.names)])]),
    ),
  ),
});
