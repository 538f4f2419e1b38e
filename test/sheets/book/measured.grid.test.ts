import type { GridModel } from "../../../src/hosts/local/grid";
import { shownWith } from "../../../src/hosts/local/readGrid";
import type { UnitSystem } from "../../../src/reference/quantities";
import { clubCopy } from "../../../src/share/clubCopy";
import { type Compute, recomputed } from "../../../src/share/recomputed";
import { cellAddress } from "../../../src/sheets/address";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import {
  DRAWN,
  INPUTS,
  INPUTS_LAST,
  MORE_INPUTS,
  MOST_INPUTS,
  NOTES,
  READINGS,
  SHORT,
  WORDS,
} from "../../../src/sheets/book/measured/layout";
import { answerLetters } from "../../../src/sheets/book/parts/answerReferences";
import { CURVE_HEADER, CURVE_LAST, FLOW_COLUMN, FLOW_HEADER } from "../../../src/sheets/book/layout"; // prettier-ignore
import { GAINS, GAINS_LAST } from "../../../src/sheets/book/flow/flowLayout";
import { HOODS_FIRST, IN_SHORT } from "../../../src/sheets/book/leaks/layout";
import { DRAWN_OWN, HEAT, OWN_ANSWER, OWN_SAYS, POINT_AIRFLOW, POINT_PRESSURE, THROTTLES, USED, USED_CELL } from "../../../src/sheets/book/fan/fanLayout"; // prettier-ignore
import { takenIn } from "../../../src/sheets/book/parts/taken";
import { namedCells } from "../../../src/sheets/book/start/startLayout";
import type { Calculated } from "../../../src/sheets/calculated";
import type { Workbook } from "../../../src/sheets/workbook";
import { typed } from "../../share/solve/solvedCopies";
import { gridOf } from "../../support/grid";
import { relative } from "../../support/printed";
import { gridOfBook, type Shows } from "../../support/gridOfBook";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;
const SHEET = "Measured";
const SECOND = READINGS + 2; // the reading with the slip
const bookOf = (units: UnitSystem, contents: "example" | "empty"): Workbook =>
  budgetBook({ units, sheets: ["measured", "summary", "leaks"], contents }, { sheets: [], names: [] });
const shown = (units: UnitSystem, contents: "example" | "empty"): Shows => gridOfBook(bookOf(units, contents));

const sentences = (shows: Shows): string[] => shows.column(SHEET, `B${SHORT}:B${SHORT + 3}`).map(String);
const words = (shows: Shows): string[] =>
  shows
    .column(SHEET, `${WORDS}${READINGS + 1}:${WORDS}${READINGS + 9}`)
    .map(String)
    .map((said) => said.split(/[:;]/)[0]!);

test("a reading inserted between others leaves what is said beside its own reading", () => {
  const shows = shown("IP", "example");
  const said = (): Map<string, unknown> => {
    const rows = shows.texts(SHEET, `B${READINGS + 1}:H${READINGS + 14}`).map((row) => row.join("|"));
    const beside = shows.column(SHEET, `${WORDS}${READINGS + 1}:${WORDS}${READINGS + 14}`);
    return new Map(rows.flatMap((row, at) => (/\w/.test(row) ? [[row, beside[at]]] : [])));
  };
  const inputsSaid = (first: number): unknown[] => shows.column(SHEET, `A${first}:A${first + 5}`);
  const before = { said: said(), sentences: sentences(shows), inputs: inputsSaid(INPUTS + 1) };
  expect([...before.said.values()].filter((words) => String(words).startsWith("left out"))).toHaveLength(1);
  shows.insertRow(SHEET, READINGS + 3);
  shows.insertRow(SHEET, READINGS + 1);
  expect(said()).toEqual(before.said);
  expect(sentences(shows).map((words) => words.replace("(sheet row 17)", "(sheet row 16)"))).toEqual(before.sentences);
  expect(inputsSaid(INPUTS + 3)).toEqual(before.inputs);
});

