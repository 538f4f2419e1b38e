import { gridModel } from "../../src/hosts/local/gridModel";
import { shownWith } from "../../src/hosts/local/readGrid";
import { makeCopy } from "../../src/hosts/makeCopy";
import { budgetBook } from "../../src/sheets/book/budgetBook";
import type { Calculated } from "../../src/sheets/calculated";
import type { Workbook } from "../../src/sheets/workbook";
import { gridOfBook } from "./gridOfBook";

export const ORDER = { kind: "formulas", date: "2026-11-29", version: "1.1.0" } as const;

/** A name of the look-up tables, and the cells of Fan beside which a call of the book's own looks it up. */
export const NAME = "branch 30";
const OWN = [
  { at: "Z1", value: NAME },
  { at: "Z2", formula: "=DUCT.LOSSCOEFFICIENT(Z1)" },
];

function book(): Workbook {
  const plain = budgetBook({ units: "IP", sheets: ["flow"], contents: "example" }, { sheets: [], names: [] });
  const sheets = plain.sheets.map((sheet) =>
    sheet.key === "fan" ? { ...sheet, cells: [...sheet.cells, ...OWN] } : sheet,
  );
  return { ...plain, sheets };
}

export interface FlowCopy {
  readonly live: Calculated;
  readonly bytes: Uint8Array; // of the copy's file
}

let made: Promise<FlowCopy> | undefined;

/** The example with what flows in it as a club copy, made once for all that are loaded together: it takes most of their time. */
export const flowCopy = (): Promise<FlowCopy> => (made ??= make());

async function make(): Promise<FlowCopy> {
  const workbook = book();
  const live = gridOfBook(workbook).calculated(workbook);
  const copy = await makeCopy(live, ORDER, (one) => shownWith(gridModel(one), one).shown, () => undefined); // prettier-ignore
  if (!copy.made) throw new Error(copy.why);
  return { live, bytes: copy.bytes };
}
