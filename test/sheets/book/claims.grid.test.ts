import { claimFacts } from "../../../src/reference/claimFacts";
import type { UnitSystem } from "../../../src/reference/quantities";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { CHECKS, CLOSING, COUNTED, DUCTS, FACTS_FIRST, FACTS_LAST } from "../../../src/sheets/book/claims/layout";
import type { SheetKey } from "../../../src/sheets/sheetKeys";
import { factCell } from "../../support/factCell";
import { gridOfBook, type Shows } from "../../support/gridOfBook";

const shown = (units: UnitSystem, contents: "example" | "empty", sheets: readonly SheetKey[] = ["claims"]): Shows =>
  gridOfBook(budgetBook({ units, sheets: [...sheets], contents }, { sheets: [], names: [] }));
const verdicts = (shows: Shows): Record<string, unknown> =>
  Object.fromEntries(
    shows
      .column("Claims", `F${FACTS_FIRST}:F${FACTS_LAST}`)
      .map((check, index) => [check, shows.value("Claims", `E${FACTS_FIRST + index}`)])
      .filter(([check]) => check !== ""),
  );
const said = (shows: Shows, row: number): string => String(shows.value("Claims", `F${row}`));

describe("the claims of an invented data sheet", () => {
  const shows = shown("IP", "example");

  // By hand: 1650 x 9 / 6349.6 = 2.339 hp, 2.313 squeezed, 1.54 times 1.5 hp. 1118.5 W of 230 x 8 = 1840; 2.339 hp = 1744 W is 0.95 of it.
  // u = π 1 ft 3450/min = 55.06 m/s, ρu² = 14.6 in.w.g.; 9 is 61 %. φ = 1.1327 / (55.06 x 0.07297) = 0.282. 1650 / 30 = 55 fpm.
  test("hold, are doubted and are refuted", () => {
    expect(shows.errors()).toEqual([]);
    expect(verdicts(shows)).toEqual({
      "Air power against the motor": "impossible",
      "Motor power against the supply": "holds",
      "Air power against the supply": "doubtful",
      "Pressure against the tip speed": "holds",
      "Airflow of its wheel": "holds",
      "Filter face velocity": "doubtful",
      "Filter rating": "cannot tell",
      "Rated airflow through the hose": "cannot tell",
      Sound: "cannot tell",
    });
    expect(said(shows, COUNTED)).toBe("1 impossible, 2 doubtful, 3 hold, 3 cannot tell");
    expect(said(shows, CLOSING)).toMatch(
      /^Cannot be as given: air power against the motor\. .* Ask the seller for .*\.$/,
    );
  });

  test("what it says to try turns the impossible into what holds", () => {
    shows.type("Claims", factCell("rated point"), "1650 at 3"); // 0.78 hp of 1.5
    expect(verdicts(shows)).toMatchObject({ "Air power against the motor": "holds" });
    shows.type("Claims", factCell("rated point"), "1650 at 9");
  });

  test("are counted in the table: a row of the data sheet that is deleted takes a verdict out of the list alone", () => {
    const grid = shown("IP", "example");
    grid.deleteRow("Claims", FACTS_FIRST + 1); // the free-air airflow: 1650 of the rated point is judged in its place, and holds
    expect(said(grid, COUNTED)).toBe(
      "1 impossible, 2 doubtful, 3 hold, 3 cannot tell; more of them under Check by check",
    );
    expect(Object.keys(verdicts(grid))).toHaveLength(8);
  });

  test.each([
    ["speed", "1", "Speed, row 17", /^Speed in row 17 of the facts must be from 100 rpm to 60000 rpm .*; got 1\.$/],
    ["motor power", "strong", "Motor power, row 7", /^Motor power in row 7 .*; got "strong"\.$/],
    ["wheel kind", "big", "Wheel kind, row 15", /^Wheel kind in row 15 .* one of backward, radial, .*; got "big"\.$/],
  ] as const)("%s = %s is told in its own row, and the others are judged", (key, typed, row, sentence) => {
    const at = factCell(key);
    const before = String(shows.value("Claims", at));
    shows.type("Claims", at, typed);
    expect(verdicts(shows)).toMatchObject({ [row]: "not read", "Filter face velocity": "doubtful" });
    expect(shows.value("Claims", `F${CHECKS + 1}`)).toMatch(sentence);
    expect(said(shows, COUNTED)).toMatch(/, 1 not read$/);
    expect(shows.errors()).toEqual([]);
    shows.type("Claims", at, before);
  });

  test("the row that is named is the row of the fact, counted from the heading", () => {
    shows.type("Claims", factCell("airflow"), "7 cubits");
    expect(verdicts(shows)).toMatchObject({ "Airflow, row 2": "not read" });
    shows.clear("Claims", factCell("airflow"));
  });
});

