import type { UnitSystem } from "../../../src/reference/quantities";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { INPUTS, INPUTS_LAST, READINGS, SHORT, WORDS } from "../../../src/sheets/book/measured/layout";
import { gridOfBook, type Shows } from "../../support/gridOfBook";

const SHEET = "Measured";
const SECOND = READINGS + 2; // the reading with the slip
const shown = (units: UnitSystem, contents: "example" | "empty"): Shows =>
  gridOfBook(budgetBook({ units, sheets: ["measured"], contents }, { sheets: [], names: [] }));

const sentences = (shows: Shows): string[] => shows.column(SHEET, `B${SHORT}:B${SHORT + 3}`).map(String);
const words = (shows: Shows): string[] =>
  shows
    .column(SHEET, `${WORDS}${READINGS + 1}:${WORDS}${READINGS + 9}`)
    .map(String)
    .map((said) => said.split(/[:;]/)[0]!);

// The planer's area is that of a 6 in duct for its 5 in one, (6/5)² = 1.44; the thickness sander's is off by a decimal place.
describe.each<[UnitSystem, string, string, string]>([
  ["IP", "airflow at planer (row 3)", "the area of 6 in?", "722"],
  ["SI", "airflow at thickness sander (row 3)", "a decimal place of the area?", "1190"],
])("the example's readings in %s", (units, which, slip, right) => {
  const shows = shown(units, "example");

  test("have one slip, which the sheet finds and asks about, and no other is accused", () => {
    expect(shows.errors()).toEqual([]);
    const [fan, readings, next] = sentences(shows);
    expect(readings).toBe(`1 of 9 readings fit no plausible system and are left out: ${which}`);
    expect(fan).toMatch(/^the fan gives [\d.]+ % less pressure than its curve at /);
    expect(next).toMatch(/^read next: /);
    expect(words(shows)).toEqual(["agrees", "left out", ...Array.from({ length: 7 }, () => "agrees")]);
    expect(shows.value(SHEET, `${WORDS}${SECOND}`)).toContain(slip);
    expect(shows.column(SHEET, `A${READINGS + 1}:A${READINGS + 10}`)).toEqual([...words(shows), ""]);
  });

  test("tell of the fan's speed and the filter more than was known", () => {
    const rows = Array.from({ length: INPUTS_LAST - INPUTS }, (_, index) => INPUTS + 1 + index);
    const of = (name: RegExp) => rows.find((row) => name.test(String(shows.value(SHEET, `A${row}`))))!;
    for (const name of [/^the fan's speed$/, /^device of filter/]) {
      const [before, after] = ["D", "E"].map((column) => Number(shows.value(SHEET, `${column}${of(name)}`)));
      expect(after).toBeLessThan(before! * 0.85);
    }
  });

  test("agree once the slip is typed right, as the sheet proposes to try", () => {
    shows.type(SHEET, `E${SECOND}`, right);
    expect(sentences(shows)[1]).toBe("all readings agree: 9");
    expect(shows.value(SHEET, "D3")).toContain(`type ${right} in E${SECOND}`);
  });

  test("a row that is wrong says why, and the others still count", () => {
    shows.type(SHEET, `C${READINGS + 1}`, "no such run");
    expect(shows.value(SHEET, `${WORDS}${READINGS + 1}`)).toMatch(/^At in row 2 of readings must be the name of a run/);
    expect(sentences(shows)[1]).toBe("all readings agree: 8; 1 cannot be used: see their words");
  });
});

test("an empty sheet waits for ducts and fan", () => {
  const shows = shown("IP", "empty");
  expect(sentences(shows)).toEqual(["Fill in the sheets Runs and Fan first", "", "", ""]);
  expect(shows.errors()).toEqual([]);
});
