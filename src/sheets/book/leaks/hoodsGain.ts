import { leakGainColumns } from "../../../reference/answerColumns";
import { cellAddress } from "../../address";
import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { openRuns } from "../layout";
import { onceRunsAndCurve } from "../parts/answerReferences";
import { curveInUse, runsInUse } from "../parts/inUse";
import { spillOf } from "../parts/spill";
import { formatOf } from "../parts/units";
import { GAIN_COLUMN, inWorked, LOG, LOG_FIRST, LOG_LAST, SUCTION_HANDED, TURNED, workedOf } from "./layout";

/** A reading of 0 is handed on by its word, since a host may send a blank as 0. */
const reading = (cells: string): string => `IF(${cells}="","",IF(${cells}=0,"still",${cells}))`;

/** Each reading taken as the leak of its run, before and after: a leak saved at a gate is not air gained at the hoods. */
export function hoodsGain(frame: Frame): SheetCell[] {
  const system = `${runsInUse(frame)},${curveInUse(frame)}`;
  const read = `${inWorked("A")},${reading(inWorked("K"))},${reading(inWorked("L"))},${inWorked(SUCTION_HANDED)}`;
  const call = `DUCT.LEAKGAINS(${system},${read},${openRuns(frame)},${frame.name("density")},${frame.name("units")})`;
  return [
    text(
      cellAddress(GAIN_COLUMN, LOG - 1),
      `At the hoods: all else as on the sheets ${frame.sheet("runs")} and ${frame.sheet("flow")}, the leak of this run as read before, and as read after.`,
      "note",
    ),
    ...spillOf(
      GAIN_COLUMN,
      LOG,
      LOG_LAST,
      leakGainColumns.map(({ key, quantity }) =>
        quantity === null ? null : formatOf(frame, key === "gained" ? "leak" : quantity),
      ),
      onceRunsAndCurve(frame, call, "blank"),
    ),
    ...Array.from({ length: LOG_LAST - LOG }, (_, index) => beside(LOG_FIRST + index)),
  ];
}

/** The function solves with the gates of Flow, whichever way the leak was read. */
function beside(at: number): SheetCell {
  const turned = workedOf(TURNED);
  const words = '": what the hoods gain counts its leak with the gate as it is there"';
  return formula(cellAddress(GAIN_COLUMN + leakGainColumns.length, at), `=IF(${turned}="","",${turned}&${words})`);
}