// By hand: u = π 1 ft 3450/60 s = 55.06 m/s, so ρu² is 14.6 in.w.g., squeezed 14.9; 1000 cfm at 8 in.w.g. is 1.26 hp of 2, at 20 3.15 hp,
// 3.09 squeezed, 1.54 times 2.
test("facts typed with their units have their verdicts; an absurd pressure turns to impossible, a bad cell is told alone", () => {
  const shows = shown("IP", "example");
  const facts = {
    B13: "1000 cfm at 8 in.w.g.",
    B16: "2 HP",
    B22: "12",
    B24: "radial",
    B25: "1",
    B26: "3450",
    B27: "300",
    B29: "1 micron",
  };
  for (const [at, words] of Object.entries(facts)) shows.type("Claims", at, words);
  expect(verdicts(shows)).toMatchObject({
    "Air power against the motor": "holds",
    "Pressure against the tip speed": "holds",
    "Filter rating": "cannot tell",
  });
  shows.type("Claims", "B13", "1000 at 20");
  expect(verdicts(shows)).toMatchObject({
    "Air power against the motor": "impossible",
    "Pressure against the tip speed": "impossible", // more than 1.2 times 14.9
  });
  shows.type("Claims", "B13", "1000 at 9000");
  expect(verdicts(shows)).toMatchObject({ "Rated point, row 4": "not read", "Filter rating": "cannot tell" });
});

describe("a data sheet of one's own", () => {
  test("is blank at first, and shows no error", () => {
    const shows = shown("IP", "empty");
    expect(shows.errors()).toEqual([]);
    expect(verdicts(shows)).toEqual({});
    expect(said(shows, COUNTED)).toBe("Type what the data sheet says; leave blank what it does not say.");
    expect(said(shows, CLOSING)).toBe("");
  });

  test("that cannot be read at all says where to look", () => {
    const shows = shown("IP", "empty");
    shows.type("Claims", factCell("speed"), "0"); // counts as not given
    expect(said(shows, COUNTED)).toBe(`see A${CHECKS}`);
  });

  // By hand: u = π 0.3 m 2850/60 s = 44.77 m/s, ρu² = 1.2 x 2004 = 2405 Pa; 2200 Pa is 91 % of it.
  test("computes alike in SI, with the units beside the numbers", () => {
    const shows = shown("SI", "example");
    expect(shows.errors()).toEqual([]);
    expect(shows.column("Claims", `C${FACTS_FIRST}:C${FACTS_LAST}`)).toEqual([
      "m³/h",
      "m³/h",
      "m³/h at Pa",
      "Pa",
      "Pa",
      "kW",
      "V",
      "A",
      "choose",
      "%",
      "mm",
      "mm",
      "mm",
      "choose",
      "stages",
      "rpm",
      "m²",
      "choose",
      "as printed",
      "mm",
      "m",
      "choose",
      "as printed",
      "m",
    ]);
    expect(verdicts(shows)).toMatchObject({
      "Air power against the motor": "impossible", // 1711 W, 1692 squeezed, of 1100: 1.54
      "Pressure against the tip speed": "doubtful",
    });
  });

  test("has every fact that CLAIM knows, and the words of those that are chosen", () => {
    const { sheets } = budgetBook({ units: "IP", sheets: ["claims"], contents: "empty" }, { sheets: [], names: [] });
    const { cells, lists } = sheets.find(({ name }) => name === "Claims")!;
    const names = cells
      .filter(({ at }) => /^A(1[1-9]|2\d|3[0-4])$/.test(at))
      .map((cell) => "value" in cell && cell.value);
    expect(names).toEqual(claimFacts.map(({ key }) => key));
    expect(lists.map(({ range }) => range)).toEqual(
      (["phases", "wheel kind", "filter medium", "hose kind"] as const).map(factCell),
    );
  });
});

