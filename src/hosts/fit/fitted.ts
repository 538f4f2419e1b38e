import { placeOf } from "../../sheets/address";
import type { Workbook } from "../../sheets/workbook";
import { FileRefusal } from "../file/fileRefusal";
import { checkLoad } from "./checkLoad";
import { clipped } from "./clipped";
import { whoReads, type Stray } from "./whoReads";
import { parted } from "./strays";
import { itemAt } from "../../reference/itemAt";

export interface Fitted {
  readonly workbook: Workbook;
  readonly leftOut: readonly string[]; // cells that stand too far from the others, as Runs!XFD1048576
}

const MOST_LEFT_OUT = 20; // more than that is no slip of the hand
const MOST_NAMED = 5;

/**
 * A workbook as the sheet in the browser can hold it: without single cells that stand far from all others, and with ranges that
 * end where its sheets do.
 *
 * @throws FileRefusal where that would change a number, or leave too much out, or is too much work all the same
 */
export function fitted(workbook: Workbook): Fitted {
  const sheets = workbook.sheets.map((sheet) => ({ sheet, ...parted(sheet) }));
  checkLoad(
    workbook,
    sheets.map(({ reach }) => reach),
  );
  const strays = sheets.flatMap(({ sheet: { name }, strays: cells }) =>
    cells.map(({ at }): Stray => ({ sheet: name, at, ...placeOf(at) })),
  );
  const leftOut = strays.map(({ sheet, at }) => `${sheet}!${at}`);
  if (strays.length > MOST_LEFT_OUT)
    throw new FileRefusal(
      `This file has ${strays.length} cells far from the others, such as ${itemAt(leftOut, 0)}: more than a sheet can hold here, so it is not opened.`,
    );
  const reader = whoReads(strays, workbook);
  if (reader !== null)
    throw new FileRefusal(
      `This file reaches farther than a sheet can here, to ${named(leftOut)}, and ${reader} may read that: delete what stands there or move it nearer, then open it.`,
    );
  const whole = sheets.map(({ sheet, cells, reach }) => clipped({ ...sheet, cells }, reach));
  return { workbook: { ...workbook, sheets: whole }, leftOut };
}

/** What is told of cells that were left out; "" where there are none. */
export const leftOutWords = (leftOut: readonly string[]): string =>
  leftOut.length === 0
    ? ""
    : `Left out, since it stands too far from the rest of its sheet: ${named(leftOut)}. Nothing reads it; a file saved from here does not have it.`;

const named = (cells: readonly string[]): string =>
  cells.length <= MOST_NAMED
    ? cells.join(", ")
    : `${cells.slice(0, MOST_NAMED).join(", ")} and ${cells.length - MOST_NAMED} more`;
