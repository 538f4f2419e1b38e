import { WORKSHOP_AIR } from "../../../reference/plausible";
import type { Quantity } from "../../../reference/quantities";
import { formula } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { LOOK } from "../parts/look";
import { inBook, unitWord } from "../parts/units";
import { ALTITUDE_CELL, TEMPERATURE_CELL } from "./startLayout";

/** Beside the temperature and the altitude: a sentence where they are none of a workshop's, mostly of the other units, or where what counts was dragged elsewhere. */
export function airDoubts(frame: Frame): SheetCell[] {
  const limit = (value: number, quantity: Quantity): string => inBook(frame, value, quantity);
  const doubt = (cell: string, row: number, quantity: Quantity, far: string, asks: string): SheetCell => {
    const moved = `OR(ROW(${cell})<>ROW($A$${row}),COLUMN(${cell})<>COLUMN($A$${row})+1)`;
    const elsewhere = `"${LOOK} what counts was dragged to another cell: undo that"`;
    const said = `"${LOOK} ${asks} It is read in "&${unitWord(frame, quantity)}`;
    return formula(`D${row}`, `=IF(${moved},${elsewhere},IF(ISNUMBER(${cell}),IF(${far},${said},""),""))`, "note");
  };
  const { coldest, hottest, highest } = WORKSHOP_AIR;
  const share = `AND(${TEMPERATURE_CELL}<>0,ABS(${TEMPERATURE_CELL})<1)`; // what a cell holds in which 50% was typed
  const beyond = `OR(${share},${TEMPERATURE_CELL}<${limit(coldest, "temperature")},${TEMPERATURE_CELL}>${limit(hottest, "temperature")})`;
  return [
    doubt(
      TEMPERATURE_CELL,
      7,
      "temperature",
      beyond,
      `"&IF(${share},"in percent? 50% is 0.5.","no workshop's air?")&"`,
    ),
    doubt(ALTITUDE_CELL, 8, "length", `${ALTITUDE_CELL}>${limit(highest, "length")}`, "so high?"),
  ];
}
