import { plain } from "../../../src/core/naming/findNamed";
import { lossFamilies } from "../../../src/reference/lossFamilies";
import { materials } from "../../../src/reference/materials";
import { transport } from "../../../src/reference/transport";
import { cellAddress, placeOf } from "../../../src/sheets/address";
import type { Sheet, SheetCell, Workbook } from "../../../src/sheets/workbook";

/** What the distance of a name that is none is, so that it is never the nearest. */
const FAR = 99;

/** The formula of a distance, by the cell of the name that it is of. */
const DISTANCE = /^=IF\(OR\(\$[A-Z]+\$\d+="",([A-Z]+\d+)=""\),99,IF\(LEN/;
const OWN = ["Lookups", "Workings"];

const known = new Set(
  [...lossFamilies, ...materials, ...transport].flatMap(({ key, aliases }) => [key, ...aliases]).map(plain),
);

/** Whether it is a name, as in "elbow 1.5 x2". */
const isKnown = (text: string): boolean => known.has(plain(text.replace(/\b[x×]?\s*\d[\d.,]*(?:\s*°)?/gi, " ")));
const beginning = (text: string): string => plain(text).slice(0, 2);

/**
 * The workbook without the comparisons of a wrong name with those that begin otherwise: each table has four thousand formulas of them, and most
 * tables of a test no wrong name at all. Such a name says that it is far, as it does beside a blank. What is offered for which slip is
 * asked of all names in agreement.grid.test.ts.
 */
export function withFewNames(workbook: Workbook): Workbook {
  const texts = workbook.sheets.flatMap(({ name, cells }) =>
    OWN.includes(name)
      ? []
      : cells.flatMap((cell) => ("value" in cell && typeof cell.value === "string" ? cell.value.split(/[;\n]/) : [])),
  );
  const near = new Set(texts.filter((text) => text.trim() !== "" && !isKnown(text)).map(beginning));
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => (sheet.name === "Workings" ? cut(sheet, near) : sheet)),
  };
}

function cut(sheet: Sheet, near: ReadonlySet<string>): Sheet {
  const cells = new Map(sheet.cells.map((cell) => [cell.at, cell]));
  const formulaAt = (at: string): string => {
    const cell = cells.get(at);
    return cell !== undefined && "formula" in cell ? cell.formula : "";
  };
  const beside = (at: string, columns: number): string => {
    const { column, row } = placeOf(at);
    return cellAddress(column + columns, row);
  };
  const names = new Map<string, string>(); // by the cell of the distance
  for (const cell of sheet.cells) {
    const found = "formula" in cell ? DISTANCE.exec(cell.formula) : null;
    if (found !== null) names.set(cell.at, found[1]!);
  }
  const isKept = (name: string): boolean => {
    const cell = cells.get(name)!;
    return !("value" in cell) || near.has(beginning(String(cell.value)));
  };
  const candidates = [...names].filter(([distance]) => formulaAt(beside(distance, 1)) !== "");
  const kept = new Set(
    candidates.flatMap(([distance, name]) =>
      isKept(name) ? [distance, ...(formulaAt(beside(distance, 1)).match(/(?<![A-Z$])[A-Z]+\d+/g) ?? [])] : [],
    ),
  );
  const instead = new Map<string, SheetCell | null>();
  for (const [distance] of names) {
    if (kept.has(distance)) continue;
    for (const columns of [-4, -3, -2, -1]) instead.set(beside(distance, columns), null);
    for (const at of [distance, ...(formulaAt(beside(distance, 1)) === "" ? [] : [beside(distance, 1)])])
      instead.set(at, { at, value: FAR });
  }
  return {
    ...sheet,
    cells: sheet.cells.flatMap((cell) => {
      const other = instead.get(cell.at);
      return other === undefined ? [cell] : other === null ? [] : [other];
    }),
  };
}
