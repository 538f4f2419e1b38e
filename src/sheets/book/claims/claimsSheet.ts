import { claimColumns, type ClaimKey } from "../../../reference/answerColumns";
import { text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame, SheetOf } from "../frame";
import { answerColumn } from "../parts/answerReferences";
import { printing } from "../parts/printing";
import { sheetHead } from "../parts/sheetHead";
import { spillOf } from "../parts/spill";
import type { ClaimsContents } from "./contents";
import { anyProblem, dataSheet, noFacts } from "./dataSheet";
import { CHECKS, CHECKS_LAST, CLAIM_ANSWER, FACTS, FACTS_FIRST, FACTS_LAST } from "./layout";

export { type ClaimsContents, emptyClaims, exampleClaims } from "./contents";

const LINES = 5; // of the longest reason in its column

/** A vendor's numbers held against physics. */
export const claimsSheet: SheetOf<ClaimsContents> = (frame, contents) => ({
  name: frame.sheet("claims"),
  columns: [24, 12, 12, 9, 12, 56, 56, 4, 12],
  tallRows: [
    { row: CHECKS, lines: 2 },
    ...Array.from({ length: CHECKS_LAST - CHECKS }, (_, index) => ({ row: CHECKS + 1 + index, lines: LINES })),
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
    ...dataSheet(frame, contents),
    ...checks(frame),
  ],
  lists: [],
  flags: [
    ...["impossible", "doubtful", "check it"].map((containsText) => ({
      range: `E${FACTS_FIRST}:E${FACTS_LAST}`,
      containsText,
      style: "flag" as const,
    })),
    { range: answerColumn(CLAIM_ANSWER, "verdict").replaceAll("$", ""), containsText: "impossible", style: "flag" },
  ],
  print: { ...printing(frame, "landscape", 1), pagesHigh: 1, area: `A1:G${CHECKS_LAST}` },
});

function checks(frame: Frame): SheetCell[] {
  const code = `DUCT.CLAIM($A$${FACTS}:$B$${FACTS_LAST},${frame.name("units")})`;
  const isNumber = (key: ClaimKey): boolean => key === "claimed" || key === "allowed";
  const formats = claimColumns.map(({ key }) => (isNumber(key) ? "#,##0.00" : null));
  return [
    text(`A${CHECKS - 2}`, "Check by check", "section"),
    text(
      `A${CHECKS - 1}`,
      `One formula fills this table: =${code}. Where it is said to be a judgement, it is ours.`,
      "note",
    ),
    ...spillOf(
      CLAIM_ANSWER.column,
      CHECKS,
      CHECKS_LAST,
      formats,
      `=IF(OR(${noFacts},${anyProblem}),"No checks yet",${code})`,
    ).map((cell): SheetCell => (cell.style === "result" ? { ...cell, style: "paragraph" } : cell)),
  ];
}
