/** The lists of columns: of a runs table, and of the answers of whole-table functions. */
import { readdirSync, readFileSync } from "node:fs";
import { headerName } from "../../src/core/naming/headerName";
import {
  type AnswerColumn,
  budgetColumns,
  claimColumns,
  differenceColumns,
  fanCurveColumns,
  uncertaintyColumns,
  gainColumns,
  gainUncertaintyColumns,
  leakGainColumns,
  scenarioColumns,
  sizesColumns,
  solveColumns,
  sureGainColumns,
  togetherColumns,
} from "../../src/reference/answerColumns";
import { headerIn, headerOfColumn, placeOfColumn } from "../../src/reference/columnsOfAnswers";
import { scenarioColumnsFor } from "../../src/reference/columnsOfScenarios";
import {
  allColumns,
  leakColumns,
  leakWords,
  neededColumns,
  quantityOfColumn,
  shownColumns,
} from "../../src/reference/columnsOfRuns";
import { type RunColumnRow, runColumns } from "../../src/reference/runColumns";

const rows: readonly RunColumnRow[] = runColumns;

describe("the columns of a runs table", () => {
  test("no two are compared alike, and none has brackets, which a header's unit stands in", () => {
    expect(new Set(allColumns.map(headerName)).size).toBe(rows.length);
    allColumns.forEach((name) => expect(name).not.toMatch(/[([\])]/));
  });

  test("every one of numbers tells in what they are, and every strict one its words", () => {
    for (const { name, kind, quantity, shown } of rows) {
      if (kind === "number") expect([name, quantity]).not.toEqual([name, null]);
      if (shown?.strict) expect(shown.choices?.length).toBeGreaterThan(1);
    }
  });

  test("one without numbers has no quantity to be asked for", () => {
    expect(() => quantityOfColumn("Run")).toThrow("no numbers stand in the column Run");
    expect(quantityOfColumn("Leak")).toBe("openArea");
  });

  test("those without which no table is one stand on the sheet too", () => {
    const shown: readonly string[] = shownColumns.map(({ name }) => name);
    neededColumns.forEach((name) => expect(shown).toContain(name));
  });

  test("the words that tell a leak stand in the header of each leak, and in no other", () => {
    const told = allColumns.filter((name) => leakWords.some((word) => name.toLowerCase().includes(word.toLowerCase())));
    expect(told).toEqual(leakColumns);
    expect(told.length).toBeGreaterThan(0);
    // a blank in a header may be typed as a hyphen, so a word that a formula looks for has none
    leakWords.forEach((word) => expect(word).toMatch(/^[A-Za-z]+$/));
  });

  test("the papers tell of each", () => {
    const papers = ["README.md", ...readdirSync("docs").map((name) => `docs/${name}`)].filter((name) =>
      name.endsWith(".md"),
    );
    const words = papers.map((name) => readFileSync(name, "utf8")).join();
    for (const name of allColumns) expect(words).toContain(`\`${name}\``);
  });
});

describe.each<[string, readonly AnswerColumn[]]>([
  ["BUDGET", budgetColumns],
  ["SOLVE", solveColumns],
  ["SCENARIOS", scenarioColumns],
  ["GAINS", gainColumns],
  ["GAINS with errors", sureGainColumns],
  ["LEAKGAINS", leakGainColumns],
  ["TOGETHER", togetherColumns],
  ["SIZES", sizesColumns],
  ["CLAIM", claimColumns],
  ["DIFFERENCE", differenceColumns],
  ["UNCERTAINTY", uncertaintyColumns],
  ["FANCURVE", fanCurveColumns],
  ["GAINUNCERTAINTY", gainUncertaintyColumns],
])("the columns of %s", (_, columns) => {
  test("have keys and headers of their own", () => {
    expect(new Set(columns.map(({ key }) => key)).size).toBe(columns.length);
    expect(new Set(columns.map(({ header }) => headerName(header))).size).toBe(columns.length);
  });

  test("are found by their keys", () => {
    columns.forEach(({ key, header }, index) => {
      expect(placeOfColumn(columns, key)).toBe(index);
      expect(headerOfColumn(columns, key)).toBe(header);
    });
  });
});

test("a header tells its unit, in the units of the call", () => {
  const airflow = { header: "Airflow", quantity: "airflow" } as const;
  expect([
    headerIn(airflow, "IP"),
    headerIn(airflow, "SI"),
    headerIn({ header: "Note", quantity: null }, "SI"),
  ]).toEqual(["Airflow (cfm)", "Airflow (m³/h)", "Note"]);
});

test("what SCENARIOS says of a hood comes hood by hood, and everything else once", () => {
  const columns = scenarioColumnsFor(["saw", "planer"]).map(({ key, hood }) => `${key} ${hood ?? ""}`.trim());
  expect(columns.slice(1, 5)).toEqual([
    "hoodAirflow saw",
    "hoodVelocity saw",
    "hoodAirflow planer",
    "hoodVelocity planer",
  ]);
  expect(columns.length).toBe(scenarioColumns.length + 2);
  expect(scenarioColumnsFor([]).length).toBe(scenarioColumns.length - 2);
});
