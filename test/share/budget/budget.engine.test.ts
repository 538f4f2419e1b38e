/**
 * BUDGET as plain formulas against BUDGET itself, in two independent engines. The function is held against worked examples
 * elsewhere; here the copy must say what it says, notes included.
 */
import "../../support/customFunctions";
import { budget } from "../../../src/functions/systems/budget";
import { budgetColumns } from "../../../src/reference/answerColumns";
import { placeOfColumn } from "../../../src/reference/columnsOfAnswers";
import type { RunColumn } from "../../../src/reference/runColumns";
import { clubCopy } from "../../../src/share/clubCopy";
import type { ClubCopy } from "../../../src/share/copy";
import { cellAddress } from "../../../src/sheets/address";
import type { CellValue, Workbook } from "../../../src/sheets/workbook";
import { hardRecalculation } from "../../support/hardRecalculation";
import { ironCalc } from "../../support/ironCalc";
import { hasLibreOffice } from "../../support/libreOffice";
import { differences, sampleBook } from "../sampleBooks";
import { hardTable, seededTable } from "./seededTable";
import { wrongIn, wrongTable } from "./wrongTables";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;

const NOTE = placeOfColumn(budgetColumns, "note") + 1;

type Table = readonly (readonly CellValue[])[];

/** What BUDGET answers; a refusal is the one error cell that it shows. */
function answerOf(table: Table, units: string): CellValue[][] {
  return budget(table as never, undefined, [[units]]) as CellValue[][];
}

const shownOf = (answer: readonly (readonly unknown[])[]): (CellValue | { readonly error: string })[][] =>
  answer.map((row) =>
    row.map((value) => (value instanceof CustomFunctions.Error ? { error: "#N/A" } : (value as CellValue))),
  );

/** A copy of a book with one sheet of tables beside each other's answers. */
function copyOf(tables: readonly Table[], units: "IP" | "SI"): ClubCopy {
  const sheets = tables.flatMap((table, index) => {
    const range = `A1:${cellAddress(table[0]!.length, table.length)}`;
    const code = `=DUCT.BUDGET(Runs${index}!${range},,"${units}")`;
    return [
      [`Runs${index}`, { rows: table }],
      [`Answer${index}`, { formulas: { A1: { code, shows: shownOf(answerOf(table, units)) } } }],
    ] as const;
  });
  return clubCopy(sampleBook(Object.fromEntries(sheets)), ORDER);
}

/** The workbook with a value typed into a cell. */
const typed = (workbook: Workbook, sheet: string, at: string, value: CellValue): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((one) =>
    one.name === sheet ? { ...one, cells: [...one.cells.filter((cell) => cell.at !== at), { at, value }] } : one,
  ),
});

test("in the independent engine a small system gives BUDGET's answer", () => {
  const table = seededTable(3, 4, "IP");
  const copy = copyOf([table], "IP");
  expect(copy.fixed).toEqual([]);
  expect(differences("Answer0", "A1", answerOf(table, "IP"), ironCalc(copy.book.workbook))).toEqual([]);
});

const office = hasLibreOffice ? describe : describe.skip;

office("in LibreOffice, recalculated", () => {
  test.each(["IP", "SI"] as const)(
    "seeded systems in %s give BUDGET's answers, with wrong rows, too",
    async (units) => {
      const sound = [...[1, 2, 3, 5, 7, 8].map((seed) => seededTable(seed, 4 + seed, units)), hardTable];
      const partly = (units === "IP" ? [5, 7, 9] : [2, 4, 6]).map(wrongTable);
      const values = await hardRecalculation(copyOf([...sound, ...partly], units).book.workbook);
      const wrong = sound.flatMap((table, index) =>
        differences(`Answer${index}`, "A1", answerOf(table, units), values),
      );
      const others = partly.flatMap((table, index) =>
        wrongIn(answerOf(table, units), `Answer${sound.length + index}`, values),
      );
      expect([...wrong, ...others]).toEqual([]);
    },
  );

  test("a run that is added in a spare row counts, a gate that is shut too", async () => {
    const drawn = seededTable(2, 6, "IP");
    const header = drawn[0]!;
    const table = [...drawn, ...[0, 1, 2].map(() => new Array<CellValue>(header.length).fill(null))];
    const late: Partial<Record<RunColumn, CellValue>> = {
      Run: "late saw",
      To: "run 0",
      Diameter: 4,
      Length: 6,
      Flex: 3,
      Fittings: "elbow 1.5",
      Hood: "plain end",
      Airflow: 350,
      Gate: "open",
    };
    const added = header.map((column) => late[column as RunColumn] ?? null);
    const later = table.map((row, index) => (index === table.length - 2 ? added : row));
    const workbook = added.reduce<Workbook>(
      (book, value, column) => typed(book, "Runs0", cellAddress(column + 1, table.length - 1), value),
      copyOf([table], "IP").book.workbook,
    );
    const values = await hardRecalculation(workbook);
    expect(differences("Answer0", "A1", answerOf(later, "IP"), values)).toEqual([]);
  });

  const refusals: readonly (readonly [string, string, CellValue, string])[] = [
    ["an unknown run to join", "B3", "nowhere", 'waits for run "nowhere", which no row has'],
    ["a loop", "B2", "run 1", "To must lead to the fan: these runs join each other in a loop"],
    ["a diameter that is none", "C3", "wide", "Diameter must be a number above 0"],
    ["a name twice", "A3", "RUN 0", "Run must be a name of its own: another row has it too"],
    [
      "an unknown material",
      "E3",
      "cheese",
      "Material must be a name in the tables of this copy, or a roughness of at most a fifth of the diameter",
    ],
    [
      "an unknown fitting",
      "G3",
      "cheese",
      "Fittings and K must be names in the tables of this copy, or numbers from 0 to 10000",
    ],
  ];
  test("what BUDGET refuses is refused, with the row named by its note", async () => {
    const table: Table = [
      ["Run", "To", "Diameter", "Length", "Material", "Flex", "Fittings", "K", "Hood", "Airflow"],
      ["run 0", "fan", 6, 5, null, null, null, null, null, null],
      ["run 1", "run 0", 4, 5, null, null, "elbow 1.5", null, "plain end", 350],
    ];
    const copy = copyOf(
      refusals.map(() => table),
      "IP",
    ).book.workbook;
    const wrong = refusals.reduce((book, [, at, value], index) => typed(book, `Runs${index}`, at, value), copy);
    const values = await hardRecalculation(wrong);
    refusals.forEach(([, at, , words], index) => {
      const shown = (at: string): string => String(values.get(`Answer${index}`)!.get(at) ?? "");
      const [first, ...air] = [shown("A1"), shown("B2"), shown("B3")];
      expect(first).toBe("Run");
      expect(air).toEqual(
        words.includes("in a loop")
          ? ["#VALUE!", "#VALUE!"]
          : at === "B3"
            ? ["#N/A", "350"] // what the run itself carries is known
            : ["#N/A", "#VALUE!"],
      );
      expect([shown(cellAddress(NOTE, 2)), shown(cellAddress(NOTE, 3))]).toContain(words);
    });
  });
});

test("a table whose columns cannot be found stays fixed, with the reason", () => {
  const book = sampleBook({
    T: {
      rows: [
        ["Run", "Diameter"],
        ["a", 4],
      ],
    },
    A: { formulas: { A1: { code: "=DUCT.BUDGET(T!A1:B2)", shows: [[{ error: "#VALUE!" }]] } } },
  });
  expect(clubCopy(book, ORDER).fixed).toEqual([
    { sheet: "A", at: "A1", function: "BUDGET", why: "its runs table has no column To" },
  ]);
});
