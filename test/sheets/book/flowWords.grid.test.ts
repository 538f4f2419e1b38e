import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { beside, FLOW_FIRST, UNCERTAINTY_ANSWER } from "../../../src/sheets/book/flow/flowLayout";
import { answerCell, FLOW_ANSWER } from "../../../src/sheets/book/parts/answerReferences";
import type { SheetCell } from "../../../src/sheets/workbook";
import { bookOf, gridOf, place, setUpGrid } from "../../hosts/local/gridOfOurs";
import { sheetOf } from "../../support/sheetOf";

beforeAll(setUpGrid);

/** The words of Flow's first rows where SOLVE gives such runs, and a table of ± that has stayed as it was. */
function words(runs: readonly string[], sure: readonly (readonly [run: string, words: string])[]): unknown[] {
  const flow = budgetBook(
    { units: "IP", contents: "empty", sheets: ["runs", "fan", "flow"] },
    { sheets: [], names: [] },
  );
  const ofWords = runs.map((_, index) => `${beside.inWords}${FLOW_FIRST + index}`);
  const formulas = flow.sheets.find(({ key }) => key === "flow")!.cells.filter(({ at }) => ofWords.includes(at));
  const plain = (at: string): string => at.replaceAll("$", "");
  const typed: SheetCell[] = [
    ...runs.map((value, index) => ({ at: plain(answerCell(FLOW_ANSWER, "run", FLOW_FIRST + index)), value })),
    ...sure.flatMap(([run, value], index) => [
      { at: plain(answerCell(UNCERTAINTY_ANSWER, "run", FLOW_FIRST + index)), value: run },
      { at: plain(answerCell(UNCERTAINTY_ANSWER, "inWords", FLOW_FIRST + index)), value },
    ]),
  ];
  const model = gridOf(bookOf(sheetOf("Flow", [...typed, ...formulas])));
  return ofWords.map((at) => model.getters.getEvaluatedCell(place(model, at)).value);
}

test("a run's airflow in words is that of the run, where a row has come between and the table of ± has stayed", () => {
  const sure = [["saw", "290 ± 70 cfm"], ["sander", "540 ± 140 cfm"], ["Fan", "1700 ± 400 cfm"]] as const; // prettier-ignore
  expect(words(["saw", "sander", "Fan"], sure)).toEqual(sure.map(([, said]) => said));
  expect(words(["saw", "lathe", "sander", "Fan", ""], sure)).toEqual([
    "290 ± 70 cfm",
    "",
    "540 ± 140 cfm",
    "1700 ± 400 cfm",
    "",
  ]);
});
