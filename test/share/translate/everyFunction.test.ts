import { translators } from "../../../src/share/translate/translators";
import { copyTables } from "../../../src/share/translate/lookupTables";
import { newWorkings } from "../../../src/share/translate/workings";
import { cellFunctions } from "../../support/cellFunctions";
import { samples } from "./corpus";
import { wholeCalls } from "./wholeCalls";

const declared = cellFunctions.map(({ name }) => name);

const ELSEWHERE = ["BUDGET", "SOLVE", "CLAIM"]; // each has workings of its own kind

const context = {
  sheet: "One",
  at: "A1",
  extent: { rows: 1, columns: 1 },
  tables: copyTables("IP").tables,
  workings: newWorkings(),
};

test("every function is live and compared in the engines, or fixed with a reason", () => {
  const live = new Set([...samples.map(({ name }) => name), ...wholeCalls(0).names]);
  expect(declared.length).toBeGreaterThan(35);
  for (const name of declared) {
    if (ELSEWHERE.includes(name) || live.has(name)) continue;
    const translation = translators.get(name)?.([], context);
    expect([name, translation]).toEqual([
      name,
      { kind: "fixed", why: expect.stringMatching(/^[a-z].{20,}$/) as string },
    ]);
  }
});

test("no translator is there for a function that does not exist", () => {
  expect([...translators.keys()].filter((name) => !declared.includes(name))).toEqual([]);
});
