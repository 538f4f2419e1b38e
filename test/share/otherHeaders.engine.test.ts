/**
 * A member who writes another header or another unit into a copy means other numbers than its formulas go on reading: a live book refuses that, and
 * a copy gives no answer either and says why.
 */
import "../support/customFunctions";
import { clubCopy } from "../../src/share/clubCopy";
import type { CellValue, SheetCell, Workbook } from "../../src/sheets/workbook";
import type { EngineValues } from "../support/engine";
import { inGrid } from "../support/grid";
import { hardRecalculation } from "../support/hardRecalculation";
import { ironCalc } from "../support/ironCalc";
import { hasLibreOffice } from "../support/libreOffice";
import { withFewNames } from "./nearest/fewNames";
import { sampleBook, type SampleSheet } from "./sampleBooks";
import { withFewEntries } from "./translate/fewEntries";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;

/** Four sheets for each case, so that all of them are computed at once. */
const sheetsOf = (index: number): [string, SampleSheet][] => {
  const [runs, curve, cells] = ["T", "C", "U"].map((name) => `${name}${index}!`) as [string, string, string];
  return [
    [
      `T${index}`,
      {
        rows: [
          ["Run", "To", "Diameter (in)", "Length (ft)", "Hood", "Airflow (cfm)", "Mine", "More"],
          ["saw", "main", 4, 6, "plain end", 350, 1, null],
          ["main", "fan", 6, 5, null, null, 2, null],
        ],
      },
    ],
    [
      `C${index}`,
      {
        rows: [
          ["Airflow (cfm)", "Pressure (in.w.g.)"],
          [0, 8],
          [500, 6],
          [1000, 2],
        ],
      },
    ],
    [`U${index}`, { rows: [["IP"], [400], [4]] }],
    [
      `A${index}`,
      {
        formulas: {
          A1: { code: `=DUCT.BUDGET(${runs}A1:H3,,${cells}A1)`, shows: [["Run"]] },
          O1: { code: `=DUCT.SOLVE(${runs}A1:H3,${curve}A1:B4,,,${cells}A1)`, shows: [["Run"]] },
          X1: { code: `=DUCT.VELOCITY(${cells}A2,${cells}A3,,${cells}A1)`, shows: [[1]] },
          X2: { code: `=DUCT.FANPRESSURE(${curve}A1:B4,500)`, shows: [[6]] },
          X3: { code: `=DUCT.VELOCITY(${cells}A2,${cells}A3)`, shows: [[1]] },
        },
      },
    ],
  ];
};

type Typed = Readonly<Record<string, CellValue>>; // by sheet and address

/** An I-P table of 400 cfm in 4 in: 400 / (pi/4 / 9) fpm. */
const VELOCITY = 4583.66;
const NO_ANSWER = "#N/A";

interface Seen {
  readonly budget: unknown; // airflow of the saw, cfm
  readonly flows: boolean; // whether SOLVE has a number for the saw
  readonly velocity: unknown;
  readonly pressure: unknown;
  readonly said: string; // in Budget's first row
  readonly atUnits: string; // under the units cell and what stands below it
}

const BACK = "This copy reads its columns by the headers of the day it was made: put back ";
const OTHER = "A column of the table has a header now that this copy does not look for: give it another, or ask for a new copy"; // prettier-ignore
const UNITS = "The units cell must stay IP (in, cfm ...) in this copy: put it back, or ask for a copy in other units";
const fine = { budget: 350, flows: true, velocity: VELOCITY, pressure: 6, said: "", atUnits: "" };
const refused = (said: string): Seen => ({ ...fine, budget: "", flows: false, said });

