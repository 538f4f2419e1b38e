/** A budget whose runs table is filled to its last row, computed by the grid's library with our own functions. */
import { openBudget } from "../../../src/hosts/file/readBook";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { cellAddress } from "../../../src/sheets/address";
import { fortyRuns, HOODS } from "../../support/fortyRuns";
import { gridOfBook, type Shows } from "../../support/gridOfBook";

let grid: Shows; // the second book is what the first became

describe.each([
  ["as it is made", async () => fortyRuns()],
  [
    "described from the grid, as a browser keeps it, saved and read back from the file",
    async () => {
      const described = grid.calculated(fortyRuns());
      return (await openBudget(await writeBook(described, { title: "forty runs" }))).workbook;
    },
  ],
])("forty runs, %s", (_, book) => {
  beforeAll(async () => {
    grid = gridOfBook(await book());
  });

  test("no cell shows an error", () => {
    expect(grid.errors()).toEqual([]);
  });

  test("the scenarios have their two columns for each hood, and the words after them", () => {
    const heading = (column: number): unknown => grid.value("Flow", cellAddress(1 + column, 66)); // from B on
    expect(heading(1)).toBe("Scenario");
    expect(heading(2 * HOODS)).toBe(`machine ${HOODS} airflow (cfm)`);
    expect(heading(2 * HOODS + 5)).toBe("Slowest run");
  });

  test("what stands behind so many columns is still found: the fan's air, the slowest run and its flag", () => {
    expect(grid.value("Flow", "C76")).toBe(grid.value("Flow", cellAddress(2 * HOODS + 3, 67)));
    expect(grid.value("Flow", "F76")).toMatch(/^main: .* dust settles: "wood dust" needs /);
    expect(grid.value("Flow", "A67")).toBe("settles");
  });
});
