import { lossFamilies } from "../../../src/reference/lossFamilies";
import { placeOf } from "../../../src/sheets/address";
import { demo } from "../../../src/sheets/demo";
import { inventedCurve } from "../../../src/sheets/demo/flowFan";
import { shedRuns } from "../../../src/sheets/demo/shed";
import type { Sheet, SheetCell } from "../../../src/sheets/workbook";

const sheetNamed = (name: string): Sheet => demo.sheets.find((sheet) => sheet.name === name)!;
const flow = sheetNamed("Flow");
const cellAt = (sheet: Sheet, at: string): SheetCell | undefined => sheet.cells.find((cell) => cell.at === at);
const valueAt = (sheet: Sheet, at: string): unknown => {
  const cell = cellAt(sheet, at);
  return cell !== undefined && "value" in cell ? cell.value : undefined;
};
const duct = flow.cells.flatMap((cell) => ("formula" in cell && cell.formula.includes("DUCT.") ? [cell] : []));
const length = (range: string): number => {
  const rows = range.split(":").map((at) => placeOf(at).row);
  return rows[1]! - rows[0]! + 1;
};

describe("the flow sheet", () => {
  test("stands after the budget and says in its first lines that it is invented, and what to try", () => {
    expect(demo.sheets.slice(0, 2).map(({ name }) => name)).toEqual(["Budget", "Flow"]);
    expect(valueAt(flow, "C1")).toMatch(/^Invented, like the shed/);
    expect(valueAt(flow, "C2")).toMatch(/^Try it: change the planer's gate in A12 to shut\./);
    expect(valueAt(flow, "A27")).toMatch(/^Invented/);
  });

  test("asks four custom functions, each told the density and the units", () => {
    expect(duct.map(({ formula }) => /DUCT\.[A-Z]+/.exec(formula)![0])).toEqual([
      "DUCT.SOLVE",
      "DUCT.SOLVE",
      "DUCT.SCENARIOS",
      "DUCT.GAINS",
    ]);
    for (const { formula } of duct) expect(formula).toMatch(/,density,units\)/);
  });

  test("the sealed call takes the same table up to its columns of leaks, which stand last", () => {
    const budget = sheetNamed("Budget");
    const headings = ["N", "O", "P", "Q", "R", "S", "T"].map((letter) => valueAt(budget, `${letter}10`));
    expect(headings.slice(2)).toEqual(["Side", "Leak", "Leak open", "Leak shut", undefined]);
    const [now, sealed] = duct.map(({ formula }) => /Budget!([A-Z0-9:]+)/.exec(formula)![1]!);
    expect(now).toBe("B10:S22");
    expect(sealed).toBe("B10:P22");
  });

  // SOLVE: 8 columns, a header, twelve rows and the fan; its airflow alone; SCENARIOS: name, two for each of four hoods,
  // five more; GAINS: 5 columns and no known end.
  test.each([
    ["B10", 8, 14],
    ["G45", 1, 14],
    ["B69", 14, 6],
    ["A81", 5, 1000],
  ])("nothing stands in the way of what %s fills: %d columns, %d rows", (at, columns, rows) => {
    expect(duct.map((cell) => cell.at)).toContain(at);
    const first = placeOf(at);
    const inTheWay = flow.cells.filter((cell) => {
      const { column, row } = placeOf(cell.at);
      const inside =
        column >= first.column && column < first.column + columns && row >= first.row && row < first.row + rows;
      return inside && cell.at !== at && ("formula" in cell || cell.value !== null);
    });
    expect(inTheWay.map((cell) => cell.at)).toEqual([]);
  });

  test("a gate stands before each run that has one on the budget, in the same row", () => {
    shedRuns.forEach((run, index) => expect(valueAt(flow, `A${11 + index}`)).toBe(run.Gate ?? null));
  });

  test("a scenario has a gate for each hood, and the hoods are the first runs of the table", () => {
    const hoods = shedRuns.filter(({ Hood }) => Hood !== undefined);
    expect(hoods).toEqual(shedRuns.slice(0, hoods.length));
    const headings = ["C62", "D62", "E62", "F62", "G62"].map((at) => cellAt(flow, at));
    expect(headings.map((cell) => (cell !== undefined && "formula" in cell ? cell.formula : undefined))).toEqual([
      "=Budget!B11",
      "=Budget!B12",
      "=Budget!B13",
      "=Budget!B14",
      undefined,
    ]);
    expect(lossFamilies.filter(({ kind }) => kind === "hood").map(({ key }) => key)).toEqual(
      expect.arrayContaining(hoods.map(({ Hood }) => Hood)),
    );
  });

  test("the invented fan's curve falls, so that it has one working point", () => {
    inventedCurve.slice(1).forEach(([airflow, pressure], index) => {
      expect(airflow).toBeGreaterThan(inventedCurve[index]![0]);
      expect(pressure).toBeLessThan(inventedCurve[index]![1]);
    });
  });

  test("the chart's lines are as long as its x, and take in the typed points and the working point", () => {
    const [chart] = flow.charts!;
    expect(flow.charts!.length).toBe(1);
    expect(chart!.x.range).toBe("A29:A39");
    for (const { range } of chart!.y.series) expect(length(range)).toBe(length(chart!.x.range));
    expect(duct[0]!.formula).toContain(",A28:B38,"); // the working point below is not part of the curve
  });
});