type Case = readonly [what: string, typed: Typed, seen: Seen];
const all: readonly Case[] = [
  ["nothing", {}, fine],
  ["the diameter in mm", { "T!C1": "Diameter (mm)" }, refused(`${BACK}"Diameter (in)"`)],
  ["two headers changed round", { "T!C1": "Length (ft)", "T!D1": "Diameter (in)" }, refused(`${BACK}"Diameter (in)", "Length (ft)"`)], // prettier-ignore
  ["a header cleared", { "T!F1": null }, refused(`${BACK}"Airflow (cfm)"`)],
  ["an error for a header", { "T!E1": "#N/A" }, refused(`${BACK}"Hood"`)],
  ["no unit, other case and blanks", { "T!C1": " diameter", "T!D1": "LENGTH  (ft)", "T!B1": "to" }, fine],
  ["an own column renamed", { "T!G1": "Yours" }, fine],
  ["an own column as one that is read", { "T!G1": "Leak (in²)" }, refused(OTHER)],
  ["the same behind a blank", { "T!G1": " Leak" }, refused(OTHER)],
  ["the same with a hyphen", { "T!G1": "leak-open" }, refused(OTHER)],
  ["the same in two lines", { "T!G1": "Leak\n(in²)" }, refused(OTHER)],
  ["own columns with signs that stand for any letters", { "T!G1": "*", "T!H1": "Lea?" }, fine],
  ["a column twice", { "T!H1": "Diameter [in]" }, refused(OTHER)],
  ["the units cell", { "U!A1": "SI" }, { ...refused(UNITS), velocity: NO_ANSWER, atUnits: UNITS }],
  ["the units cell spelt otherwise", { "U!A1": "i-p " }, fine],
  ["the units cell cleared, which means I-P", { "U!A1": null }, fine],
  ["the curve's airflow in m³/h", { "C!A1": "Airflow (m³/h)" }, { ...fine, flows: false, pressure: NO_ANSWER }],
  ["the curve's first point as text", { "C!A2": "0,5", "C!B2": "8,5" }, { ...fine, flows: false, pressure: NO_ANSWER }],
];

function copy(cases: readonly Case[]): Workbook {
  const { book } = clubCopy(sampleBook(Object.fromEntries(cases.flatMap((_, index) => sheetsOf(index)))), ORDER);
  const few = withFewNames(withFewEntries(book.workbook));
  return {
    ...few,
    sheets: few.sheets.map((sheet) => {
      const [, letter, index] = /^([TCU])(\d+)$/.exec(sheet.name) ?? [];
      const own = Object.entries(cases[Number(index)]?.[1] ?? {}).filter(([key]) => key.startsWith(`${letter}!`));
      const cells = own.map(([key, value]): SheetCell => ({ at: key.slice(2), value }));
      const places = new Set(cells.map(({ at }) => at));
      return { ...sheet, cells: [...sheet.cells.filter(({ at }) => !places.has(at)), ...cells] };
    }),
  };
}

function seenIn(values: EngineValues, index: number): Seen {
  const at = (address: string): unknown => values.get(`A${index}`)!.get(address) ?? "";
  const rounded = (value: unknown): unknown => (typeof value === "number" ? Number(value.toFixed(2)) : value);
  return {
    budget: rounded(at("B2")),
    flows: typeof at("P2") === "number",
    velocity: at("X3") === at("X1") || at("X1") === NO_ANSWER ? rounded(at("X1")) : "not as without units",
    pressure: rounded(at("X2")),
    said: String(at("M2")),
    atUnits: String(values.get(`U${index}`)!.get("A4") ?? ""),
  };
}

const some = all.filter(([what]) => what === "a column twice"); // it takes its time

const engines: readonly (readonly [string, readonly Case[], (workbook: Workbook) => Promise<EngineValues>])[] = [
  ["the grid of the local sheet", all, (workbook) => Promise.resolve(inGrid(workbook))],
  ["the independent engine", some, (workbook) => Promise.resolve(ironCalc(workbook))],
  ...(hasLibreOffice ? [["LibreOffice", all, hardRecalculation] as const] : []),
];

test.each(engines)("in %s each is told, and what means the same is not", async (_, cases, compute) => {
  const values = await compute(copy(cases));
  expect(cases.map(([what], index) => [what, seenIn(values, index)])).toEqual(
    cases.map(([what, , seen]) => [what, seen]),
  );
});