// The planer's area is that of a 6 in duct for its 5 in one, (6/5)² = 1.44; the thickness sander's is off by a decimal place.
describe.each<[UnitSystem, string, string, string]>([
  ["IP", "airflow at planer (sheet row 16)", "the area of 6 in?", "722"],
  ["SI", "airflow at thickness sander (sheet row 16)", "a decimal place of the area?", "1190"],
])("the example's readings in %s", (units, which, slip, right) => {
  const shows = shown(units, "example");
  let asCalibrated: Calculated;

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

  // Two rows of three cells for each input: up to its ± and back, beside its number.
  test("are drawn: a bar for each ± before and after, none for a leak", () => {
    const inputs = Array.from({ length: MOST_INPUTS }, (_, index) => INPUTS + 1 + index);
    inputs.forEach((row, index) => {
      const [before, after] = [DRAWN + 2 + 3 * index, DRAWN + 2 + 3 * (MOST_INPUTS + index)];
      const isPercent = shows.value(SHEET, `F${row}`) === "%";
      expect(shows.value(SHEET, `B${before}`)).toBe(isPercent ? shows.value(SHEET, `D${row}`) : 0);
      expect(shows.value(SHEET, `C${after}`)).toBe(isPercent ? shows.value(SHEET, `E${row}`) : 0);
    });
    expect(shows.value(SHEET, `G${INPUTS + 2}`)).toBe(2);
    expect(shows.value(SHEET, `A${DRAWN + 5}`)).toBeCloseTo(2 - 0.12, 9);
    expect(shows.value(SHEET, `A${MORE_INPUTS}`)).toBe("");
  });

  test("agree once the slip is typed right, as the sheet proposes to try", () => {
    shows.type(SHEET, `E${SECOND}`, right);
    expect(sentences(shows)[1]).toBe("all readings agree: 9");
    expect(shows.value(SHEET, "C3")).toContain(`type ${right} in E${SECOND}`);
  });

  test("make the ducts and the fan of Flow and of what reads it, where its cell says so", () => {
    const flow = () => ["C", "V"].map((column) => shows.column("Flow", `${column}11:${column}14`));
    const sealed = () => shows.column("Leaks", `G${HOODS_FIRST}:G${HOODS_FIRST + 3}`).map(Number);
    const error = (words: unknown): number => Number(/± ([\d.]+)/.exec(String(words))?.[1]);
    const off = () => new Map(shows.texts("Flow", `A${GAINS + 1}:D${GAINS_LAST}`).map(([run, change, gained, sure]) => [`${run}: ${change}`, error(sure) / Number(gained)])); // prettier-ignore
    const [entered, entire, offEntered] = [flow(), sealed(), off()];
    expect(shows.value("Flow", "A3")).toBe("Ducts and fan as typed");
    shows.type("Flow", "B2", "as calibrated");
    const calibrated = flow();
    expect(shows.errors()).toEqual([]);
    const said = [shows.value("Flow", "A3"), shows.value("Summary", "A3"), shows.value("Leaks", `D${IN_SHORT}`)];
    expect(said).toEqual(said.map(() => "Ducts and fan as Measured makes them"));
    calibrated[0]!.forEach((airflow, hood) => {
      expect(Number(airflow)).toBeLessThan(Number(entered[0]![hood])); // the fan gives less than is printed
      expect(error(calibrated[1]![hood])).toBeLessThan(error(entered[1]![hood]) / 1.8);
    });
    const [largest] = [...off()].filter(([key]) => key.includes("one size larger"));
    expect(largest![1]).toBeLessThan(offEntered.get(largest![0])! / 1.5);
    sealed().forEach((gain, hood) => expect(Math.abs(gain - entire[hood]!)).toBeLessThan(0.2 * entire[hood]! + 1)); // both sides are calibrated
    asCalibrated = shows.calculated(typed(typed(bookOf(units, "example"), "Flow", "B2", "as calibrated"), SHEET, `E${SECOND}`, Number(right))); // prettier-ignore
    shows.type("Flow", "B2", "another word");
    expect(flow()).toEqual(entered);
    expect(shows.value("Flow", "A3")).toBe("Ducts and fan as typed");
    shows.type("Flow", "B2", "as entered");
  });

  // Every cell, numbers to a thousand-millionth: the grid computes the copy anew. In one system, for that takes seconds.
  if (units === "SI")
    test("a copy that is made meanwhile shows the same, and what flows is old in it once a reading is another", () => {
      const grids: GridModel[] = [];
      const compute: Compute = (workbook) => {
        grids.push(gridOf(workbook));
        return shownWith(grids.at(-1)!, workbook).shown;
      };
      const { copy, differs, unchecked } = recomputed(asCalibrated, clubCopy(asCalibrated, ORDER), compute);
      expect([differs, unchecked, copy.untranslated]).toEqual([[], [], []]);
      const { getters } = grids[0]!;
      const idOf = (sheet: string): string => getters.getSheetIdByName(sheet)!;
      const solved = copy.fixed.findIndex(({ sheet, at }) => sheet === "Flow" && at === cellAddress(FLOW_COLUMN, FLOW_HEADER)); // prettier-ignore
      const state = (): unknown => getters.getEvaluatedCell({ sheetId: idOf("Fixed numbers"), col: 2, row: 5 + solved }).value; // prettier-ignore
      expect(state()).toBe(`as of ${ORDER.date}`);
      grids[0]!.dispatch("UPDATE_CELL", { sheetId: idOf(SHEET), col: 3, row: READINGS, content: "20" }); // its velocity
      expect(state()).toBe("inputs changed since: these numbers are old");
      const said = (sheet: string, col: number, row: number): unknown => getters.getEvaluatedCell({ sheetId: idOf(sheet), col, row }).value; // prettier-ignore
      const labels = (): unknown[] => [said("Flow", 0, 2), said("Summary", 0, 2), said("Leaks", 3, IN_SHORT - 1)];
      expect(labels()).toEqual(labels().map(() => "Ducts and fan as Measured makes them"));
      grids[0]!.dispatch("UPDATE_CELL", { sheetId: idOf("Flow"), col: 1, row: 1, content: "as entered" });
      expect(labels()).toEqual(labels().map(() => "Another word in Flow!B2 changes no number of this copy: all stay as calibrated")); // prettier-ignore
    });

  test("a row that is wrong says why, and the others still count", () => {
    shows.type(SHEET, `C${READINGS + 1}`, "no such run");
    expect(shows.value(SHEET, `${WORDS}${READINGS + 1}`)).toMatch(/^At must be the name of a run/); // and no row that counts from the headings
    expect(shows.value(SHEET, `A${READINGS + 1}`)).toBe('At must be the name of a run, or "fan"');
    expect(sentences(shows)[1]).toBe("all readings agree: 8; 1 cannot be used: see their words");
  });
});

