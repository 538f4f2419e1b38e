import type { SolveKey } from "../../../reference/answerColumns";
import { type MarkedNote, markOf } from "../../../reference/notes";
import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame, SheetOf } from "../frame";
import { BUDGET_WRONG_CELL, fanCurve, FLOW_HEADER, FLOW_LAST, FLOW_SAYS_CELL, FLOW_SYSTEM_CELL } from "../layout";
import { answerColumn, FLOW_ANSWER, fromAnswer, isWhole, ofFan, torn } from "../parts/answerReferences";
import { cautionLine } from "../parts/cautionLine";
import { heldAsText } from "../parts/duplicated";
import { LOOK } from "../parts/look";
import { noDeviceSaid } from "../parts/noDevice";
import { noLeakOn } from "../parts/noLeak";
import { countOfNote, SETTLES } from "../parts/notes";
import { printing } from "../parts/printing";
import { joinsOfRuns, leftBehind, type RunsByName, runsByName } from "../parts/runsByName";
import { type Total, totals } from "../parts/totals";
import { sumOfRuns } from "../parts/byName";
import { formatOf, SHARE, unitOnly, unitWord } from "../parts/units";
import { flowAnswer, hoodColumns } from "./flowAnswer";
import type { FlowContents } from "./flowContents";
import { gains } from "./flowGains";
import { flowGates, gateFlag } from "./flowGates";
import {
  beside,
  besideColumn,
  GAINS,
  GAINS_TITLE,
  NAMES,
  SCENARIOS,
  SCENARIOS_LAST,
  SETS,
  SLOWEST,
  UNCERTAINTY_ANSWER,
} from "./flowLayout";
import { scenarioList, scenarios } from "./flowScenarios";
import { flowUncertainty } from "./flowUncertainty";
import { systemChoice, systemList } from "./systemChoice";

/** What the system really gives: the gates and their effect on the first screen, the questions behind it below. */
export const flowSheet: SheetOf<FlowContents> = (frame, contents) => {
  const runs = runsByName(frame, NAMES, FLOW_HEADER);
  const joins = joinsOfRuns(frame, runs, NAMES + 2, FLOW_HEADER);
  return {
    name: frame.sheet("flow"),
    columns: [
      20.5,
      24.5,
      10.5,
      13.5,
      ...Array.from({ length: 17 }, () => 10.5),
      26,
      8,
      8,
      16,
      16,
      8,
      16,
      16,
      16,
      8,
      16,
      8,
      4,
      14,
      8,
      60,
      4,
      18,
      ...Array.from({ length: 8 }, () => 10.5),
      26,
      10.5,
      18,
      60,
    ],
    tallRows: [
      { row: FLOW_HEADER, lines: 4 },
      { row: SETS, lines: 2 },
      { row: SCENARIOS, lines: 4 },
      { row: SLOWEST, lines: 3 },
      { row: GAINS, lines: 3 },
    ],
    frozen: { rows: 0, columns: 2 },
    cells: [
      ...introduction(frame, contents.tryIt, runs),
      ...systemChoice(frame),
      ...overview(frame),
      ...flowGates(frame, contents.gates, runs),
      ...flowAnswer(frame),
      ...hoodColumns(frame, runs, joins),
      ...flowUncertainty(frame),
      ...runs.cells,
      ...joins.cells,
      ...heldAsText(NAMES, fanCurve(frame), frame.sheet("fan")),
      ...scenarios(frame, contents),
      ...gains(frame),
    ],
    lists: [scenarioList, ...systemList(frame)],
    flags: [
      gateFlag,
      { range: FLOW_SAYS_CELL, containsText: LOOK, style: "flag" },
      { range: FLOW_SYSTEM_CELL.replaceAll("$", ""), containsText: LOOK, style: "flag" },
      { range: answerColumn(FLOW_ANSWER, "note").replaceAll("$", ""), containsText: markOf("settles"), style: "flag" },
      { range: answerColumn(FLOW_ANSWER, "note").replaceAll("$", ""), containsText: markOf("short"), style: "flag" },
      { range: `A${SCENARIOS + 1}:A${SCENARIOS_LAST}`, containsText: SETTLES, style: "flag" },
    ],
    // what flows, its notes, what sealing gives: the questions behind it would take two dozen pages, and Summary prints their answers
    print: { ...printing(frame, "portrait", 1), area: `A1:${beside.inWords}${FLOW_LAST}` },
  };
};

