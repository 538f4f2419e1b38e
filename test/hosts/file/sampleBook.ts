import { sheetOf } from "../../support/sheetOf";
import type { Calculated, ShownCell } from "../../../src/sheets/calculated";
import type { Sheet, Workbook } from "../../../src/sheets/workbook";

export const bookOf = (sheets: readonly Sheet[], shown: Calculated["shown"] = new Map()): Calculated => ({
  workbook: { name: "Sample", sheets, names: [] },
  shown,
});

/** A workbook of one sheet with these texts in column A. */
export const textsBook = (...texts: readonly string[]): Calculated =>
  bookOf([
    sheetOf(
      "Texts",
      texts.map((value, index) => ({ at: `A${index + 1}`, value })),
    ),
  ]);

const longList = Array.from({ length: 40 }, (_, index) => `fitting number ${index + 1}`);

const sheets: readonly Sheet[] = [
  sheetOf(
    "Runs",
    [
      { at: "A1", value: "Ducts & more", style: "title", note: 'Invented <for> trying "out".\nTwo lines.' },
      { at: "A3", value: "Run", style: "header" },
      { at: "B3", value: "To", style: "header" },
      { at: "C3", value: "Airflow (cfm)", style: "numberHeader", note: "wanted at the hood" },
      { at: "D3", value: "Area (ft²)", style: "numberHeader" },
      { at: "A4", value: "saw", style: "input" },
      { at: "B4", value: "main", style: "input" },
      { at: "C4", value: 350.125, style: "input", format: "#,##0" },
      { at: "D4", formula: "=DUCT.AREA(4,,units)", style: "result", format: "0.0000" },
      { at: "A5", value: "main", style: "input" },
      { at: "B5", value: null, style: "input" },
      { at: "C5", value: 0.1 + 0.2, style: "input", format: "0.00" },
      { at: "D5", formula: '=IF(C5>0,"mend it","")', style: "result" },
      { at: "E4", value: true },
      { at: "F4", formula: "=C4/0", format: "0.0%" },
      { at: "G4", formula: "=C4>1", style: { ink: "#112233", fill: "#ddeeff", size: 12, align: "center" } },
      { at: "B7", value: "SI", style: "input" },
    ],
    {
      key: "runs",
      columns: [12, 18.5, 9, 9],
      tallRows: [{ row: 3, lines: 2 }],
      frozen: { rows: 3, columns: 1 },
      gridlines: false,
      lists: [
        { range: "B7", choices: ["IP", "SI"], strict: true },
        { range: "A4:A20", choices: longList, strict: false },
        { range: "B4:B6", choices: ["main, old", "main"], strict: true },
      ],
      hints: [
        { range: "A4:A20", text: 'What <the> duct is "called" & more.' },
        { range: "C4:C6", text: "What a hood should draw." },
      ],
      flags: [{ range: "D4:D20", containsText: "mend", style: "flag" }],
      tables: [{ name: "RunsTable", range: "A3:D5" }],
      print: {
        paper: "A4",
        landscape: true,
        pagesWide: 2,
        titleRows: { first: 3, last: 3 },
        titleColumns: { first: 1, last: 2 },
        area: "A1:G20",
      },
    },
  ),
  sheetOf(
    "Fan's curve",
    [
      { at: "A1", formula: "=DUCT.BUDGET(Runs!$A$3:$C$5,,units)" },
      { at: "A2", value: null, style: "result", format: "0.0" },
      { at: "D1", formula: "=SUM(Runs!C4:C5)" },
    ],
    {
      print: { paper: "Letter", landscape: false, pagesHigh: 2 },
      charts: [
        {
          kind: "line through points",
          over: "D3:I14",
          title: "Fan & system",
          x: { title: "Airflow (cfm)", range: "A1:A3" },
          y: {
            title: "Pressure",
            series: [
              { name: "fan <new>", range: "B1:B3", ink: "#20343d" },
              { name: "system", range: "C1:C3", ink: "#6d1f00" },
            ],
          },
        },
      ],
    },
  ),
];

const runsShown: [string, ShownCell][] = [
  ["D4", { value: 0.08726646259971647 }],
  ["D5", { value: "mend it" }],
  ["F4", { value: { error: "#DIV/0!" } }],
  ["G4", { value: true }],
];

const curveShown: [string, ShownCell][] = [
  ["A1", { value: "Airflow", fills: { rows: 3, columns: 2 } }],
  ["B1", { value: "Pressure" }],
  ["A2", { value: 100 }],
  ["B2", { value: { error: "#N/A" } }],
  ["A3", { value: 200 }],
  ["B3", { value: "=text" }],
  ["D1", { value: 350.425 }],
];

/** Formulas are not shown by what a value cell holds, so values are added to what was computed. */
function withValues(sheet: Sheet, computed: readonly [string, ShownCell][]): Map<string, ShownCell> {
  const values = sheet.cells.flatMap((cell): [string, ShownCell][] =>
    "value" in cell && cell.value !== null ? [[cell.at, { value: cell.value }]] : [],
  );
  return new Map([...values, ...computed]);
}

const workbook: Workbook = {
  name: "Sample",
  sheets,
  names: [
    { name: "units", sheet: "Runs", at: "B7" },
    { name: "curve", sheet: "Fan's curve", at: "A1:B3" },
  ],
};

/** One workbook with everything that a description can say. Its numbers are made up. */
export const sampleBook: Calculated = {
  workbook,
  shown: new Map([
    ["Runs", withValues(sheets[0]!, runsShown)],
    ["Fan's curve", withValues(sheets[1]!, curveShown)],
  ]),
};
