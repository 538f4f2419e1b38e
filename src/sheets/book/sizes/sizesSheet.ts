import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame, SheetOf } from "../frame";
import { systemInWords } from "../flow/systemChoice";
import { cautionLine } from "../parts/cautionLine";
import { eitherOf } from "../parts/inUse";
import { printing } from "../parts/printing";
import { tableEnd } from "../parts/tableEnd";
import { sizesAsked } from "./sizesAsked";
import { LISTS, LISTS_LAST, PIPES_ANSWER, STATE_CELL, TOGETHER_ANSWER } from "./sizesLayout";
import { CHANGED, sizesPipes } from "./sizesPipes";
import { sizesTogether } from "./sizesTogether";

/** Which machines can run together with the ducts as they are, and which pipe to buy so that chosen sets of them do. */
export const sizesSheet: SheetOf<null> = (frame) => ({
  name: frame.sheet("sizes"),
  columns: [26, 24, 12, 12, 12, 12, 12, 44, 12, 24, 4, 24, 24, 8],
  tallRows: [
    { row: LISTS, lines: 3 },
    { row: PIPES_ANSWER.header, lines: 2 },
    { row: TOGETHER_ANSWER.header, lines: 3 },
  ],
  frozen: { rows: 0, columns: 0 },
  cells: [
    text("A1", "Sizes: which machines can run together, and which pipe to buy", "title"),
    text(
      "A2",
      `With the ducts of ${frame.sheet("runs")} and the fan of ${frame.sheet("fan")}: every open hood shall get its air, and no dust shall settle.`,
    ),
    text(
      "A3",
      "It knows nothing of head room, resale, or how loud air is. Where branches join, sizes are found, not proved the best.",
      "note",
    ),
    cautionLine(frame, "A4", "Sizes are as sure as the fan's curve and the losses typed: measure before you buy."),
    text("A6", "In short", "section"),
    ...whichSystem(frame),
    ...sizesAsked(frame),
    tableEnd(`A${LISTS_LAST + 1}`),
    ...sizesPipes(frame),
    ...sizesTogether(frame),
  ],
  lists: [],
  flags: [{ range: STATE_CELL.replaceAll("$", ""), containsText: CHANGED, style: "flag" }],
  print: { ...printing(frame, "landscape"), area: `A1:I${TOGETHER_ANSWER.last}` },
});

/** The search takes the ducts as typed whatever the sheets show. */
const SEARCHED_AS_TYPED = '" for what can run together; which pipe goes by what is typed"';
const whichSystem = (frame: Frame): SheetCell[] =>
  frame.has("measured")
    ? [formula("B6", `=${systemInWords(frame)}&${eitherOf(frame, SEARCHED_AS_TYPED, '""')}`, "note")]
    : [];
