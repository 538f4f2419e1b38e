import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { runCell, RUNS_FIRST } from "../../../src/sheets/book/layout";
import { gridOfBook } from "../../support/gridOfBook";

const order = { units: "IP", contents: "example", sheets: ["budget"] } as const; // and those that it reads
const shows = gridOfBook(budgetBook(order, { sheets: [], names: [] }));

test("a length that was left blank leads what stands beside its run, until a 0 is typed", () => {
  const check = (): unknown => shows.value("Runs", `A${RUNS_FIRST}`);
  const usual = check();
  expect(usual).toMatch(/^ok: /);
  shows.clear("Runs", runCell("Length", RUNS_FIRST));
  expect(check()).toBe(usual); // it has a hose
  shows.clear("Runs", runCell("Flex", RUNS_FIRST));
  expect(check()).toBe(`no length; ${String(usual)}`);
  shows.type("Runs", runCell("Length", RUNS_FIRST), "0");
  expect(check()).toBe(usual);
});

test("a leak of a gate leads it where no gate is told, until one is, or the leak is gone", () => {
  const check = (): unknown => shows.value("Runs", `A${RUNS_FIRST}`);
  const usual = check();
  shows.type("Runs", runCell("Leak shut", RUNS_FIRST), "40");
  expect(check()).toBe(usual); // it has a gate
  shows.clear("Runs", runCell("Gate", RUNS_FIRST));
  expect(check()).toMatch(/^no gate for its leak; ok: /);
  for (const leak of ["Leak open", "Leak shut"] as const) shows.clear("Runs", runCell(leak, RUNS_FIRST));
  expect(check()).toMatch(/^ok: /);
});
