import type { BudgetKey, GainKey, SolveKey, UncertaintyKey } from "../../../reference/answerColumns";
import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { SOURCE_CELL } from "../fan/fanLayout";
import {
  besideCell,
  besideColumn,
  ERRORS,
  FLOW_FIRST,
  GAINS,
  GAINS_ANSWER,
  GAINS_SAY,
  HELPED_CELL,
  RUN_LAST,
  UNCERTAINTY_ANSWER,
} from "../flow/flowLayout";
import { FLOW_SAYS_CELL } from "../layout";
import { LEAKS_SAY, MEND_NEXT_CELL, TOTALS_SAY } from "../leaks/layout";
import {
  answerCell,
  BUDGET_ANSWER,
  FLOW_ANSWER,
  fromAnswer,
  headedColumn,
  headOf,
  isMissing,
  isWhole,
  ofFan,
  stands,
} from "../parts/answerReferences";
import { saysLook } from "../parts/look";
import { noDeviceSaid } from "../parts/noDevice";
import { noLeakOn } from "../parts/noLeak";
import { type Total, totals } from "../parts/totals";
import { formatOf, SHARE, unitOnly, unitWord } from "../parts/units";
import { TOGETHER_CELL } from "../sizes/sizesLayout";
import { FAN_TITLE, LEAKS, WATCH } from "./summaryLayout";

/** The fan's point, what leaks take, and what to look at next. */
export function summarySystem(frame: Frame): SheetCell[] {
  const flow = (code: string): string => fromAnswer(FLOW_ANSWER, code, frame);
  const asked = (key: BudgetKey): string => fromAnswer(BUDGET_ANSWER, ofFan(BUDGET_ANSWER, key, frame), frame);
  const ofFlow = (key: SolveKey): string => ofFan(FLOW_ANSWER, key, frame);
  const airflow = { format: formatOf(frame, "airflow"), unit: unitOnly(frame, "airflow") };
  const pressure = { format: formatOf(frame, "pressure"), unit: unitOnly(frame, "pressure") };
  const fan: Total[] = [
    { label: "It moves", code: flow(ofFlow("airflow")), ...airflow },
    { label: "at a fan static pressure of", code: flow(ofFlow("staticSuction")), ...pressure },
    { label: "The hoods ask for", code: asked("airflow"), ...airflow },
    { label: "which needs", code: asked("pathLoss"), ...pressure },
  ];
  const leaks: Total[] = [
    { label: "All leaks", code: flow(ofFlow("leak")), ...airflow },
    {
      label: "Share of the air lost",
      code: flow(`IF(${ofFlow("airflow")}>0,${ofFlow("leak")}/${ofFlow("airflow")},0)`),
      format: SHARE,
    },
  ];
  return [
    text(`A${FAN_TITLE}`, "The fan", "section"),
    ...totals(`A${FAN_TITLE + 1}`, 1, fan),
    formula(`D${FAN_TITLE + 1}`, `=${howSure(frame)}`),
    formula(`D${FAN_TITLE + 4}`, `=${noDeviceSaid(frame)}`),
    text(`A${FAN_TITLE + 5}`, "Its curve is from", "label"),
    formula(`B${FAN_TITLE + 5}`, `=${frame.ref("fan", SOURCE_CELL)}&""`),
    text(`A${LEAKS}`, "Leaks", "section"),
    ...totals(`A${LEAKS + 1}`, 1, leaks),
    formula(`D${LEAKS + 1}`, `=IF(COUNT(B${LEAKS + 1})=0,"",IF(B${LEAKS + 1}=0,"${noLeakOn(frame)}",""))`),
    text(`A${LEAKS + 3}`, "Mend next", "label"),
    formula(`B${LEAKS + 3}`, mendNext(frame)),
    text(`A${WATCH}`, "What to watch", "section"),
    text(`A${WATCH + 1}`, "Dust settles in", "label"),
    formula(`B${WATCH + 1}`, flow(settlingRuns(frame))),
    text(`A${WATCH + 2}`, "Best single change", "label"),
    formula(`B${WATCH + 2}`, bestChange(frame)),
    ...(frame.has("sizes") ? runTogether(frame) : []),
  ];
}

