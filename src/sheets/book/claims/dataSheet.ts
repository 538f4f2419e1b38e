import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { answerCell } from "../parts/answerReferences";
import { bySystem, unitOnly, unitWord } from "../parts/units";
import type { ClaimsContents } from "./contents";
import { type Fact, facts, limitsOf } from "./facts";
import { CHECKS, checkRow, CLAIM_ANSWER, FACTS, FACTS_FIRST, FACTS_LAST } from "./layout";

const PROBLEM_NOTE = "Says which number CLAIM would not take, so that the sheet can say it in place of the verdicts.";

/** The facts, the unit of each, and beside them each verdict in the order of the table of reasons. */
export function dataSheet(frame: Frame, { says }: ClaimsContents): SheetCell[] {
  const cells: SheetCell[] = [
    text(`A${FACTS - 1}`, "The data sheet", "section"),
    text(`A${FACTS}`, "Fact", "header"),
    text(`B${FACTS}`, "Their number", "numberHeader"),
    text(`C${FACTS}`, "Unit", "header"),
    text(`E${FACTS - 1}`, "In short", "section"),
    formula(`F${FACTS - 1}`, `=${counted()}`, "total"),
    text(`E${FACTS}`, "Verdict", "header"),
    text(`F${FACTS}`, "Check", "header"),
    text(`I${FACTS}`, "Not taken", "header", { note: PROBLEM_NOTE }),
  ];
  facts.forEach((fact, index) => {
    const at = FACTS_FIRST + index;
    const [verdict, check] = (["verdict", "check"] as const).map((key) =>
      answerCell(CLAIM_ANSWER, key, checkRow(at)).replace("$", ""),
    ) as [string, string];
    cells.push(
      text(`A${at}`, fact.key, "label"),
      input(`B${at}`, says[fact.key] ?? null),
      unitCell(frame, `C${at}`, fact),
      formula(`E${at}`, `=IF(I${at}<>"","check it",IF(${anyProblem},"",${verdict}&""))`),
      formula(`F${at}`, `=IF(I${at}<>"",I${at},IF(OR(${anyProblem},${verdict}=""),"",${check}&""))`),
      formula(`I${at}`, `=${problem(frame, fact, `B${at}`)}`),
    );
  });
  return [...cells, ...meanings()];
}

const problems = `$I$${FACTS_FIRST}:$I$${FACTS_LAST}`;
export const anyProblem = `COUNTIF(${problems},"*must*")>0`;
export const noFacts = `COUNTA($B$${FACTS_FIRST}:$B$${FACTS_LAST})=0`;

function unitCell(frame: Frame, at: string, fact: Fact): SheetCell {
  if ("quantity" in fact) return formula(at, unitOnly(frame, fact.quantity), "unit");
  return text(at, "unit" in fact ? fact.unit : fact.words, "unit");
}

/** One sentence for a value that cannot be that fact. */
function problem(frame: Frame, fact: Fact, at: string): string {
  const [inIP, inSI] = [limitsOf(fact, "IP"), limitsOf(fact, "SI")];
  if (inIP === null || inSI === null) return '""';
  const [low, high] = [0, 1].map((end) => bySystem(frame, String(inIP[end]!), String(inSI[end]!))) as [string, string];
  const unit = "quantity" in fact ? unitWord(frame, fact.quantity) : `"${"unit" in fact ? fact.unit : ""}"`;
  const said = `"${fact.key} must be a number from "&${low}&" to "&${high}&" "&${unit}`;
  return `IF(${at}="","",IF(COUNT(${at})=0,${said},IF(OR(${at}<${low},${at}>${high}),${said}&": typed in another unit?","")))`;
}

function counted(): string {
  const count = (verdict: string): string => `COUNTIF($E$${FACTS_FIRST}:$E$${FACTS_LAST},"${verdict}")`;
  const words = `${count("impossible")}&" impossible, "&${count("doubtful")}&" doubtful, "&${count("holds")}&" hold, "&${count("cannot tell")}&" cannot tell"`;
  const wrong = `"No verdicts until the number that is named below is put right."`;
  return `IF(${noFacts},"Type what the data sheet says; leave blank what it does not say.",IF(${anyProblem},${wrong},IF(ISERROR($A$${CHECKS}),"see A${CHECKS}",${words})))`;
}

function meanings(): SheetCell[] {
  const lines = [
    "impossible: physics forbids it. doubtful: more than the figure that the reason names; where that is a judgement, it says so.",
    "holds: nothing here speaks against it, no more than that. cannot tell: the data sheet does not say enough to judge it.",
  ];
  return lines.map((line, index) => text(`A${FACTS_LAST + 1 + index}`, line, "note"));
}
