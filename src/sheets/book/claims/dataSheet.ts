import { type ClaimFact, claimFacts } from "../../../reference/claimFacts";
import { formula, input, text } from "../../cells";
import type { ChoiceList, SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { aboveHeadings } from "../parts/aboveHeadings";
import { answerCell, answerColumn, isMissing } from "../parts/answerReferences";
import { tableEnd } from "../parts/tableEnd";
import { unitWord } from "../parts/units";
import type { ClaimsContents } from "./contents";
import { CHECKS, checkRow, CLAIM_ANSWER, CLOSING, COUNTED, FACTS, FACTS_FIRST, FACTS_LAST } from "./layout";

/** The facts, the unit of each, and beside them each verdict in the order of the table of reasons. */
export function dataSheet(frame: Frame, { says }: ClaimsContents): SheetCell[] {
  const cells: SheetCell[] = [
    text(`A${FACTS - 1}`, "The data sheet", "section"),
    text(`A${FACTS}`, "Fact", "header"),
    text(`B${FACTS}`, "Their number", "numberHeader"),
    text(`C${FACTS}`, "Unit", "header"),
    text(`E${COUNTED}`, "In short", "section"),
    formula(`F${COUNTED}`, `=${counted()}`, "total"),
    formula(`F${CLOSING}`, `=${closing()}`, "paragraph"),
    text(`E${FACTS}`, "Verdict", "header"),
    text(`F${FACTS}`, "Check", "header"),
  ];
  claimFacts.forEach((fact: ClaimFact, index) => {
    const at = FACTS_FIRST + index;
    const [verdict, check] = (["verdict", "check"] as const).map((key) =>
      answerCell(CLAIM_ANSWER, key, checkRow(at)).replace("$", ""),
    ) as [string, string];
    const shown = (code: string): string => `=IF(${isNone},"",IF(${verdict}="","",${code}&""))`;
    cells.push(
      text(`A${at}`, fact.key, "label"),
      // a share of dust caught stays as printed: the number behind 95% is another one to each program
      input(`B${at}`, says[fact.key as keyof typeof says] ?? null, fact.key === "filter rating" ? { format: "@" } : {}),
      unitCell(frame, at, fact),
      formula(`E${at}`, shown(verdict)),
      formula(`F${at}`, shown(check)),
    );
  });
  return [...cells, tableEnd(`A${FACTS_LAST + 1}`), ...meanings()];
}

/** The words that a fact may be, to choose from; others that people use are understood too. */
export const factChoices: readonly ChoiceList[] = claimFacts.flatMap(({ takes }: ClaimFact, index) =>
  takes.kind === "words"
    ? [{ range: `B${FACTS_FIRST + index}`, choices: takes.words.map(({ key }) => key), strict: false }]
    : [],
);

const FACTS_TYPED = `$B$${FACTS_FIRST}:$B$${FACTS_LAST}`;
export const noFacts = `COUNTA(${FACTS_TYPED})=0`;

/** The unit in which a bare number is read, as long as the fact of that row has its name: over another name it would be wrong. */
function unitCell(frame: Frame, row: number, { key, takes }: ClaimFact): SheetCell {
  const quoted = (words: string): string => `"${words}"`;
  const unit =
    takes.kind === "pair"
      ? `${unitWord(frame, "airflow")}&" at "&${unitWord(frame, "pressure")}`
      : takes.kind !== "amount"
        ? quoted(takes.kind === "words" ? "choose" : "as printed")
        : takes.unit === undefined
          ? unitWord(frame, takes.quantity)
          : quoted(takes.unit);
  return formula(`C${row}`, `=IF($A${row}="${key}",${unit},"")`, "unit");
}

/** Whether there is no answer: a program without our functions goes on with the verdicts of before a change. */
const isNone = isMissing(`$A$${CHECKS}`, FACTS_TYPED);

const VERDICTS = ["impossible", "doubtful", "holds", "cannot tell", "not read"] as const;

/** Counted in the table: whoever deletes a row of the data sheet takes a verdict out of the list beside it. */
function counted(): string {
  const count = (verdict: string, range = answerColumn(CLAIM_ANSWER, "verdict")): string =>
    `COUNTIF(${range},"${verdict}")`;
  const listed = VERDICTS.map((verdict) => count(verdict, `$E$${FACTS_FIRST}:$E$${FACTS_LAST}`)).join("+");
  const all = VERDICTS.map((verdict) => count(verdict)).join("+");
  const words = `${count("impossible")}&" impossible, "&${count("doubtful")}&" doubtful, "&${count("holds")}&" hold, "&${count("cannot tell")}&" cannot tell"&IF(${count("not read")}=0,"",", "&${count("not read")}&" not read")&IF(${listed}=${all},"","; more of them under Check by check")`;
  return `${aboveHeadings("B", FACTS - 1, FACTS)}&IF(${noFacts},"Type what the data sheet says; leave blank what it does not say.",IF(ISERROR($A$${CHECKS}),"see A${CHECKS}",${words}))`;
}

/** CLAIM's last row sums up; it alone has no verdict. */
function closing(): string {
  const [check, why] = [answerColumn(CLAIM_ANSWER, "check"), answerColumn(CLAIM_ANSWER, "why")];
  return `IF(${isNone},"",IFERROR(INDEX(${why},MATCH("In short",${check},0))&"",""))`;
}

function meanings(): SheetCell[] {
  const lines = [
    "impossible: a law forbids it with the facts as given. doubtful: more than the figure that the reason names; where that is a judgement, it says so.",
    "holds: nothing here speaks against it, no more than that. cannot tell: a fact that is not given would decide; the reason names it. not read: mend that row.",
    "A number may have its unit: 1700 CFM, 140 in.w.g., 1.1 kW. A rated point is an airflow at a pressure, typed into one cell: 1000 at 8.",
  ];
  return lines.map((line, index) => text(`A${FACTS_LAST + 2 + index}`, line, "note"));
}
