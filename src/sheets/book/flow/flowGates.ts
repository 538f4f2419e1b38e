import { formula, input, text } from "../../cells";
import type { Flag, SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { FLOW_HEADER, OPEN_CELL, runsColumn } from "../layout";
import { isBlank, ofRun, plainName } from "../parts/byName";
import { leftBehind, type RunsByName } from "../parts/runsByName";
import type { FlowContents } from "./flowContents";
import { beside, besideCell, besideColumn, FLOW_ROWS, headings, NAMES } from "./flowLayout";

/**
 * The gates of this sheet. Each is told with the name of its run, "shut planer": beside a table that one formula fills, a bare
 * word would come to stand beside another run as soon as a row is inserted on Runs. A formula cannot tell SOLVE of a name that
 * is none, so the list of open gates is then the sentence that says so, and SOLVE refuses it.
 */
const TOLD = besideColumn("told");
const OPEN_NOTE = "The runs whose gates are open, as the formulas below take them. Worked out from column A.";

const BETWEEN = "; ";
const LONGEST_TEXT = 32767; // of a cell

/** The words by which a sentence of trouble is flagged. */
export const TROUBLE = "Mend A";

export const gateFlag: Flag = { range: OPEN_CELL.replaceAll("$", ""), containsText: TROUBLE, style: "flag" };

export function flowGates(frame: Frame, told: FlowContents["gates"], runs: RunsByName): SheetCell[] {
  const note = `open or shut, then the name of a run that has a gate on the sheet ${frame.sheet("runs")}, such as: shut saw. For this sheet only, and in any row. A gate not told of here is as on ${frame.sheet("runs")}.`;
  const all = (column: "open" | "gateTrouble"): string => FLOW_ROWS.map((row) => besideCell(column, row)).join("&");
  const open = `IF(COUNTA(${runsColumn(frame, "Gate")})<2,"",IF(${all("open")}="","none",${listed(all("open"))}))`;
  return [
    text(`B${FLOW_HEADER - 1}`, "Gates open now", "label"),
    formula(
      OPEN_CELL.replaceAll("$", ""),
      `=IF(${runs.areThere},IF(${all("gateTrouble")}="",${open},${all("gateTrouble")}),${leftBehind(NAMES + 2)})`,
      "result",
      {
        note: OPEN_NOTE,
      },
    ),
    text(`A${FLOW_HEADER}`, "Gate", "header", { note }),
    text(`${beside.unheaded}${FLOW_HEADER}`, "Not above", "header", { note: "A gate that heads no scenario." }),
    text(`${beside.open}${FLOW_HEADER}`, "Open now", "header"),
    text(`${beside.gateTrouble}${FLOW_HEADER}`, "Column A", "header"),
    text(`${beside.told}${FLOW_HEADER}`, "As compared", "header", { note: "The words of column A in small letters." }),
    ...FLOW_ROWS.flatMap((row, index) => [
      input(`A${row}`, told[index] ?? null),
      ...gateOfRow(frame, row, index + 2, runs),
      formula(`${beside.gateTrouble}${row}`, trouble(frame, besideCell("told", row), runs), "unit"),
      formula(`${beside.told}${row}`, `=${plainName(`$A${row}`)}`, "unit"),
    ]),
  ];
}

/** One of the names of a list; the first of them brings a mark too many, which the list leaves out. */
const inList = (name: string): string => `"${BETWEEN}"&${name}`;

/** The list of what stands in many cells as `inList` has it. */
export const listed = (names: string): string => `MID(${names},${BETWEEN.length + 1},${LONGEST_TEXT})`;

/** Of the run in one row of the runs table, whatever stands beside it here. */
function gateOfRow(frame: Frame, row: number, place: number, runs: RunsByName): SheetCell[] {
  const name = runs.nameAt(place);
  const [run, gate] = (["Run", "Gate"] as const).map(
    (column) => `IFERROR(${ofRun(frame, column, String(place))},"")`,
  ) as [string, string];
  const says = (state: "open" | "shut"): string => `SUMPRODUCT(1*(${TOLD}="${state} "&${name}))>0`;
  const isOpen = `IF(${says("open")},TRUE,IF(${says("shut")},FALSE,${plainName(gate)}="open"))`;
  const heads = `SUMPRODUCT(1*(${plainName(headings)}=${name}))>0`;
  const ifGated = (code: string): string => `=IF(OR(${name}="",${isBlank(gate)}),"",${code})`;
  return [
    formula(`${beside.unheaded}${row}`, ifGated(`IF(${heads},"",${inList(run)})`), "unit"),
    formula(`${beside.open}${row}`, ifGated(`IF(${isOpen},${inList(run)},"")`), "unit"),
  ];
}

/** What is wrong with the words of a cell of column A, which stand in another cell as they are compared; or nothing. */
function trouble(frame: Frame, words: string, runs: RunsByName): string {
  const name = `MID(${words},6,255)`;
  const opposite = `IF(LEFT(${words},5)="open ","shut ","open ")&${name}`;
  const hasGate = `NOT(${isBlank(ofRun(frame, "Gate", runs.placeOf(name)))})`;
  const checks: readonly (readonly [when: string, why: string])[] = [
    [`AND(LEFT(${words},5)<>"open ",LEFT(${words},5)<>"shut ")`, `"write open or shut, then the name of a run"`],
    [`${runs.countOf(name)}=0`, `"no run is called "&${name}`],
    [`${runs.countOf(name)}>1`, `"more than one run on the sheet ${frame.sheet("runs")} is called "&${name}`],
    [`NOT(${hasGate})`, `${name}&" has no gate on the sheet ${frame.sheet("runs")}"`],
    [`SUMPRODUCT(1*(${TOLD}=${opposite}))>0`, `${name}&" is told both open and shut"`],
  ];
  // each reason is a whole sentence, since to ask for the reason twice would double the longest formula of a book
  const told = (why: string): string => `"${TROUBLE}"&ROW()&": "&${why}&". "`;
  const reasons = checks.reduceRight((rest, [when, why]) => `IF(${when},${told(why)},${rest})`, '""');
  return `=IF(${words}="","",${reasons})`;
}
