import { originalsSheet } from "../../../src/share/originals";
import { findingsIn } from "../../../src/taskpane/check/findingsIn";
import { restsOn } from "../../../src/taskpane/check/named/restsOn";
import { whichRuns } from "../../../src/taskpane/check/runs";
import { seenIn } from "../../../src/taskpane/check/seenIn";
import { bookOf, runsWith, solveHeader, soundRuns } from "../../support/books";

/** A map that counts how often it is walked through. */
class Walked<Key, Value> extends Map<Key, Value> {
  walks = 0;
  override [Symbol.iterator]() {
    this.walks += 1;
    return super[Symbol.iterator]();
  }
}

const dust = runsWith("saw", "Airflow", 100);
const book = bookOf({
  Runs: { rows: dust },
  Flow: { rows: [solveHeader, ["saw", 100, 1000, 1, 0, 1, "open", "resize: so"]] },
  Notes: { rows: [["nothing to see"]] },
});

test("every sheet is looked through once, whatever number of rules asks what it holds", () => {
  const counted = new Map([...book.shown].map(([name, cells]) => [name, new Walked(cells)]));
  const seen = seenIn({ ...book, shown: counted });
  expect(findingsIn(seen).length).toBeGreaterThan(1);
  restsOn(seen);
  expect([...counted.values()].map(({ walks }) => walks)).toEqual([1, 1, 1]);
});

test("what is seen: tables of runs, answers and curves, by their sheets", () => {
  const curve = [["Airflow (cfm)", "Fan static pressure (in.w.g.)"], [0, 9], [900, 0]]; // prettier-ignore
  const seen = seenIn(bookOf({ Here: { rows: soundRuns }, Fan: { rows: curve } }));
  expect(seen.runs.map(({ sheet }) => sheet)).toEqual(["Here"]);
  expect(seen.curves.map(({ points }) => points)).toEqual([
    [
      [0, 9],
      [900, 0],
    ],
  ]);
  expect([seen.answers, seen.failed]).toEqual([[], []]);
});

test("what a club copy has beside the budget is no part of it, whatever its sheets are called now", () => {
  const note = [solveHeader, ["saw", 100, 1000, 1, 0, 1, "open", "resize: so"]];
  const copy = bookOf({ Runs: { rows: dust }, Flow: { rows: note }, Steps: { rows: [...dust, [], ...note] } });
  const record = originalsSheet([], ["Steps"], "Before");
  const withRecord = { ...copy, workbook: { ...copy.workbook, sheets: [...copy.workbook.sheets, record] } };
  const seen = (one: typeof copy): string[] =>
    [...seenIn(one).runs, ...seenIn(one).answers, ...findingsIn(seenIn(one))].map(({ sheet }) => sheet);
  expect(seen(copy)).toContain("Steps");
  expect(seen(withRecord)).toEqual(seen(bookOf({ Runs: { rows: dust }, Flow: { rows: note } })));
});

describe("the units of a table", () => {
  const headers = ["Run", "To", "Airflow", "Diameter"];
  const seen = (
    row: readonly (string | number)[],
    formulas: Record<string, string>,
    extra: Record<string, string> = {},
  ) =>
    seenIn(
      bookOf({
        Mine: { rows: [row, ["saw", "fan", 680, 100], [], [], ...Object.keys(formulas).map(() => ["x"])], formulas },
        Set: { rows: [["Units", extra.units ?? ""]] },
      }),
    ).runs.map(({ system }) => system);

  // 100 is 100 mm in such a call, and was 100 inches in the pane: 8 m/s through pipe that was 2.5 m wide there.
  test.each([
    ['=DUCT.BUDGET(A1:D2,,"SI")', "SI"],
    ['=INDEX(DUCT.BUDGET( Mine!$A:$D ,, " si "),2,3)', "SI"],
    ["=DUCT.BUDGET(A1:D2,,Set!B1)", "SI"],
    ["=DUCT.BUDGET(A1:D2)", "IP"],
    ['=DUCT.BUDGET(A3:D4,,"SI")', "IP"], // another table
  ])("whose headers say none are those of the call that takes it: %s", (formula, system) => {
    expect(seen(headers, { A5: formula }, { units: "SI" })).toEqual([system]);
  });

  test("are inch-pound where no call takes it, or two calls do in different units", () => {
    expect(seen(headers, {})).toEqual(["IP"]);
    expect(seen(headers, { A5: '=DUCT.BUDGET(A1:D2,,"SI")', A6: "=DUCT.BUDGET(A1:D2)" })).toEqual(["IP"]);
  });

  test.each(["m³/h", "m3/h", "m3/hr"])(
    "are those of its headers before all else, spelled as functions read them: %s",
    (unit) => {
      expect(seen(["Run", "To", `Airflow (${unit})`, "Diameter"], {})).toEqual(["SI"]);
      expect(seen(["Run", "To", "Airflow (CFM)", "Diameter"], { A5: '=DUCT.BUDGET(A1:D2,,"SI")' })).toEqual(["IP"]);
    },
  );
});

test("of several tables of runs it is said which one is computed", () => {
  const { runs } = seenIn(bookOf({ Trial: { rows: soundRuns }, Runs: { rows: soundRuns } }));
  expect(whichRuns(runs)).toBe("This book has 2 tables of runs: here is that of the sheet Trial, the first.");
  expect(whichRuns(runs.slice(1))).toBe("");
  expect(whichRuns([])).toBe("");
});