function introduction(frame: Frame, tryIt: string | null, runs: RunsByName): SheetCell[] {
  const wrong = frame.ref("budget", BUDGET_WRONG_CELL);
  const further = `Further: sealing (Q to U), ± (V, AI to AY), scenarios (row ${SETS - 2}), changes (row ${GAINS_TITLE}).`;
  return [
    text("A1", "Flow: what really flows", "title"),
    formula(
      "C1",
      `="Ducts and leaks of ${frame.sheet("runs")} with the fan of ${frame.sheet("fan")}, solved as one network. "&${noDeviceSaid(frame)}`,
    ),
    text(
      "C2",
      tryIt ?? `Column A: type shut or open and a run's name, for this sheet alone; else as on ${frame.sheet("runs")}.`,
    ),
    formula(
      FLOW_SAYS_CELL,
      `=IF(${runs.areThere},IF(AND(${isWhole(FLOW_ANSWER)},${isWhole(UNCERTAINTY_ANSWER)}),IF(${wrong}="","${further}",${wrong}),${torn(frame, FLOW_ANSWER, UNCERTAINTY_ANSWER)}),${leftBehind(NAMES + 2)})`,
      "note",
    ),
    text("A4", "Enough air is not yet capture.", "total"),
    cautionLine(frame, "C4", "Power off before you reach in. No grinding on a wood duct."),
  ];
}

function overview(frame: Frame): SheetCell[] {
  const read = (code: string): string => fromAnswer(FLOW_ANSWER, code);
  const fan = (key: SolveKey): string => ofFan(FLOW_ANSWER, key);
  const noted = (key: MarkedNote): string => read(countOfNote(key, answerColumn(FLOW_ANSWER, "note")));
  const airflow = { format: formatOf(frame, "airflow"), unit: unitOnly(frame, "airflow") };
  const left: Total[] = [
    { label: "Air into the open hoods", code: read(`SUM(${besideColumn("gets")})`), ...airflow },
    { label: "Wanted there", code: read(sumOfRuns(frame, besideColumn("wants"))), ...airflow },
    { label: "Air at the fan", code: read(fan("airflow")), ...airflow },
    { label: "Hoods short of air", code: noted("short"), format: "0" },
  ];
  const right: Total[] = [
    { label: "Leaks, added up", code: read(fan("leak")), ...airflow },
    {
      label: "Leaks, share of the air",
      code: read(`IF(${fan("airflow")}>0,${fan("leak")}/${fan("airflow")},0)`),
      format: SHARE,
    },
    { label: "Sealing all gives hoods", code: read(`SUM(${besideColumn("gains")})`), ...airflow },
    { label: "Runs whose dust settles", code: noted("settles"), format: "0" },
  ];
  // all on the first paper: beside the columns of the next ones B comes back, and with it the names at the left.
  // The third of those at the right, GAINED_CELL, is a number where the answer is whole
  return [...totals("B5", 1, left), ...totals("E5", 2, right), ...verdict(frame)];
}

const GAINED_CELL = "$G$7";

/** What the hoods do not get of the leaks' air, the fan no longer moves: flow in is flow out. */
function verdict(frame: Frame): SheetCell[] {
  const unit = unitWord(frame, "airflow");
  const air = ofFan(FLOW_ANSWER, "leak");
  const leaks = `ROUND(${air},0)`;
  const gained = `ROUND(SUM(${besideColumn("gains")}),0)`;
  const sentences = [
    `"The leaks add up to "&${leaks}&" "&${unit}&". Sealing them all gives the open hoods "&${gained}&" "&${unit}&" more."`,
    `"The other "&(${leaks}-${gained})&" "&${unit}&" the fan no longer moves: a tighter system resists it more."`,
  ];
  const without = [`"${noLeakOn(frame)}"`, '""'];
  return sentences.map((words, index) =>
    formula(
      `${beside.wants}${3 + index}`,
      `=IFERROR(IF(COUNT(${GAINED_CELL})=1,IF(${air}=0,${without[index]},${words}),""),"")`,
      "total",
    ),
  );
}
