import { cellAddress, placeOf } from "../address";
import { formula, input, text } from "../cells";
import type { Sheet, SheetCell } from "../workbook";
import { flowAnswer, gateList } from "./flowAnswer";
import { fan, fanChart } from "./flowFan";
import { gains, wishList } from "./flowGains";
import {
  atFan,
  CURVE,
  FLOW,
  flowColumn,
  GAINS,
  ofAllHoods,
  SCENARIOS,
  SCENARIOS_LAST,
  SEALING,
  SETS,
} from "./flowLayout";
import { scenarioList, scenarios } from "./flowScenarios";
import { sealing } from "./flowSealing";

/** What the system really gives: the gates and their effect on the first screen, the questions behind it below. */
export const flowSheet: Sheet = {
  name: "Flow",
  columns: [13, 26.5, 9, 9, 9, 9, 9, 9, 9, 9, 9, 10, 9, 62, 20],
  tallRows: [
    { row: FLOW, lines: 3 },
    { row: CURVE, lines: 2 },
    { row: SEALING, lines: 3 },
    { row: SETS, lines: 2 },
    { row: SCENARIOS, lines: 4 },
    { row: GAINS, lines: 3 },
  ],
  frozen: { rows: 0, columns: 2 },
  cells: [...heading(), ...totals(), ...flowAnswer(), ...fan(), ...sealing(), ...scenarios(), ...gains()],
  lists: [gateList, scenarioList, wishList],
  flags: [
    { range: flowColumn("I"), containsText: "dust settles", style: "flag" },
    { range: `A${SCENARIOS + 1}:A${SCENARIOS_LAST}`, containsText: "settles", style: "flag" },
  ],
  charts: [fanChart],
};

function heading(): SheetCell[] {
  return [
    text("A1", "Demo: what really flows", "title"),
    input("A3", "boxed cell"),
    text("B3", "yours to change", "note"),
    text("C1", "Invented, like the shed: this fan on the ducts and leaks of the sheet Budget, solved as one network."),
    text("C2", "Try it: change the planer's gate in A12 to shut. The others get more air; dust settles in the mains."),
    text(
      "C3",
      "Cells without a box are computed. Ducts and leaks (columns Q to S) are changed on the sheet Budget.",
      "note",
    ),
  ];
}

function totals(): SheetCell[] {
  const flow = `=IF(units="SI","m³/h","cfm")`;
  // without an answer there is no fan row to find, so a count of nothing does not pass for a 0
  const noted = (words: string): string => `IF(${atFan("C")}>=0,COUNTIF(${flowColumn("I")},"*${words}*"))`;
  return [
    ...total("B5", "Air into the open hoods", ofAllHoods("D"), flow, "#,##0"),
    ...total("B6", "Wanted there", ofAllHoods("C"), flow, "#,##0"),
    ...total("B7", "Air at the fan", atFan("C"), flow, "#,##0"),
    ...total("B8", "Hoods short of air", noted("the hood gets"), "", "0"),
    ...total("F5", "Leaks, added up", atFan("F"), flow, "0"),
    ...total("F6", "Leaks, share of the air", `${atFan("F")}/${atFan("C")}`, "", "0.0%"),
    ...total("F7", "Sealing all gives the hoods", ofAllHoods("H"), flow, "0"),
    ...total("F8", "Runs whose dust settles", noted("dust settles"), "", "0"),
  ];
}

/** A label, its value and the unit beside it; labels of column F run over two empty cells. */
function total(at: string, label: string, code: string, unit: string, format: string): SheetCell[] {
  const { column, row } = placeOf(at);
  const value = column + (at.startsWith("F") ? 3 : 1);
  const cells = [
    text(at, label, "label"),
    formula(cellAddress(value, row), `=IFERROR(${code},"see B${FLOW}")`, "total", { format }),
  ];
  const unitCell = cellAddress(value + 1, row); // that of B5 is FLOW_UNIT
  return unit === "" ? cells : [...cells, formula(unitCell, unit, "unit")];
}