describe.each<UnitSystem>(["IP", "SI"])("the owner's own fan in %s", (units) => {
  const shows = gridOfBook(budgetBook({ units, sheets: ["flow"], contents: "example" }, { sheets: [], names: [] }));
  const curve = (): unknown[] => shows.column("Fan", `E${CURVE_HEADER + 1}:E${CURVE_LAST}`);
  const own = answerLetters(OWN_ANSWER, "pressure");
  const fanAir = (): number => Number(shows.value("Fan", POINT_AIRFLOW.replaceAll("$", "")));

  test("is what all sheets take once its cell says so, and what they took before is drawn beside it", () => {
    expect(shows.errors()).toEqual([]);
    expect(shows.value("Fan", OWN_SAYS)).toMatch(/^5 readings; each ± is two standard deviations/);
    const [printed, before] = [curve(), fanAir()];
    shows.type("Fan", USED_CELL.replaceAll("$", ""), USED.read);
    expect(curve()).toEqual(shows.column("Fan", `${own}${THROTTLES + 1}:${own}${THROTTLES + 15}`));
    expect(fanAir()).toBeLessThan(0.97 * before);
    expect(shows.value("Fan", `E${DRAWN_OWN + 16}`)).toBe(printed[0]);
    expect(shows.value("Fan", "A7")).toMatch(/^Used: as read below/);
    expect(shows.errors()).toEqual([]);
  });

  test("names a reading that fits no fan, and says where there are too few", () => {
    const suction = (row: number): string => `C${THROTTLES + row}`;
    const [said, typed] = [
      shows.value("Fan", suction(3)),
      [1, 2, 3, 4, 5].map((row) => shows.value("Fan", suction(row))),
    ];
    shows.type("Fan", suction(3), String(Number(said) / 10));
    expect(shows.value("Fan", OWN_SAYS)).toMatch(/row 4 of readings is left out: its pressure is 0\.\d+ times/);
    [2, 3, 4, 5].forEach((row) => shows.clear("Fan", `A${THROTTLES + row}:I${THROTTLES + row}`));
    expect(shows.value("Fan", OWN_SAYS)).toMatch(/^These readings make no curve: see K/);
    expect(shows.value("Fan", "A7")).toMatch(/^Look: no fan: the readings make no curve/);
    expect(shows.value("Flow", "B10")).toBe("Fill in the sheets Runs and Fan first");
    shows.type("Fan", USED_CELL.replaceAll("$", ""), USED.printed);
    expect([shows.value("Fan", "A7"), typed.length]).toEqual([
      expect.stringMatching(/^9 points are read, up to (2400 cfm|4200 m³\/h)$/),
      5,
    ]);
  });

  // 1792 cfm are 0.8457 m³/s: 1.2014 · 1006 · 0.8457 · 20 K is 20.4 kW in standard air, and goes with the air's density.
  test("and what its air takes outdoors", () => {
    const density = Number(shows.value("Start", namedCells.density.replaceAll("$", "")));
    shows.type("Fan", `B${HEAT + 2}`, units === "SI" ? String(1792 * 1.699010796) : "1792");
    const standard = units === "SI" ? 1.2014 : 0.075;
    expect(Math.abs(Number(shows.value("Fan", `B${HEAT + 5}`)) - (20.44 * density) / standard)).toBeLessThan(0.02);
    const [air, pressure] = [fanAir(), Number(shows.value("Fan", POINT_PRESSURE.replaceAll("$", "")))];
    const watts = units === "SI" ? (air / 3600) * pressure : air * 0.3048 ** 3 / 60 * pressure * 249.0889; // prettier-ignore
    expect(relative(Number(shows.value("Fan", `B${HEAT + 6}`)), watts / 450)).toBeLessThan(1e-3);
    expect(shows.value("Fan", `A${HEAT + 7}`)).toMatch(/takes \d+ kW of heat with it; the fan itself takes \d\.\d kW/);
  });

  // A share typed with its sign is a hundredth in its cell; 0.45 % of a motor would make 100 times the power.
  test.each([
    ["45%", 4, "Check B{}: it must be a number from 5 to 100, in %.", 6],
    ["200", 4, "Check B{}: it must be a number from 5 to 100, in %.", 6],
    ["warm", 3, "Check B{}: it must be a number from 0 to 150.", 5],
    ["46024", 3, "Check B{}: it must be a number from 0 to 150.", 5],
    ["-20", 3, "Check B{}: it must be a number from 0 to 150.", 5],
    ["400 cfm", 2, "Check B{}: it must be a number above 0, or blank.", 5],
  ])("takes no %p for a setting of that heat, and says so", (typed, row, says, answer) => {
    const cell = `B${HEAT + row}`;
    const before = String(shows.value("Fan", cell));
    shows.type("Fan", cell, typed);
    expect(shows.value("Fan", `A${HEAT + 7}`)).toBe(says.replace("{}", String(HEAT + row)));
    expect(shows.value("Fan", `B${HEAT + answer}`)).toBe("");
    shows.type("Fan", cell, before);
    expect(shows.value("Fan", `A${HEAT + 7}`)).toMatch(/^Blown outdoors/);
  });
});

