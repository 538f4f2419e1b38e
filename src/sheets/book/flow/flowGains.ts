import { gainColumns } from "../../../reference/answerColumns";
import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { FLOW_HEADER } from "../layout";
import { answerLetters, FLOW_ANSWER, onceRunsAndCurve } from "../parts/answerReferences";
import { spillOf } from "../parts/spill";
import { formatOf } from "../parts/units";
import { gainsCall } from "./flowCalls";
import {
  besideColumn,
  GAINS,
  GAINS_ANSWER,
  GAINS_LAST,
  GAINS_TITLE,
  HELPED_CELL,
  runRows,
  WISH_CELL,
} from "./flowLayout";

const plain = (address: string): string => address.replaceAll("$", "");

/** What to change first: each single change tried for one hood, best first. */
export function gains(frame: Frame): SheetCell[] {
  const share = besideColumn("share");
  const worst = `INDEX(${runRows("run")},MATCH(MIN(${share}),${share},0))`;
  const call = gainsCall(frame, HELPED_CELL);
  const waits = `IF(${HELPED_CELL}="","No open hood wants air: see B${FLOW_HEADER}",${call})`;
  return [
    text(`A${GAINS_TITLE}`, "What to change first", "section"),
    text(plain(WISH_CELL).replace("B", "A"), "Hood to help", "label"),
    input(plain(WISH_CELL), null, {
      note: `The name of a hood's run, as in column ${answerLetters(FLOW_ANSWER, "run")} above.`,
    }),
    text(
      plain(WISH_CELL).replace("B", "C"),
      "Blank: the open hood that gets the smallest share of what it wants.",
      "note",
    ),
    text(plain(HELPED_CELL).replace("B", "A"), "Tried for", "label"),
    formula(plain(HELPED_CELL), `=IF(${WISH_CELL}="",IFERROR(${worst},""),${WISH_CELL})`, "total"),
    text(plain(HELPED_CELL).replace("B", "C"), `Each change alone, solved as its own network: =${call}`, "note"),
    ...spillOf(
      GAINS_ANSWER.column,
      GAINS,
      GAINS_LAST,
      gainColumns.map(({ key, quantity }) =>
        quantity === null ? null : formatOf(frame, key === "gained" ? "leak" : quantity),
      ),
      onceRunsAndCurve(frame, waits),
    ),
  ];
}
