import { claimColumns } from "../../../reference/answerColumns";
import { text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame, SheetOf } from "../frame";
import { answerColumn, answerLetters } from "../parts/answerReferences";
import { printing } from "../parts/printing";
import { sheetHead } from "../parts/sheetHead";
import { spillOf } from "../parts/spill";
import type { ClaimsContents } from "./contents";
import { dataSheet, factChoices, noFacts } from "./dataSheet";
import { CHECKS, CHECKS_LAST, CLAIM_ANSWER, CLOSING, DUCTS, FACTS, FACTS_FIRST, FACTS_LAST } from "./layout";
import { onYourDucts } from "./onYourDucts";

export { type ClaimsContents, emptyClaims, exampleClaims } from "./contents";

const LINES = 7; // of the longest reason in its column
const USUAL_CHECKS = 14; // as many as a full data sheet has; more rows come only from rows that are not read

/** A vendor's numbers held against physics. */
export const claimsSheet: SheetOf<ClaimsContents> = (frame, contents) => ({
  name: frame.sheet("claims"),
  columns: [24, 13, 13, 9, 12, 53, 56],
  tallRows: [
    { row: DUCTS, lines: 4 },
    { row: CLOSING, lines: 7 },
    { row: CHECKS, lines: 2 },
    ...Array.from({ length: USUAL_CHECKS }, (_, index) => ({ row: CHECKS + 1 + index, lines: LINES })),
  ],
  frozen: { rows: 0, columns: 0 },
  cells: [
    ...sheetHead(
      frame.sheet("claims"),
      "A vendor's numbers held against physics: which can be, which cannot, and why.",
      contents.invented,
    ),
    ...(contents.tryIt === null ? [] : [text("E3", contents.tryIt)]),
    text("A5", "A verdict is on numbers only, never on a product. Numbers left blank are not judged.", "total"),
    ...onYourDucts(frame),
    ...dataSheet(frame, contents),
    ...checks(frame),
  ],
  lists: factChoices,
  flags: [
    ...["impossible", "doubtful", "not read"].map((containsText) => ({
      range: `E${FACTS_FIRST}:E${FACTS_LAST}`,
      containsText,
      style: "flag" as const,
    })),
    { range: answerColumn(CLAIM_ANSWER, "verdict").replaceAll("$", ""), containsText: "impossible", style: "flag" },
  ],
  print: { ...printing(frame, "landscape", 1), area: `A1:G${CHECKS + USUAL_CHECKS}` },
});

function checks(frame: Frame): SheetCell[] {
  const code = `DUCT.CLAIM($A$${FACTS}:$B$${FACTS_LAST},${frame.name("units")})`;
  const numberHeads = (["claimed", "allowed"] as const).map((key) => `${answerLetters(CLAIM_ANSWER, key)}${CHECKS}`);
  const looks = (cell: SheetCell): SheetCell => {
    if (cell.style === "result") return { ...cell, style: "paragraph" };
    return numberHeads.includes(cell.at) ? { ...cell, style: "numberHeader" } : cell;
  };
  return [
    text(`A${CHECKS - 2}`, "Check by check", "section"),
    text(
      `A${CHECKS - 1}`,
      `One formula fills this table: =${code}. Where it is said to be a judgement, it is ours.`,
      "note",
    ),
    // CLAIM rounds its numbers to what they mean, so they need no format
    ...spillOf(
      CLAIM_ANSWER.column,
      CHECKS,
      CHECKS_LAST,
      claimColumns.map(() => null),
      `=IF(${noFacts},"No checks yet",${code})`,
    ).map(looks),
  ];
}
