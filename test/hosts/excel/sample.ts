import { formula, input, text } from "../../../src/sheets/cells";
import type { Sheet, Workbook } from "../../../src/sheets/workbook";

/** Invented woods, together longer than a list that stands in its rule may be. */
export const woods = Array.from({ length: 30 }, (_, index) => `invented wood ${index + 1}`);

/** Texts that a spreadsheet would like to read as something else. */
export const traps = [
  "=1+1",
  "=cmd|' /C calc'!A0",
  "@SUM(A1)",
  "+1",
  "-1",
  "'quoted",
  "12",
  "1/2",
  "TRUE",
  "<img onerror=x>",
  "#N/A",
];

const woodsheet: Sheet = {
  name: "Wood & air",
  columns: [20, 8.5, 12],
  tallRows: [{ row: 3, lines: 3 }],
  frozen: { rows: 3, columns: 1 },
  gridlines: false,
  cells: [
    text("A1", "An invented list", "title"),
    input("B1", "IP", { note: "Units of this sheet." }),
    text("A3", "Wood", "header"),
    text("B3", "Width", "numberHeader", { note: "x".repeat(300) }),
    input("A4", "invented wood 1"),
    input("B4", 4, { format: "0.00" }),
    input("A5", "invented wood 2"),
    input("B5", 5.5, { format: "0.00" }),
    input("A6", null),
    input("B6", null, { format: "0.00" }),
    formula("C4", "=DUCT.AREA(B4,,system)", "result", { format: "0.000" }),
    formula("C5", "=DUCT.AREA(B5,,system)", "result", { format: "0.000" }),
    ...traps.map((trap, index) => text(`E${index + 1}`, trap)),
    input("F1", true),
  ],
  lists: [
    { range: "A4:A6", choices: woods, strict: false },
    { range: "B1", choices: ["IP", "SI"], strict: true },
    { range: "F1", choices: ["yes, all", "no"], strict: false },
  ],
  hints: [
    { range: "B4:B6", text: "How wide it is." },
    { range: "A4:A6", text: "A wood that does not exist." },
  ],
  flags: [{ range: "C4:C6", containsText: "settles", style: "flag" }],
  tables: [{ name: "woods", range: "A3:B6" }],
  print: {
    paper: "Letter",
    landscape: true,
    pagesWide: 2,
    pagesHigh: 2,
    titleRows: { first: 1, last: 3 },
    titleColumns: { first: 1, last: 2 },
    area: "A1:F14",
  },
};

const answers: Sheet = {
  name: "Answers",
  columns: [10],
  tallRows: [],
  frozen: { rows: 2, columns: 0 },
  cells: [
    formula("A2", "=DUCT.BUDGET('Wood & air'!A3:B6,,system)", "header"),
    { at: "B2", value: null, style: "numberHeader" },
    { at: "A3", value: null, style: "result", format: "0.0" },
    formula("D2", '=IF(A2="","",A2)'),
  ],
  lists: [],
  flags: [],
  charts: [
    {
      kind: "line through points",
      over: "F2:K20",
      title: "Width",
      x: { title: "Wood", range: "A3:A6" },
      y: {
        title: "in",
        series: [
          { name: "one", range: "B3:B6", ink: "#102030" },
          { name: "two", range: "C3:C6", ink: "#405060" },
        ],
      },
    },
  ],
  print: { paper: "A4", landscape: false, shared: { scale: 85, rows: [8, 15], columns: [4, 7] } },
};

/** A workbook with each thing that a description can have. */
export const sample: Workbook = {
  name: "Sample",
  sheets: [woodsheet, answers],
  names: [{ name: "system", sheet: "Wood & air", at: "B1" }],
};
