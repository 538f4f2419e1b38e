/** Of IF, IFERROR and IFNA the grid computes only what they give, in the file for Node and in that for the page. */
import { readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";
import { library } from "../../support/gridLibrary";

const modules = path.join(__dirname, "../../../node_modules");

/** The page's file, as its worker has it: without a document. */
function libraryOfPage(): typeof library {
  const globals: Record<string, unknown> = { console, setTimeout, performance, EventTarget, Event };
  Object.assign(globals, { self: globals, globalThis: globals, window: undefined });
  const context = vm.createContext(globals);
  for (const file of ["@odoo/owl/dist/owl.iife.min.js", "@odoo/o-spreadsheet/dist/o_spreadsheet.min.iife.js"])
    vm.runInContext(readFileSync(path.join(modules, file), "utf8"), context);
  return vm.runInContext("o_spreadsheet", context) as typeof library;
}

const CALLED = 7;
const CHOICES: readonly (readonly [formula: string, shows: unknown, calls: number])[] = [
  ["=IF(TRUE,1,CALLED())", 1, 0],
  ["=IF(TRUE,CALLED(),1)", CALLED, 1],
  ["=IF(FALSE,CALLED(),1)", 1, 0],
  ["=IF(FALSE,1,CALLED())", CALLED, 1],
  ["=IF(2,1,CALLED())", 1, 0],
  ["=IF(0,CALLED(),1)", 1, 0],
  ["=IF(B1,CALLED(),1)", 1, 0], // blank
  ["=IF(B1,CALLED())", 0, 0],
  ["=IF(TRUE,,CALLED())", 0, 0],
  ["=IF(1=1,IF(1=2,CALLED(),3),CALLED())", 3, 0],
  ['=IF("TRUE",1,CALLED())', 1, 1], // a text is understood by IF itself
  ['=IF("FALSE",CALLED(),1)', 1, 1],
  ["=IF(1/0,CALLED(),CALLED())", "#DIV/0!", 2],
  ["=SUM(IF({TRUE,FALSE},1,CALLED()))", 1 + CALLED, 1],
  ["=IFERROR(1,CALLED())", 1, 0],
  ['=IFERROR("text",CALLED())', "text", 0],
  ["=IFERROR(B1,CALLED())", 0, 0],
  ["=IFERROR(1/0,CALLED())", CALLED, 1],
  ["=SUM(IFERROR({1,2},CALLED()))", 3, 1],
  ["=IFNA(1,CALLED())", 1, 0],
  ["=IFNA(NA(),CALLED())", CALLED, 1],
  ["=IFNA(1/0,CALLED())", "#DIV/0!", 1],
];

test.each([
  ["Node", () => library],
  ["the page", libraryOfPage],
])("in the file for %s each formula shows what it did, and computes no branch that it does not give", (_, from) => {
  const { addFunction, Model } = from();
  let calls = 0;
  addFunction("CALLED", { description: "Counts.", args: [], compute: () => ((calls += 1), CALLED) });
  const seen = CHOICES.map(([formula]) => {
    calls = 0;
    const model = new Model({ version: "18.5.1", sheets: [{ id: "s", cells: { A1: formula } }] });
    return [formula, model.getters.getEvaluatedCell({ sheetId: "s", col: 0, row: 0 }).value, calls];
  });
  expect(seen).toEqual(CHOICES);
});

test("what a branch names is read again when it changes, whether or not it was taken before", () => {
  const model = new library.Model({
    sheets: [{ id: "s", cells: { A1: "=IF(B1>0,C1,D1)", B1: "1", C1: "5", D1: "6" } }],
  });
  const shown = () => model.getters.getEvaluatedCell({ sheetId: "s", col: 0, row: 0 }).value;
  const type = (col: number, content: string) =>
    model.dispatch("UPDATE_CELL", { sheetId: "s", col, row: 0, content } as never);
  expect(shown()).toBe(5);
  type(3, "60");
  expect(shown()).toBe(5);
  type(1, "-1");
  expect(shown()).toBe(60);
  type(3, "61");
  expect(shown()).toBe(61);
});
