import { ourNamesOn, type Taken } from "../../sheets/book/parts/taken";
import { keyOfName, type SheetKey, sheetKeys } from "../../sheets/sheetKeys";
import { readReference } from "../../sheets/rangeRef";
import { isOneCell, rectangleText } from "../../sheets/rectangle";
import type { CellName } from "../../sheets/workbook";

export type Marks = Required<Pick<Taken, "ours" | "ourNames">>;

/** A sheet of ours is marked by a property that stays with it when the user gives it another name. */
const MARK = "ductLedgerSheet";

export function mark(sheet: Excel.Worksheet, key: SheetKey | undefined): void {
  if (key !== undefined) sheet.customProperties.add(MARK, key);
}

/** Which sheets of the workbook are a budget's own, by their names. A file that we wrote says it by hidden names. */
export async function readKeys(
  context: Excel.RequestContext,
  sheets: readonly Excel.Worksheet[],
  names: readonly Excel.NamedItem[],
): Promise<ReadonlyMap<string, SheetKey>> {
  const marks = sheets.map((sheet) => ({ sheet, property: sheet.customProperties.getItemOrNullObject(MARK) }));
  for (const { property } of marks) property.load("value");
  await context.sync();
  const keys = new Map<string, SheetKey>();
  for (const { name, formula } of names) {
    const [key, target] = [keyOfName(name), readReference(String(formula))];
    if (key !== null && target !== null) keys.set(target.sheet, key);
  }
  for (const { sheet, property } of marks) {
    const key = property.isNullObject ? undefined : sheetKeys.find((each) => each === property.value);
    if (key !== undefined) keys.set(sheet.name, key);
  }
  return keys;
}

/** Which sheets are ours, and what the cells of Start are called; of two of a kind the later one counts. */
export async function readMarks(
  context: Excel.RequestContext,
  sheets: readonly Excel.Worksheet[],
  names: readonly Excel.NamedItem[],
): Promise<Marks> {
  const keys = await readKeys(context, sheets, names);
  const ours: Partial<Record<SheetKey, string>> = {};
  for (const { name } of sheets) {
    const key = keys.get(name);
    if (key !== undefined) ours[key] = name;
  }
  return { ours, ourNames: ours.start === undefined ? {} : ourNamesOn(ours.start, names.flatMap(cellName)) };
}

/** A name of one cell. */
export function cellName({ name, formula }: Pick<Excel.NamedItem, "name" | "formula">): CellName[] {
  const target = readReference(String(formula));
  return target !== null && isOneCell(target) ? [{ name, sheet: target.sheet, at: rectangleText(target) }] : [];
}
