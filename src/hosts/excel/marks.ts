import { ourNamesOn, type Taken } from "../../sheets/book/parts/taken";
import { keyOfName, type SheetKey, sheetKeys } from "../../sheets/sheetKeys";
import { referenceIn } from "./referenceIn";
import { isOneCell, rectangleText } from "../../sheets/rectangle";
import type { CellName } from "../../sheets/workbook";

export type Marks = Required<Pick<Taken, "ours" | "ourNames">>;

/** A sheet of ours is marked by a property that stays with it when the user gives it another name. */
const MARK = "ductLedgerSheet";

/** What it was called then: whoever duplicates it by hand may have both properties on the duplicate, too, which has another name. */
const CALLED = "ductLedgerSheetCalled";

export function mark(sheet: Excel.Worksheet, name: string, key: SheetKey | undefined): void {
  if (key === undefined) return;
  sheet.customProperties.add(MARK, key);
  sheet.customProperties.add(CALLED, name);
}

/** Which sheets of the workbook are a budget's own, by their names. A file that we wrote says it by hidden names. */
export async function readKeys(
  context: Excel.RequestContext,
  sheets: readonly Excel.Worksheet[],
  names: readonly Excel.NamedItem[],
): Promise<ReadonlyMap<string, SheetKey>> {
  const marks = sheets.map((sheet) => ({
    sheet,
    property: sheet.customProperties.getItemOrNullObject(MARK),
    called: sheet.customProperties.getItemOrNullObject(CALLED),
  }));
  for (const { property, called } of marks) [property, called].forEach((one) => one.load("value"));
  await context.sync();
  const keys = new Map<string, SheetKey>();
  for (const { name, formula } of names) {
    const [key, target] = [keyOfName(name), referenceIn(String(formula))];
    if (key !== null && target !== null) keys.set(target.sheet, key);
  }
  const originals = new Set(marks.flatMap(({ sheet, property, called }) => (isCalled(sheet, called) ? [madeAs(property, called)] : []))); // prettier-ignore
  for (const { sheet, property, called } of marks) {
    const key = property.isNullObject ? undefined : sheetKeys.find((each) => each === property.value);
    const isDuplicate = !isCalled(sheet, called) && originals.has(madeAs(property, called));
    if (key !== undefined && !isDuplicate) keys.set(sheet.name, key);
  }
  return keys;
}

const isCalled = ({ name }: Excel.Worksheet, called: Excel.WorksheetCustomProperty): boolean =>
  !called.isNullObject && called.value === name;

const madeAs = (...properties: readonly Excel.WorksheetCustomProperty[]): string =>
  JSON.stringify(properties.map((property) => (property.isNullObject ? null : property.value)));

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
  const target = referenceIn(String(formula));
  return target !== null && isOneCell(target) ? [{ name, sheet: target.sheet, at: rectangleText(target) }] : [];
}
