/** A row that is refused is an error, so that a sum over the answer is one too: no total comes out too low without a sign. */
import { formula } from "../../../src/sheets/cells";
import type { CellValue, Workbook } from "../../../src/sheets/workbook";
import type { EngineValues } from "../../support/engine";
import { gridOfBook } from "../../support/gridOfBook";
import { hardRecalculation } from "../../support/hardRecalculation";
import { ironCalc } from "../../support/ironCalc";
import { hasLibreOffice } from "../../support/libreOffice";
import { sheetOf } from "../../support/sheetOf";
import { plainBook } from "./plainBook";

const rows: CellValue[][] = [
  [400, 4],
  [-400, 4],
  [null, null],
  [500, 5],
];
const CALL = "=DUCT.VELOCITY(A1:A4,B1:B4)";
const TOTAL = "=SUM(H1:H4)";
const GOOD = "=H1+H4";

// By hand: 400 cfm through pi/4 (4/12)^2 ft2 and 500 through pi/4 (5/12)^2: 4583.66 + 3666.93 fpm.
const SUM_OF_GOOD = 8250.6;

const totals = [formula("J1", TOTAL), formula("J2", GOOD)];

/** The same sheet as a copy has it, its sum beside it. */
function copied(): Workbook {
  const { workbook } = plainBook([{ name: "S", rows, formulas: { H1: CALL } }], "IP");
  const [first, ...others] = workbook.sheets;
  return { ...workbook, sheets: [{ ...first!, cells: [...first!.cells, ...totals] }, ...others] };
}

function shows(values: EngineValues): void {
  const at = (address: string): unknown => values.get("S")?.get(address) ?? "";
  expect([at("H2"), at("H3"), at("J1")]).toEqual(["#N/A", "", "#N/A"]);
  expect(Number(at("J2"))).toBeCloseTo(SUM_OF_GOOD, 1);
}

test("in the grid: the cell says which row and why, and the others compute", () => {
  const cells = rows.flatMap((row, down) =>
    row.flatMap((value, across) => (value === null ? [] : [{ at: `${"AB"[across]!}${down + 1}`, value }])),
  );
  const grid = gridOfBook({ name: "B", sheets: [sheetOf("S", [...cells, formula("H1", CALL), ...totals])], names: [] });
  expect(grid.value("S", "J1")).toBe("#VALUE!");
  expect(grid.value("S", "J2")).toBeCloseTo(SUM_OF_GOOD, 1);
  expect(grid.value("S", "H3")).toBe("");
  expect(grid.errors()[0]).toBe("S!H2: #VALUE! airflow must be at least 0 cfm; got -400");
});

test("in a copy, in an independent engine", () => shows(ironCalc(copied())));

(hasLibreOffice ? test : test.skip)("in a copy, in LibreOffice", async () => shows(await hardRecalculation(copied())));
