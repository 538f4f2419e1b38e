import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { RUNS_FIRST, runCell, RUNS_HEADER } from "../../../src/sheets/book/layout";
import { sheetKeys } from "../../../src/sheets/sheetKeys";
import { findingsIn } from "../../../src/taskpane/check/findingsIn";
import { seenIn } from "../../../src/taskpane/check/seenIn";
import { gridOfBook } from "../../support/gridOfBook";

const workbook = budgetBook({ units: "IP", contents: "example", sheets: sheetKeys }, { sheets: [], names: [] });
const merged = (work: (grid: ReturnType<typeof gridOfBook>) => void): unknown[] => {
  const grid = gridOfBook(workbook);
  work(grid);
  return findingsIn(seenIn(grid.calculated(workbook))).flatMap(({ rule, what, sheet, at }) =>
    rule === "Merged cells" ? [[sheet, at, what]] : [],
  );
};

test("a gate that is merged over four runs stands at the first alone, and is told there", () => {
  const [gate, last] = [runCell("Gate", RUNS_FIRST), runCell("Gate", RUNS_FIRST + 3)];
  const found = merged((grid) => {
    grid.type("Runs", gate, "open");
    grid.merge("Runs", `${gate}:${last}`);
    expect(grid.column("Runs", `${gate}:${last}`)).toEqual(["open", "", "", ""]);
  });
  expect(found).toEqual([["Runs", gate, `${gate} to ${last} are merged: only ${gate} holds what they show.`]]);
});

test("so is what a plain formula of a sheet reads, and a heading; a title is none, nor is a blank", () => {
  const [from, to] = [runCell("Hood", RUNS_HEADER), runCell("Fittings", RUNS_HEADER)];
  expect(merged((grid) => grid.merge("Leaks", "E23:E24"))).toEqual([["Leaks", "E23", expect.any(String)]]);
  expect(merged((grid) => grid.merge("Runs", `${from}:${to}`))).toEqual([["Runs", from, expect.any(String)]]);
  expect(merged((grid) => grid.merge("Leaks", "A1:C1"))).toEqual([]);
  expect(merged((grid) => grid.merge("Leaks", "A36:A38"))).toEqual([]);
});
