import { cellNames, type SheetKey, sheetKeys, usualNames } from "../../sheets/book/frame";
import type { Taken } from "../../sheets/book/parts/plan";
import { namedCells } from "../../sheets/book/start/startLayout";
import { readReference } from "../../sheets/rangeRef";

export type Marks = Required<Pick<Taken, "ours" | "ourNames">>;

/** A sheet of ours is marked by a property that stays with it when the user gives it another name. */
const MARK = "ductLedgerSheet";

/** Marks a new sheet, whose name is still the usual one or that with a number behind it. */
export function mark(sheet: Excel.Worksheet, name: string): void {
  const key = sheetKeys.find((each) => new RegExp(`^${usualNames[each]}( \\d+)?$`).test(name));
  if (key !== undefined) sheet.customProperties.add(MARK, key);
}

/** Which sheets are ours, and what the cells of Start are called; of two of a kind the later one counts. */
export async function readMarks(
  context: Excel.RequestContext,
  sheets: readonly Excel.Worksheet[],
  names: readonly Excel.NamedItem[],
): Promise<Marks> {
  const marks = sheets.map((sheet) => sheet.customProperties.getItemOrNullObject(MARK));
  for (const property of marks) property.load("value");
  await context.sync();
  const ours: Partial<Record<SheetKey, string>> = {};
  marks.forEach((property, index) => {
    const key = property.isNullObject ? undefined : sheetKeys.find((each) => each === property.value);
    if (key !== undefined) ours[key] = sheets[index]!.name;
  });
  return { ours, ourNames: ours.start === undefined ? {} : namesOn(ours.start, names) };
}

function namesOn(start: string, names: readonly Excel.NamedItem[]): Marks["ourNames"] {
  const found: Partial<Record<(typeof cellNames)[number], string>> = {};
  for (const { name, formula } of names) {
    const target = readReference(String(formula));
    if (target?.sheet !== start) continue;
    const at = String(formula).split("!").at(-1);
    const key = cellNames.find((each) => namedCells[each] === at);
    if (key !== undefined) found[key] = name;
  }
  return found;
}
