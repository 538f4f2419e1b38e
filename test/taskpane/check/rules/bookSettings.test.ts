import type { BookSetting } from "../../../../src/sheets/calculated";
import { findingsIn } from "../../../../src/taskpane/check/findingsIn";
import { seenIn } from "../../../../src/taskpane/check/seenIn";
import { systemOf } from "../../../../src/taskpane/start/systemOf";
import { bookOf, soundRuns, type SheetOfTest } from "../../../support/books";

const ofOurs: Record<string, SheetOfTest> = {
  Mine: { rows: [["own"], [0.087]], formulas: { A2: "=DUCT.AREA(4)" } },
  Runs: { rows: [...soundRuns, [], ["Area"], [0.087]], formulas: { A7: "=DUCT.AREA(4)" } },
};

const seen = (settings: readonly BookSetting[], sheets = ofOurs) => seenIn({ ...bookOf(sheets), settings });
const told = (settings: readonly BookSetting[], sheets = ofOurs) =>
  findingsIn(seen(settings, sheets)).filter(({ rule }) => rule === "A setting of Excel");

describe("settings of Excel under which cells show other numbers", () => {
  test.each<[BookSetting, RegExp]>([
    ["calculates when asked", /^Excel calculates this book only when asked, so cells may show numbers of before/],
    ["counts in circles", /^Excel goes round in circles \(iterative calculation\)/],
    ["rounds as shown", /^This book rounds every number to the decimals that it shows/],
  ])("%s: is told before all else", (setting, what) => {
    const findings = findingsIn(seen([setting]));
    expect(findings[0]).toMatchObject({ rule: "A setting of Excel", what: expect.stringMatching(what), at: "A2" });
  });

  test("are none in a book without a formula of ours, and where none is set", () => {
    expect(told(["calculates when asked"], { Mine: { rows: [[3]], formulas: { A1: "=1+2" } } })).toEqual([]);
    expect(told([])).toEqual([]);
  });

  test("stand first among what Start says to do next, though another sheet comes first", async () => {
    const header = ["Run", "Airflow (cfm)", "Velocity (fpm)", "Static suction (in.w.g.)", "Gate", "Note"];
    const sheets: typeof ofOurs = {
      ...ofOurs,
      Flow: { rows: [header, ["saw", 400, 4584, 2, "open", ""]], formulas: { A1: "=DUCT.SOLVE(Runs!A1:I4)" } },
    };
    const system = await systemOf(seen(["calculates when asked"], sheets), async () => ({
      error: "#N/A",
      message: "not computed here",
    }));
    expect(system?.next[0]?.finding).toMatchObject({ rule: "A setting of Excel", sheet: "Flow", at: "A1" });
  });
});
