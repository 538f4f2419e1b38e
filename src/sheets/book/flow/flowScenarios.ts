import { scenarioColumns } from "../../../reference/answerColumns";
import { headerOfColumn } from "../../../reference/columnsOfAnswers";
import { scenarioColumnsFor } from "../../../reference/columnsOfScenarios";
import { cellAddress, columnLetters } from "../../address";
import { formula, input, text } from "../../cells";
import type { ChoiceList, SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { FLOW_SYSTEM_CELL, runsColumn } from "../layout";
import { isMissing, onceRunsAndCurve, typedInto } from "../parts/answerReferences";
import { LOOK } from "../parts/look";
import { saysNote, SETTLES } from "../parts/notes";
import { spillOf } from "../parts/spill";
import { aboveHeadings } from "../parts/aboveHeadings";
import { tableEnd } from "../parts/tableEnd";
import { formatOf, headingIn } from "../parts/units";
import { quotedCall, scenariosCall } from "./flowCalls";
import type { FlowContents } from "./flowContents";
import { listed } from "./flowGates";
import {
  besideCell,
  FLOW_ROWS,
  MOST_GATES,
  MOST_SETS,
  SCENARIOS,
  SCENARIOS_LAST,
  SCENARIOS_WIDEST,
  SETS,
  SETS_COLUMN,
  SETS_LAST,
  SLOWEST,
} from "./flowLayout";

const PERCENT = "0.0";

const gateCell = (gate: number, row: number): string => cellAddress(SETS_COLUMN + 1 + gate, row);
const marks = `${gateCell(0, SETS + 1)}:${gateCell(MOST_GATES - 1, SETS_LAST)}`;
const names = `B${SETS + 1}:B${SETS_LAST}`;
const sets = `B${SETS}:${gateCell(MOST_GATES - 1, SETS_LAST)}`;
const gates = Array.from({ length: MOST_GATES }, (_, gate) => gate);

export const scenarioList: ChoiceList = { range: marks, choices: ["open", "shut"], strict: true };

/** Sets of open gates to type in, under them what each would give, and in words where its dust is slowest. */
export function scenarios(frame: Frame, { hoods, gated, scenarios: asked }: FlowContents): SheetCell[] {
  const unheaded = FLOW_ROWS.map((row) => besideCell("unheaded", row)).join("&");
  const call = scenariosCall(frame, sets);
  const waits = `IF(COUNTA(${runsColumn(frame, "Gate")})<2,"No run of the sheet ${frame.sheet("runs")} has a gate",IF(COUNTA(${names})+COUNTA(${marks})=0,"Fill in a scenario above first",${call}))`;
  return [
    text(`A${SETS - 2}`, "Scenarios", "section"),
    text(
      `C${SETS - 2}`,
      "Which gates are open together? Each column is headed by a run's name. Name a scenario and mark its gates; a blank is shut.",
      "note",
    ),
    formula(
      `C${SETS - 1}`,
      `=${aboveHeadings("B", SETS - 1, SETS)}&IF(${unheaded}="","","Gates that head no column stay shut here: "&${listed(unheaded)})`,
      "note",
    ),
    text(`B${SETS}`, "Scenario", "header"),
    // typed, as the marks are: a heading that followed the rows of Runs would come to stand over another's marks
    ...gates.map((gate) => input(gateCell(gate, SETS), gated[gate] ?? null)),
    ...Array.from({ length: MOST_SETS }, (_, index) => setRow(SETS + 1 + index, asked[index])).flat(),
    tableEnd(`B${SETS_LAST + 1}`),
    text(`A${SCENARIOS}`, "Flags", "header"),
    ...spillOf(SETS_COLUMN, SCENARIOS, SCENARIOS_LAST, formats(frame, hoods), onceRunsAndCurve(frame, waits)),
    text(`C${SCENARIOS_LAST + 1}`, `One formula fills this table: =${quotedCall.scenarios(frame, sets)}`, "note"),
    text(`B${SLOWEST}`, "In short", "header"),
    formula(`C${SLOWEST}`, headingIn(frame, headerOfColumn(scenarioColumns, "fanAirflow"), "airflow"), "numberHeader"),
    formula(
      `D${SLOWEST}`,
      headingIn(frame, headerOfColumn(scenarioColumns, "fanPressure"), "pressure"),
      "numberHeader",
    ),
    text(`E${SLOWEST}`, headerOfColumn(scenarioColumns, "lost"), "numberHeader"),
    text(`F${SLOWEST}`, headerOfColumn(scenarioColumns, "slowest"), "header"),
    ...gates.slice(4, 9).map((gate) => ({ at: gateCell(gate, SLOWEST), value: null, style: "header" as const })),
    ...Array.from({ length: MOST_SETS }, (_, index) => inShort(frame, index)).flat(),
  ];
}

function setRow(row: number, scenario: FlowContents["scenarios"][number] | undefined): SheetCell[] {
  return [
    input(`B${row}`, scenario?.name ?? null),
    ...gates.map((gate) => input(gateCell(gate, row), scenario?.gates[gate] ?? null)),
  ];
}

/** Of the answer's columns, as many as there are with these hoods. */
function formats(frame: Frame, hoods: number | null): (string | null)[] {
  return scenarioColumnsFor(Array.from({ length: hoods ?? MOST_GATES })).map(({ key, quantity }) => {
    if (key === "lost") return PERCENT;
    if (quantity === null) return null;
    // where the number of hoods is not known, a velocity may come to stand where the fan's pressure would
    return hoods === null ? "#,##0.0" : formatOf(frame, quantity);
  });
}

/** The answer's columns move with the number of hoods, so each is found by its heading. */
function inShort(frame: Frame, index: number): SheetCell[] {
  const answer = SCENARIOS + 1 + index;
  const at = SLOWEST + 1 + index;
  const last = columnLetters(SCENARIOS_WIDEST);
  const headed = (header: string): string =>
    `INDEX($B${answer}:$${last}${answer},1,MATCH(${header},$B$${SCENARIOS}:$${last}$${SCENARIOS},0))`;
  const headedLike = (letter: string): string => headed(`$${letter}$${SLOWEST}`);
  const [name, slowest] = (["scenario", "slowest"] as const).map((key) =>
    headed(`"${headerOfColumn(scenarioColumns, key)}"`),
  ) as [string, string];
  const stands = `ISFORMULA($B$${SCENARIOS})`;
  const inPlace = `AND(${stands},IFERROR(ROW($B${answer})-ROW($B$${SCENARIOS}),0)=${index + 1})`;
  const table = `the table of scenarios (row ${SCENARIOS} on)`;
  const moved = `"${LOOK} a row was added, deleted or moved in ${table}: undo that"`;
  // without our functions a program keeps the rows of before a change, so these read every input themselves
  const isNone = isMissing(`$B$${SCENARIOS}`, FLOW_SYSTEM_CELL, sets);
  const see = index === 0 ? `"see ${frame.sheet("flow")} B${SCENARIOS}"` : '""';
  const read = (letter: string): string =>
    `=IF(${isNone},"",IFERROR(IF(AND(${inPlace},${name}<>""),${headedLike(letter)},""),""))`;
  return [
    formula(`A${answer}`, `=IF(AND(NOT(${isNone}),${saysNote("settles", slowest)}),"${SETTLES}","")`),
    formula(
      `B${at}`,
      `=IF(${inPlace},IF(${isNone},${see},IFERROR(IF(${headedLike("F")}="","",${name}&""),"")),IF(${stands},${moved},${typedInto(table)}))`,
    ),
    formula(`C${at}`, read("C"), "result", { format: formatOf(frame, "airflow") }),
    formula(`D${at}`, read("D"), "result", { format: formatOf(frame, "pressure") }),
    formula(`E${at}`, read("E"), "result", { format: PERCENT }),
    formula(`F${at}`, read("F")),
  ];
}
