import { showsPercent } from "../../../../src/sheets/showsPercent";
import { matrixOf } from "../../../../src/taskpane/check/callArguments";
import { findingsIn } from "../../../../src/taskpane/check/findingsIn";
import { SHARES } from "../../../../src/taskpane/check/rules/percentForNumber";
import { seenIn } from "../../../../src/taskpane/check/seenIn";
import { bookOf, foundIn, runsWith, seenOf } from "../../../support/books";
import { signed } from "../../../support/cellFunctions";

const RULE = "Percent for a number";

/** One call in a cell of its own, with 3 % in B2. */
const found = (formula: string, format = "0%", value = 0.03) =>
  foundIn({
    Mine: {
      rows: [
        ["a", "b"],
        ["c", value],
        ["d", 1],
      ],
      formulas: { B3: formula },
      formats: { B2: format },
    },
  }).filter(({ rule }) => rule === RULE);

const TOLD = [{ rule: RULE, what: "B2 shows 3%: it holds 0.03.", sheet: "Mine", at: "B2" }];

describe("a percentage where a number is meant", () => {
  test.each(["=DUCT.AIRFLOWERROR(900,6,B2)", "=DUCT.AREA(B2)", "=1+DUCT.AREA( $B$2 )", "=DUCT.AREA(Mine!B1:B2)"])(
    "is told at its cell: %s",
    (formula) => expect(found(formula)).toEqual(TOLD),
  );

  test("is told in whole columns and rows", () => {
    expect(found("=DUCT.AREA(B:B)")).toEqual(TOLD);
    expect(found("=DUCT.AREA(Mine!$A:$B)")).toEqual(TOLD);
    expect(found("=DUCT.AREA(2:2)")).toEqual(TOLD);
    expect(found("=DUCT.AREA(A:A)")).toEqual([]);
    expect(found("=DUCT.AREA(3:9)")).toEqual([]);
  });

  test("is none where it is reckoned with first, no function of ours takes it, it is 0, or the sign only stands there", () => {
    expect(found("=DUCT.AREA(100*B2)")).toEqual([]);
    expect(found("=SUM(B2)")).toEqual([]);
    expect(found("=DUCT.AREA(B2)", "0%", 0)).toEqual([]);
    expect(found("=DUCT.AREA(B2)", '0"%"', 3)).toEqual([]);
    expect(found("=DUCT.AREA(B2)", "General")).toEqual([]);
  });

  test("is none where the argument is a share of 1", () => {
    expect(found("=DUCT.DENSITY(70,0,B2)", "0%", 0.5)).toEqual([]);
    expect(found("=DUCT.AIRPOWER(400,4,B2)", "0%", 0.65)).toEqual([]);
  });

  test("is told in a table that is named, in whichever of its columns", () => {
    const rows = runsWith("saw", "Flex", 0.08);
    const book = bookOf({
      Runs: { rows, formats: { E2: "0%" } },
      Budget: { rows: [["Run"]], formulas: { A1: "=DUCT.BUDGET(tbl_runs[#All])" } },
    });
    const [runs, ...others] = book.workbook.sheets;
    const workbook = {
      ...book.workbook,
      sheets: [{ ...runs!, tables: [{ name: "Tbl_Runs", range: "A1:I4" }] }, ...others],
    };
    const told = findingsIn(seenIn({ ...book, workbook })).filter(({ rule }) => rule === RULE);
    expect(told).toMatchObject([{ what: "E2 shows 8%: it holds 0.08.", sheet: "Runs", at: "E2" }]);
  });

  test("reaches a function that the pane calls itself as it is shown", () => {
    const { runs } = seenOf({ Runs: { rows: runsWith("saw", "Flex", 0.08), formats: { E2: "0%" } } });
    expect(matrixOf(runs[0]!)[1]).toContain("8%");
    expect(matrixOf(runs[0]!).flat()).not.toContain(0.08);
  });

  test("is told on a sheet of ours whatever takes it, where it is typed; Claims reads percent by itself", () => {
    const on = (key: "fan" | "claims", style: "input" | "result") => {
      const book = bookOf({ Fan: { rows: [["Fan with its motor, %", 0.45]], formats: { B1: "0.0%" } } });
      const sheets = book.workbook.sheets.map((sheet) => ({
        ...{ ...sheet, key },
        cells: sheet.cells.map((cell) => ({ ...cell, style })),
      }));
      return findingsIn(seenIn({ ...book, workbook: { ...book.workbook, sheets } })).map(({ what }) => what);
    };
    expect(on("fan", "input")).toEqual(["B1 shows 45%: it holds 0.45."]);
    expect(on("claims", "input")).toEqual([]);
    expect(on("fan", "result")).toEqual([]); // of a copy of values
  });
});

// Of the functions over single values those with a share of 1 by their own limits, which reach no further than from 0 to 1.
test("every argument that is a share of 1 may be written in percent", () => {
  const shares = signed.flatMap(({ name, rules, first }) =>
    rules.flatMap((rule, place) =>
      rule.kind === "number" && rule.quantity === "ratio" && rule.limits.atMost === 1 && rule.limits.atLeast !== 0.5
        ? [[name, first + place] as const]
        : [],
    ),
  );
  expect(shares.length).toBeGreaterThan(3);
  for (const [name, place] of shares) expect([name, SHARES[name]]).toEqual([name, expect.arrayContaining([place])]);
});

// codes of ECMA-376 part 1, 18.8.31: a percent sign multiplies by 100, in quotes or behind a backslash it only stands there
test.each(["0%", "0.00%", "0 %", "#,##0.0%;[Red]-0%"])("%p shows percent", (code) =>
  expect(showsPercent(code)).toBe(true),
);
test.each(["General", "0.00", '0.0" %"', "0\\%", "m/d"])("%p shows the number itself", (code) =>
  expect(showsPercent(code)).toBe(false),
);
