import { itemAt } from "../../../src/reference/itemAt";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { FLOW_HEADER, OPEN_CELL } from "../../../src/sheets/book/layout";
import type { ShownCell } from "../../../src/sheets/calculated";
import { cellAddress } from "../../../src/sheets/address";
import { openIn, solvedIn } from "../../../src/taskpane/check/callArguments";
import { seenIn } from "../../../src/taskpane/check/seenIn";
import { gridOfBook } from "../../support/gridOfBook";
import { shownBook } from "../../support/shownBook";

// The sheet Flow lists its open gates itself, in plain formulas: what the pane takes for them must be the same words.
test("the pane computes with the gates that the sheet Flow lists as open", () => {
  const workbook = budgetBook({ units: "IP", contents: "example", sheets: ["flow"] }, { sheets: [], names: [] });
  const grid = gridOfBook(workbook);
  const taken = (): unknown => {
    const book = shownBook(workbook, grid);
    const flow = new Map<string, ShownCell>(book.shown.get("Flow"));
    for (let row = FLOW_HEADER; row < FLOW_HEADER + 20; row++)
      for (let column = 1; column < 12; column++) {
        const at = cellAddress(column, row); // also what a formula fills
        const value = grid.value("Flow", at);
        if (value !== "") flow.set(at, { value: value as ShownCell["value"] });
      }
    const seen = seenIn({ ...book, shown: new Map([...book.shown, ["Flow", flow]]) });
    return openIn(solvedIn(seen.answers, itemAt(seen.runs, 0)));
  };
  const listed = (): unknown => grid.value("Flow", OPEN_CELL.replaceAll("$", ""));
  const all = listed();
  expect(String(all)).toMatch(/drum sander/);
  expect(taken()).toEqual([[all]]);
  grid.type("Flow", `A${FLOW_HEADER + 3}`, "shut drum sander");
  expect(String(listed())).not.toMatch(/drum sander|Mend/);
  expect(taken()).toEqual([[listed()]]);
});
