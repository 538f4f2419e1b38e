import { showsDay } from "../../../../src/sheets/showsDay";
import { matrixOf } from "../../../../src/taskpane/check/callArguments";
import { foundIn, runsWith, seenOf } from "../../../support/books";

const HALF = 46_024; // what a spreadsheet keeps for the second day of 2026, which shows as 1/2
const found = (format: string, formula = "=DUCT.BUDGET(Runs!A1:I4)") =>
  foundIn({
    Runs: { rows: runsWith("saw", "Flex", HALF), formats: { E2: format } },
    Budget: { rows: [["Run"]], formulas: { A1: formula } },
  }).filter(({ rule }) => rule === "Day for a number");

describe("a day where a number is meant", () => {
  test("is told at its cell", () => {
    expect(found("m/d")).toEqual([
      {
        rule: "Day for a number",
        what: "E2 shows a day or a time where a number is meant.",
        sheet: "Runs",
        at: "E2",
      },
    ]);
  });

  test("is none where the cell shows a number, or no function of ours takes it", () => {
    expect(found("#,##0")).toEqual([]);
    expect(found("m/d", "=SUM(Runs!A1:I4)")).toEqual([]);
    expect(found("m/d", "=DUCT.BUDGET(Runs!A1:D4)")).toEqual([]);
  });

  test("reaches no function that the pane calls itself", () => {
    const { runs } = seenOf({ Runs: { rows: runsWith("saw", "Flex", HALF), formats: { E2: "m/d" } } });
    expect(matrixOf(runs[0]!)[1]).toContain("a day or a time");
    expect(matrixOf(runs[0]!).flat()).not.toContain(HALF);
  });

  // codes of ECMA-376 part 1, 18.8.30 and 18.8.31
  test.each(["m/d", "d-mmm", "mm-dd-yy", "h:mm AM/PM", "[h]:mm:ss", 'yyyy"-"mm', "[$-409]d mmm"])(
    "%p shows days or times",
    (code) => expect(showsDay(code)).toBe(true),
  );
  test.each([
    "General",
    "0.00",
    "#,##0",
    "0%",
    "@",
    '0 "days"',
    "[Red]0.0",
    "0\\d",
    "# ?/?",
    "0.00E+00",
    '0.0" m/s"',
    "[$kr-sv-SE] 0",
  ])("%p shows numbers", (code) => expect(showsDay(code)).toBe(false));
});
