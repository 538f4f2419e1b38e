import { columnLetters } from "../address";
import { formula, input, text } from "../cells";
import type { Sheet, SheetCell } from "../workbook";

interface Example {
  readonly asks: string;
  readonly code: string; // the formula, shown as text and computed beside it: one string, so they cannot differ
  readonly unit: string;
  readonly format: string;
}

const EXAMPLES: readonly Example[] = [
  { asks: "Cross-section of a 4 in duct", code: "=DUCT.AREA(4)", unit: "ft²", format: "0.0000" },
  { asks: "Velocity of 350 cfm in it", code: "=DUCT.VELOCITY(350,4)", unit: "fpm", format: "#,##0" },
  {
    asks: "Stock size that keeps 500 cfm moving at 3937 fpm",
    code: "=DUCT.TRADESIZE(DUCT.DIAMETER(500,3937))",
    unit: "in",
    format: "0.0",
  },
  { asks: "Air at 70 °F, 5000 ft above the sea", code: "=DUCT.DENSITY(70,5000)", unit: "lb/ft³", format: "0.0000" },
  { asks: "K of an elbow bent to 1.5 diameters", code: '=DUCT.LOSSCOEFFICIENT("elbow",1.5)', unit: "", format: "0.00" },
  {
    asks: "Suction behind a flanged hood taking 400 cfm in 4 in",
    code: '=DUCT.HOODSUCTION(400,4,"flanged end")',
    unit: "in.w.g.",
    format: "0.00",
  },
  { asks: "Leak of a 1 in² hole at 3 in.w.g.", code: "=DUCT.LEAK(1,3)", unit: "cfm", format: "0.0" },
  {
    asks: "Leak of a shut 6 in gate whose groove is packed, an estimate",
    code: '=DUCT.GATELEAK("shut packed",6,4)',
    unit: "cfm",
    format: "0.0",
  },
  { asks: "A wrong value: select the result and read why", code: "=DUCT.AREA(-4)", unit: "", format: "0.0000" },
];

const FIRST = 5;
const GRID = FIRST + EXAMPLES.length + 3; // row of the grid's diameters
const DIAMETERS = [4, 5, 6];
const AIRFLOWS = [300, 400, 500, 600, 700];

/** One function to a line: what it answers, the formula as one types it, and its live result. */
export const singleCellsSheet: Sheet = {
  name: "Single cells",
  columns: [47, 40, 11, 11, 11, 11],
  tallRows: [],
  frozen: { rows: 4, columns: 0 },
  cells: [
    text("A1", "Single cells", "title"),
    text(
      "A2",
      "Each result is computed by the formula beside it. Type your own anywhere: begin with =DUCT. and choose.",
    ),
    text("A4", "Question", "header"),
    text("B4", "Formula", "header"),
    text("C4", "Result", "numberHeader"),
    text("D4", "Unit", "header"),
    ...EXAMPLES.flatMap(exampleRow),
    ...grid(),
  ],
  lists: [],
  flags: [],
};

function exampleRow({ asks, code, unit, format }: Example, index: number): SheetCell[] {
  const at = FIRST + index;
  return [
    text(`A${at}`, asks, "label"),
    text(`B${at}`, code, "code"),
    formula(`C${at}`, code, "result", { format }),
    text(`D${at}`, unit, "unit"),
  ];
}

/** A column of airflows and a row of diameters make a grid by one formula. */
function grid(): SheetCell[] {
  const last = GRID + AIRFLOWS.length;
  const code = `=DUCT.FRICTION(B${GRID + 1}:B${last},C${GRID}:${columnLetters(2 + DIAMETERS.length)}${GRID})`;
  const cells: SheetCell[] = [
    text(`A${GRID - 1}`, "A whole grid by one formula", "section"),
    text(`A${GRID}`, "Friction of galvanised duct, in.w.g. per 100 ft"),
    text(`A${GRID + 1}`, code, "code"),
    text(`B${GRID}`, "cfm down, in across", "unit"),
    ...DIAMETERS.map((diameter, index) => input(`${columnLetters(3 + index)}${GRID}`, diameter)),
    ...AIRFLOWS.map((airflow, index) => input(`B${GRID + 1 + index}`, airflow)),
  ];
  AIRFLOWS.forEach((_, down) =>
    DIAMETERS.forEach((__, across) => {
      const look = { at: `${columnLetters(3 + across)}${GRID + 1 + down}`, style: "result", format: "0.00" } as const;
      cells.push(down + across === 0 ? { ...look, formula: code } : { ...look, value: null });
    }),
  );
  return cells;
}
