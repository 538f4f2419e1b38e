import type { ReferenceTable } from "../../reference";
import { lossFamilies } from "../../reference/lossFamilies";
import type { LossFamily } from "../../reference/schema";
import { display, type Row } from "./values";

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** The fitting or hood that a row of a loss table is a point of; undefined for a multiplier. */
export function familyOf(row: Row): LossFamily | undefined {
  const [key = "", label = ""] = row.map(display);
  return lossFamilies.find(
    (family) => family.label === label && (key === family.key || key.startsWith(`${family.key} `)),
  );
}

/** A formula that gives the row's main number, ready for a cell; null where the row has none that a formula gives. */
export function readyFormula(table: ReferenceTable, row: Row): string | null {
  const at = (column: string): number => table.columns.findIndex(({ name }) => name === column);
  const family = at("counts as") < 0 ? undefined : familyOf(row);
  if (family !== undefined && family.rule !== "expansion") {
    const [shape, angle] = [row[at("shape")] ?? null, row[at("angle")] ?? null];
    // a size carries its unit in its name, "elbow stamped 100 mm 45"; and a 0 of its own would count as left out
    if (family.shape?.quantity === "diameter" || shape === 0 || angle === 0)
      return `=DUCT.LOSSCOEFFICIENT(${quoted(display(row[0] ?? null))})`;
    const turn = angle === family.angle?.usual ? null : angle;
    const rest = turn === null ? (shape === null ? "" : `,${shape}`) : `,${shape ?? ""},${turn}`;
    return `=DUCT.LOSSCOEFFICIENT(${quoted(family.key)}${rest})`;
  }
  const call = referenceCall(table, row);
  return call === null ? null : `=INDEX(${call},1,1)`; // the value alone, so that nothing spills
}

/** A formula that gives the same number and fills the cell beside it with the source and how it is known. */
export function sourcedFormula(table: ReferenceTable, row: Row): string | null {
  const call = referenceCall(table, row);
  return call === null ? null : `=${call}`;
}

/** REFERENCE of the row's main number: its coefficient, else the first that it has; null for a row of words. */
function referenceCall(table: ReferenceTable, row: Row): string | null {
  const coefficient = table.columns.findIndex(({ name }) => name === "coefficient");
  const first = row.findIndex((cell, i) => i > 1 && typeof cell === "number");
  const column = table.columns[typeof row[coefficient] === "number" ? coefficient : first];
  if (column === undefined) return null;
  const header = column.unit === "" ? column.name : `${column.name} (${column.unit})`;
  return `DUCT.REFERENCE(${[table.name, display(row[0] ?? null), header].map(quoted).join(",")})`;
}
