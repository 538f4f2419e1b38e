import { foundIn, soundRuns } from "../../../support/books";

const formula = { A1: '=DUCT.BUDGET(Runs!A1:I4,,"IP")' };
const wrong = { error: "#VALUE!", message: 'Diameter of run "saw" (row 2) must be a number (in); got "wide"' } as const;
const waits = { error: "#N/A", message: 'waits for run "saw" (row 2)' } as const;
const solve = { A1: '=DUCT.SOLVE(Runs!A1:I4,Fan!A1:B4,,,"IP")' };
const failing = (error: typeof wrong | typeof waits, formulas: Record<string, string>) => ({
  rows: [[error]],
  formulas,
});
const refused = (sheets: Parameters<typeof foundIn>[0]) => foundIn(sheets).filter(({ rule }) => rule.startsWith("#"));

describe("a run that no function takes", () => {
  test("is told once, whoever says it, with the way to the cell to mend, and what waits for it is not told", () => {
    const found = refused({
      Runs: { rows: soundRuns, at: { column: 2, row: 8 } },
      Budget: failing(wrong, formula),
      Waiting: failing(waits, formula),
      Flow: failing(wrong, solve),
    });
    expect(found).toEqual([
      {
        rule: "#VALUE!",
        what: 'Diameter of run "saw" must be a number (in); got "wide".',
        sheet: "Runs",
        at: "E9",
      },
    ]);
  });

  test("ends with one full stop, also where the grid has said one", () => {
    const grid = { error: "#VALUE!", message: "Index out of range." } as const;
    expect(refused({ Budget: { rows: [[grid]], formulas: formula } })).toMatchObject([
      { what: "A1: Index out of range." },
    ]);
  });

  test("of an entry in its fittings, at the column Fittings", () => {
    const angle = { ...wrong, message: 'angle in the fittings of run "saw" (row 2) must be from 0 to 180' } as unknown as typeof wrong; // prettier-ignore
    const [found] = refused({ Runs: { rows: soundRuns }, Budget: failing(angle, formula) });
    expect(found).toMatchObject({ sheet: "Runs", at: "G2" });
  });

  test("stays where the answer stands if no table has that run there", () => {
    const [found] = refused({ Budget: failing(wrong, formula), Flow: failing(wrong, solve) });
    expect(found).toMatchObject({ sheet: "Budget", at: "A1" });
    expect(refused({ Waiting: failing(waits, formula) })).toHaveLength(1);
  });
});

describe("a point of a fan's curve that no function takes", () => {
  const curve = [
    ["Airflow (cfm)", "Fan static pressure (in.w.g.)"],
    [0, 10],
    [400, "x"],
    [400, 6],
  ];
  const said = (message: string, at = { column: 4, row: 8 }) => {
    const error = { error: "#VALUE!", message } as const;
    const book = { Fan: { rows: curve, at }, Flow: { rows: [[error]], formulas: solve } };
    return refused(book).map(({ sheet, at: cell, what }) => [sheet, cell, what]);
  };

  // the headings stand in row 8, so row 3 of the curve is row 10 of the sheet
  test.each([
    [
      'pressure in row 3 of the curve must be a number (in.w.g.); got "x"',
      "E10",
      'Pressure in row 10 of the curve must be a number (in.w.g.); got "x".',
    ],
    [
      "airflow in row 4 of the curve must be another one: row 3 has it too; got 400",
      "D11",
      "Airflow in row 11 of the curve must be another one: row 10 has it too; got 400.",
    ],
  ])("is told at its own cell of the sheet, with the sheet's rows: %s", (message, cell, sentence) => {
    expect(said(message)).toEqual([["Fan", cell, sentence]]);
  });

  test("stays where the answer stands where no curve holds that there", () => {
    const message = 'pressure in row 3 of the curve must be a number (in.w.g.); got "y"';
    expect(said(message)).toEqual([["Flow", "A1", `A1: ${message}.`]]);
  });
});
