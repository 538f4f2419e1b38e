import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { runCell, RUNS_FIRST } from "../../../src/sheets/book/layout";
import { gridOfBook } from "../../support/gridOfBook";

const order = { units: "IP", contents: "example", sheets: ["summary"] } as const; // and those that it reads
const shows = gridOfBook(budgetBook(order, { sheets: [], names: [] }));

test("what is said of a hood has nothing between two semicolons, nor one at its end, whatever is wanted there", () => {
  const [airflow, words] = [runCell("Airflow", RUNS_FIRST), (): unknown => shows.value("Summary", "F8")];
  expect(shows.value("Summary", "A8")).toBe("band saw");
  expect(words()).toMatch(/^\d+ ± \d+ cfm; short of air; dust settles$/);
  shows.type("Runs", airflow, "'400");
  expect(shows.value("Summary", "C8")).toBe("a text");
  expect(words()).toMatch(/^\d+ ± \d+ cfm; dust settles$/);
  shows.clear("Runs", airflow);
  expect(words()).toMatch(/^\d+ ± \d+ cfm; dust settles$/);
  shows.type("Runs", airflow, "1");
  expect(words()).toMatch(/^\d+ ± \d+ cfm; wanted is met; dust settles$/);
});