test("an empty sheet waits for ducts and fan", () => {
  const shows = shown("IP", "empty");
  expect(sentences(shows)).toEqual(["Fill in the sheets Runs and Fan first", "", "", ""]);
  expect([5, 6, 7].map((row) => shows.value("Fan", `${row === 7 ? "A" : "B"}${HEAT + row}`))).toEqual(["", "", ""]);
  expect(shows.errors()).toEqual([]);
});

test("beside a sheet Flow that was there before it points to no choice, for there is none", () => {
  const before = budgetBook({ units: "SI", sheets: ["flow"], contents: "example" }, { sheets: [], names: [] });
  const { sheets } = budgetBook({ units: "SI", sheets: ["measured"], contents: "empty" }, takenIn(before));
  expect(sheets.map(({ name }) => name)).toEqual([SHEET]);
  const said = (of: Workbook["sheets"]): unknown => of.find(({ name }) => name === SHEET)!.cells.find(({ at }) => at === `A${NOTES + 1}`); // prettier-ignore
  expect(said(sheets)).toMatchObject({ value: expect.stringMatching(/^The sheet Flow was there before these readings and goes by what is typed\./) }); // prettier-ignore
  expect(said(bookOf("SI", "empty").sheets)).toMatchObject({ value: expect.stringMatching(/^Choose "as calibrated" in B2 of the sheet Flow:/) }); // prettier-ignore
});