/** The fan's airflow with its ±, and what to measure first. */
function howSure(frame: Frame): string {
  const ofFanRow = (key: UncertaintyKey): string => ofFan(UNCERTAINTY_ANSWER, key, frame);
  const words = `${ofFanRow("inWords")}&", mostly unsure by "&${ofFanRow("mostlyFrom")}`;
  const whole = `IFERROR(IF(${ofFanRow("mostlyFrom")}="","",${words}),"")`;
  const isNone = isMissing(frame.ref("flow", headOf(UNCERTAINTY_ANSWER)), frame.ref("flow", ERRORS));
  return `IF(OR(${saysLook("$A$3")},${isNone}),"",IF(${isWhole(UNCERTAINTY_ANSWER, frame)},${whole},"see ${frame.sheet("flow")} ${FLOW_SAYS_CELL}"))`;
}

const runTogether = (frame: Frame): SheetCell[] => [
  text(`A${WATCH + 3}`, "Can run together", "label"),
  formula(`B${WATCH + 3}`, `=${frame.ref("sizes", TOGETHER_CELL)}&""`),
];

/** From the log of leaks where there is one; else what sealing everything would give. */
function mendNext(frame: Frame): string {
  if (frame.has("leaks")) {
    const unless = (cell: string, code: string): string =>
      `IF(${saysLook(frame.ref("leaks", cell))},"see ${frame.sheet("leaks")} ${cell}",${code})`;
    const next = `${frame.ref("leaks", MEND_NEXT_CELL)}&""`;
    return `=${unless(TOTALS_SAY, unless(LEAKS_SAY, next))}`;
  }
  const gained = `ROUND(SUM(${frame.ref("flow", besideColumn("gains"))}),0)`;
  const words = `"Sealing every leak gives the open hoods "&${gained}&" "&${unitWord(frame, "airflow")}&" more."`;
  const orNone = `IF(${ofFan(FLOW_ANSWER, "leak", frame)}=0,"",${words})`;
  return fromAnswer(FLOW_ANSWER, orNone, frame);
}

function settlingRuns(frame: Frame): string {
  const names: string[] = [];
  for (let row = FLOW_FIRST; row <= RUN_LAST; row++) names.push(frame.ref("flow", besideCell("settles", row)));
  const joined = names.join("&");
  return `IF(COUNTIF(${frame.ref("flow", besideColumn("settles"))},"?*")=0,"no run",${joined})`;
}

/** The first row of GAINS, as a sentence. */
function bestChange(frame: Frame): string {
  const best = (key: GainKey): string => `INDEX(${headedColumn(GAINS_ANSWER, key, frame)},2)`; // below its header, wherever rows are inserted
  const said = answerCell(GAINS_ANSWER, "run", GAINS, frame); // a sentence where there are no gains
  const air = `${best("sure")}&" "&${unitWord(frame, "airflow")}`;
  const note = `IF(${best("note")}="","","; "&${best("note")})`;
  const words = `${best("run")}&": "&${best("change")}&" ("&${frame.ref("flow", HELPED_CELL)}&" "&${air}&${note}&")"`;
  const moved = `${frame.sheet("flow")} ${GAINS_SAY.replaceAll("$", "")}`;
  return `=IFERROR(IF(OR(${saysLook("$A$3")},LEFT(${frame.ref("flow", GAINS_SAY)},4)="see ",NOT(${stands(GAINS_ANSWER, frame)})),"see ${moved}",IF(ISNUMBER(${best("gained")}),${words},IF(${best("change")}="",${said}&"",${best("change")}&""))),"")`;
}
