import type { Calculated } from "../../../sheets/calculated";
import type { SheetCell, Workbook } from "../../../sheets/workbook";
import { FileRefusal } from "../fileRefusal";
import { toStored } from "../storedFormula";

/** What the file format can hold; more would make a file that Excel calls damaged. */
export const LONGEST_TEXT = 32767;
const LONGEST_FORMULA = 8192;
const LONGEST_SHEET_NAME = 31;

/** Refuses, before anything is written, what cannot stand in a file; nothing is cut off in silence. */
export function requireFitsFile({ workbook }: Calculated): void {
  if (workbook.sheets.length === 0) throw new FileRefusal("There is no sheet to write into a file.");
  workbook.sheets.forEach(({ name }) => checkSheetName(name, workbook));
  for (const sheet of workbook.sheets) for (const cell of sheet.cells) checkCell(cell, `${sheet.name}!${cell.at}`);
}

function checkSheetName(name: string, { sheets }: Workbook): void {
  if (name === "" || name.length > LONGEST_SHEET_NAME)
    throw new FileRefusal(
      `The sheet "${name}" needs a name of 1 to ${LONGEST_SHEET_NAME} characters to stand in a file.`,
    );
  if (/[:\\/?*[\]]|^'|'$|[^\P{Cc}]/u.test(name))
    throw new FileRefusal(
      `The sheet "${name}" cannot stand in a file: its name has a character of : \\ / ? * [ ] or an outer '.`,
    );
  if (sheets.filter((sheet) => sheet.name.toLowerCase() === name.toLowerCase()).length > 1)
    throw new FileRefusal(`Two sheets are called "${name}", which a file cannot hold.`);
}

function checkCell(cell: SheetCell, place: string): void {
  if ("formula" in cell) {
    if (toStored(cell.formula).length > LONGEST_FORMULA)
      throw new FileRefusal(
        `The formula in ${place} is longer than the ${LONGEST_FORMULA} characters that a file holds.`,
      );
  } else if (typeof cell.value === "string" && cell.value.length > LONGEST_TEXT)
    throw new FileRefusal(`The text in ${place} is longer than the ${LONGEST_TEXT} characters that a file holds.`);
  if ((cell.note?.length ?? 0) > LONGEST_TEXT)
    throw new FileRefusal(`The note in ${place} is longer than the ${LONGEST_TEXT} characters that a file holds.`);
}
