/** What sealing every leak gives, on a sheet whose columns somebody moved: the leaks are told by their headers. */
import { runsColumnPlace, RUNS_FIRST, RUNS_HEADER } from "../../../src/sheets/book/layout";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { cellAddress, columnLetters } from "../../../src/sheets/address";
import type { ShownRunColumn } from "../../../src/reference/runColumns";
import { gridOfBook, type Shows } from "../../support/gridOfBook";
import { withoutCells } from "../../support/withoutCells";

const ROWS = 10; // header and runs of the example

/** The example without the sheets that nothing here asks, what is uncertain, and single changes. */
const example = (): Shows => {
  const whole = budgetBook({ units: "IP", contents: "example", sheets: ["flow"] }, { sheets: [], names: [] });
  return gridOfBook(withoutCells(whole, /DUCT\.(BUDGETUNCERTAINTY|UNCERTAINTY|GAINS)/));
};

const numbers = (grid: Shows, range: string): number[] => grid.column("Flow", range).map(Number);
/** What each hood gets, what it would get with every leak sealed, and the difference, as the sheet Flow has them. */
const told = (grid: Shows) => ({ gets: numbers(grid, "R11:R14"), sealed: numbers(grid, "T11:T14"), gains: numbers(grid, "U11:U14") }); // prettier-ignore

/** A cell of the runs table as a person types it over: nothing where it is blank. */
const typeOver = (grid: Shows, at: string, value: unknown): void => grid.type("Runs", at, String(value));

/** Changes two columns with each other, headers included. */
function swap(grid: Shows, one: ShownRunColumn, other: ShownRunColumn): void {
  const [a, b] = [runsColumnPlace(one), runsColumnPlace(other)];
  for (let row = RUNS_HEADER; row < RUNS_HEADER + ROWS; row++) {
    const [left, right] = [cellAddress(a, row), cellAddress(b, row)];
    const [was, is] = [grid.value("Runs", left), grid.value("Runs", right)];
    typeOver(grid, left, is);
    typeOver(grid, right, was);
  }
}

/** The same example with every leak taken out of the table by hand: what sealing all of them is. */
function sealedByHand(): Shows {
  const grid = example();
  for (const column of ["Leak", "Leak open", "Leak shut"] as const) {
    const at = (row: number): string => cellAddress(runsColumnPlace(column), row);
    grid.clear("Runs", `${at(RUNS_FIRST)}:${at(RUNS_HEADER + ROWS - 1)}`);
  }
  return grid;
}

const close = (some: readonly number[], others: readonly number[]): void =>
  some.forEach((value, index) => expect(Math.abs(value - others[index]!)).toBeLessThan(1e-6 * others[index]!));

describe("what the hoods get with every leak sealed", () => {
  const [tight, grid] = [sealedByHand(), example()];
  const byHand = told(tight).gets;
  const before = told(grid);

  test("is what they get where no leak is typed, and more than they get now", () => {
    close(before.sealed, byHand);
    before.gains.forEach((gain) => expect(gain).toBeGreaterThan(1));
  });

  test("stays so with a leak's column in another's place, and another's in its", () => {
    swap(grid, "Leak open", "Length");
    close(told(grid).sealed, byHand);
    swap(grid, "Leak", "Device exponent");
    close(told(grid).sealed, byHand);
    close(told(grid).gets, before.gets);
  });

  test("stays so with headers in other letters, with other units or none", () => {
    const at = (column: ShownRunColumn): string => cellAddress(runsColumnPlace(column), RUNS_HEADER);
    typeOver(grid, at("Length"), "leak-OPEN"); // where Leak open stands now
    typeOver(grid, at("Leak shut"), "(as found) Leak_shut [in²]");
    close(told(grid).sealed, byHand);
  });

  test("counts what is told of leaks in brackets behind another header", () => {
    typeOver(grid, cellAddress(runsColumnPlace("Device loss"), RUNS_HEADER), "Device loss [leaks of its own] (in.w.g.)"); // prettier-ignore
    typeOver(grid, cellAddress(runsColumnPlace("Flex"), RUNS_HEADER), "Flex (leaks?)");
    close(told(grid).sealed, byHand);
  });

  test("stays so with columns of somebody's own between, in which leaks are spoken of", () => {
    for (const column of ["Diameter", "Side", "Leak shut"] as const) {
      const letters = columnLetters(runsColumnPlace(column));
      grid.insertColumn("Runs", letters);
      grid.type("Runs", `${letters}${RUNS_HEADER}`, `${column} looked at for leaks`);
      grid.type("Runs", `${letters}${RUNS_FIRST}`, "12");
    }
    close(told(grid).sealed, byHand);
    close(told(grid).gets, before.gets);
  });

  test("is nothing more where there is no leak: no air is gained", () => {
    close(told(tight).sealed, told(tight).gets);
    told(tight).gains.forEach((gain) => expect(Math.abs(gain)).toBeLessThan(1e-6));
  });
});