describe("what it is on the owner's own ducts", () => {
  test("without a budget, the line says what it waits for", () =>
    expect(said(shown("IP", "example"), DUCTS)).toMatch(/^With the sheets of a budget beside this one/));

  test.each(["IP", "SI"] as const)("is what SOLVE says of the fan, and the claim beside it (%s)", (units) => {
    const shows = shown(units, "example", ["claims", "flow", "budget"]);
    const row = shows.column("Flow", "B11:B51").indexOf("Fan") + 11;
    const [airflow, pressure] = [shows.value("Flow", `C${row}`), shows.value("Flow", `E${row}`)].map(Number) as [
      number,
      number,
    ];
    const [unit, head, digits] = units === "IP" ? ["cfm", "in.w.g.", 1] : ["m³/h", "Pa", 0];
    expect(airflow).toBeGreaterThan(100);
    expect(said(shows, DUCTS)).toBe(
      `On your ducts the fan of the sheet Fan moves ${Math.round(airflow)} ${unit} at ${Number(pressure.toFixed(Number(digits)))} ${head}, not the ${units === "IP" ? "2,400 CFM" : "4100 m³/h"} of the data sheet (gates as on Flow). It is the curve that you typed there: type this fan's.`,
    );
  });

  // As a spreadsheet sorts the table: names and numbers change places, and no reference to them does.
  test("names the vendor's airflow by its name, wherever it stands, and no unit stands beside another fact", () => {
    const shows = shown("IP", "example", ["claims", "flow", "budget"]);
    const [airflow, amps] = [factCell("free-air airflow"), factCell("amps")];
    for (const [at, name, value] of [
      [airflow, "amps", "8"],
      [amps, "free-air airflow", "2,400 CFM"],
    ] as const) {
      shows.type("Claims", at.replace("B", "A"), name);
      shows.type("Claims", at, value);
    }
    expect(said(shows, DUCTS)).toMatch(/, not the 2,400 CFM of the data sheet \(/);
    expect([airflow, amps].map((at) => shows.value("Claims", at.replace("B", "C")))).toEqual(["", ""]);
    expect(shows.value("Claims", factCell("volts").replace("B", "C"))).toBe("V");
    shows.type("Claims", amps.replace("B", "A"), "CFM"); // a name that it does not look for: nothing is said of it
    expect(said(shows, DUCTS)).not.toMatch(/of the data sheet/);
    expect(said(shows, DUCTS)).toMatch(/^On your ducts the fan of the sheet Fan moves /);
  });

  test("without a curve it is what the ducts ask for, and what to ask the seller", () => {
    const shows = shown("IP", "example", ["claims", "flow", "budget"]);
    shows.clear("Fan", "A9:B23");
    const row = shows.column("Budget", "B9:B49").indexOf("Fan") + 9;
    expect(said(shows, DUCTS)).toMatch(
      new RegExp(
        `^Your ducts ask for ${Math.round(Number(shows.value("Budget", `C${row}`)))} cfm at \\d+(\\.\\d)? in\\.w\\.g\\. \\(Budget\\)\\. Ask the seller how much air`,
      ),
    );
    shows.clear("Runs", "B9:Z48");
    expect(said(shows, DUCTS)).toMatch(/^Fill in the sheet Runs, and the curve on the sheet Fan/);
    expect(shows.errors()).toEqual([]);
  });

  test("in an empty budget it says what to fill in", () =>
    expect(said(shown("IP", "empty", ["claims", "flow", "budget"]), DUCTS)).toMatch(/^Fill in the sheet Runs/));
});
