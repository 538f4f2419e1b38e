import { cellAddress, placeOf } from "../address";
import { formula, input, text } from "../cells";
import type { Sheet, SheetCell } from "../workbook";
import { answer } from "./budgetAnswer";
import {
  ANSWER,
  ANSWER_END,
  answerColumn,
  atFan,
  DENSITY_CELL,
  DUST_LIMIT_CELL,
  FIRST,
  HEADER,
  inTable,
  LAST,
  UNITS_CELL,
} from "./budgetLayout";
import { runsLists, runsTable } from "./budgetRuns";

export const BUDGET_SHEET = "Budget";

const UNITS_NOTE =
  "IP or SI. Every formula here takes its units from this cell. The numbers below are in I-P units, so SI would need other numbers.";
const AIR_NOTE =
  "Density of the air. 0.075 lb/ft³ is standard air; DUCT.DENSITY gives yours from temperature and altitude.";
const LIMIT_NOTE =
  "Transport velocity of wood dust: 20 m/s, which is 3937 fpm. Source: DGUV Information 209-044, section 2.1.";

/** Inputs above, totals beside the settings, the answer of BUDGET below: a change and what it does are seen at once. */
export const budgetSheet: Sheet = {
  name: BUDGET_SHEET,
  columns: [17, 16, 11, 9, 11, 8.5, 9, 14, 21, 8.5, 17, 12, 12, 11, 12, 12, 9, 17, 17],
  tallRows: [
    { row: HEADER, lines: 2 },
    { row: ANSWER, lines: 4 },
  ],
  frozen: { rows: 0, columns: 2 },
  cells: [...heading(), ...settings(), ...totals(), ...runsTable(), ...answer()],
  lists: [{ range: UNITS_CELL, choices: ["IP", "SI"], strict: true }, ...runsLists()],
  flags: [
    { range: `A${FIRST}:A${LAST}`, containsText: "settles", style: "flag" },
    { range: `A${ANSWER + 1}:A${ANSWER_END}`, containsText: "settles", style: "flag" },
    { range: `A${ANSWER + 1}:A${ANSWER_END}`, containsText: "resize", style: "flag" },
  ],
};

function heading(): SheetCell[] {
  return [
    text("A1", "Demo: an air budget", "title"),
    input("A3", "boxed cell"),
    text("B3", "yours to change", "note"),
    text("C1", "Invented for trying out: a shared boat-building shed. No such shed, machine or reading exists."),
    text(
      "C2",
      "Try it: type another airflow in column D (say 600 for the drum sander), press Enter, watch the checks.",
    ),
    text(
      "C3",
      "Cells without a box are computed. A check that begins with settles: dust will lie in that duct.",
      "note",
    ),
  ];
}

function settings(): SheetCell[] {
  return [
    text("A5", "Units", "label"),
    input(UNITS_CELL, "IP", { note: UNITS_NOTE }),
    text("A6", "Air, lb/ft³", "label"),
    input(DENSITY_CELL, 0.075, { format: "0.0000", note: AIR_NOTE }),
    text("A7", "Settles under", "label"),
    input(DUST_LIMIT_CELL, 3937, { format: '#,##0" fpm"', note: LIMIT_NOTE }),
    text("A8", "20 m/s: DGUV Information 209-044", "note"),
  ];
}

function totals(): SheetCell[] {
  const open = `(${inTable("Gate")}<>"shut")`;
  const isEnd = `(COUNTIF(${inTable("To")},${inTable("Run")})=0)`;
  const wanted = `SUMPRODUCT(${open}*${isEnd},${inTable("Airflow (cfm)")})`;
  // without an answer there is no fan row to find, so a count or a largest value of nothing does not pass for a 0
  const answered = (code: string): string => `IF(${atFan("C")}>=0,${code})`;
  return [
    ...total("D5", "Air wanted at open hoods", wanted, "cfm", "#,##0"),
    ...total("D6", "Air at the fan", atFan("C"), "cfm", "#,##0"),
    ...total("D7", "Let in by leaks", "G6-G5", "cfm", "#,##0"),
    ...total("D8", "Runs whose dust settles", answered(`COUNTIF(A${FIRST}:A${LAST},"settles*")`), "", "0"),
    ...total("I5", "Fan static pressure", atFan("K"), "in.w.g.", "0.00"),
    ...total("I6", "Largest suction", answered(`MAX(${answerColumn("J")})`), "in.w.g.", "0.00"),
    ...total("I7", "Leaks, share of it", "G7/G6", "", "0.0%"),
    ...total("I8", "Paths to resize", answered(`COUNTIF(${answerColumn("N")},"*resize*")`), "", "0"),
  ];
}

/** A label, its value beside it and the unit beside that; labels of column D run over two empty cells. */
function total(at: string, label: string, code: string, unit: string, format: string): SheetCell[] {
  const { column, row } = placeOf(at);
  const value = column + (at.startsWith("D") ? 3 : 1);
  return [
    text(at, label, "label"),
    formula(cellAddress(value, row), `=IFERROR(${code},"see B${ANSWER}")`, "total", { format }),
    text(cellAddress(value + 1, row), unit, "unit"),
  ];
}
