import type { Calculated, ShownCell } from "../../sheets/calculated";
import type { CellName, Sheet } from "../../sheets/workbook";
import { fitted } from "../fit/fitted";
import { FileRefusal } from "./fileRefusal";
import { isBudget } from "./isBudget";
import { keyOfName, type SheetKey } from "../../sheets/sheetKeys";
import { isListsSheet, type Visibility } from "../../sheets/longLists";
import { readReference } from "../../sheets/rangeRef";
import { addressesIn, cellsIn, rectangleText } from "../../sheets/rectangle";
import { counter } from "./read/cells";
import { openPackage, type Package, relationId } from "./read/package";
import type { TextsIn } from "./read/rules";
import { sharedStrings } from "./read/sharedStrings";
import { type ReadSheet, readSheet } from "./read/sheet";
import { stylesOf } from "./read/styles";
import { child, childrenOf, down, numberOf, type XmlNode } from "./read/xml";
import { fromFileText } from "./xlsxText";

/**
 * Reads an .xlsx file, one of ours or one that Excel or LibreOffice saved, into a description with what its cells show.
 * Formulas come back as DUCT.NAME. What a description cannot say stays behind: docs/workbook-file.md lists it.
 *
 * @throws FileRefusal with one sentence, where the file is no workbook, is damaged, or is larger than any budget
 */
export async function readBook(bytes: Uint8Array): Promise<Calculated> {
  try {
    return bookIn(openPackage(bytes));
  } catch (error) {
    if (error instanceof FileRefusal) throw error;
    throw new FileRefusal("This file could not be read: it is damaged, or says something in a way not known here.", {
      cause: error,
    });
  }
}

/** A book to open, and the cells that were left out of it. */
export interface OpenedBudget extends Calculated {
  readonly leftOut: readonly string[];
}

/** Reads a file that is to be opened as a budget, as far as a sheet can hold it, and refuses one that has nothing of ours. */
export async function openBudget(bytes: Uint8Array): Promise<OpenedBudget> {
  const book = await readBook(bytes);
  if (isBudget(book)) return { ...fitted(book.workbook), shown: book.shown };
  throw new FileRefusal(
    "This file holds no Duct Ledger sheet: no formula calls DUCT, and no table of runs stands in it.",
  );
}

function bookIn(file: Package): Calculated {
  const root = file.xml(file.workbook);
  const [texts, styles, count] = [sharedStrings(file), stylesOf(file), counter()];
  const parts = new Map(file.relations(file.workbook).map((one) => [one.id, one]));
  const entries = childrenOf(child(root, "sheets"), "sheet");
  const printed = printNames(root);
  const read = entries.flatMap((entry, index) => {
    const relation = parts.get(relationId(entry) ?? "");
    if (relation?.kind !== "worksheet") return []; // a sheet that is one chart, or macros
    const name = fromFileText(entry.attributes.name ?? "");
    const sheet = readSheet(file, relation.part, name, texts, styles, count);
    return [{ entry, sheet, printed: printed.get(index) ?? new Map<string, string>() }];
  });
  const textsIn = textsOf(read.map(({ sheet }) => sheet));
  const keys = keysOf(root);
  const sheets = read.map(({ entry, sheet, printed }) => ({
    visibility: VISIBILITIES[entry.attributes.state ?? ""] ?? ("visible" as const),
    shown: sheet.shown,
    sheet: { ...keyOf(sheet.name, keys), ...sheet.sheet(textsIn, printed) },
  }));
  const all = {
    name: titleOf(file) ?? "Workbook",
    sheets: sheets.map(({ sheet }) => sheet),
    names: namesOf(root, new Set(sheets.map(({ sheet }) => sheet.name))),
  };
  const kept = sheets.filter(({ sheet, visibility }) => !isListsSheet(sheet, visibility, all));
  if (kept.length === 0) throw new FileRefusal("This file has no sheet of cells.");
  return {
    workbook: { ...all, sheets: kept.map(({ sheet }) => sheet) },
    shown: new Map(kept.map(({ sheet, shown }) => [sheet.name, shown])),
  };
}

const VISIBILITIES: Readonly<Record<string, Visibility>> = { hidden: "hidden", veryHidden: "very hidden" };

const MOST_CHOICES = 1e6; // cells looked at for all lists together

function textsOf(sheets: readonly ReadSheet[]): TextsIn {
  const shown = new Map(sheets.map((sheet) => [sheet.name.toLowerCase(), sheet.shown]));
  let left = MOST_CHOICES;
  return (range) => {
    const cells: ReadonlyMap<string, ShownCell> | undefined = shown.get(range.sheet.toLowerCase());
    const size = cellsIn(range);
    if (cells === undefined || size > left) return [];
    left -= size;
    return addressesIn(range).flatMap((at) => {
      const value = cells.get(at)?.value;
      return value != null && typeof value !== "object" && value !== "" ? [String(value)] : [];
    });
  };
}

const definedNames = (root: XmlNode): readonly XmlNode[] => childrenOf(child(root, "definedNames"), "definedName");

/** Names that belong to one sheet, by its number. */
function printNames(root: XmlNode): ReadonlyMap<number, ReadonlyMap<string, string>> {
  const bySheet = new Map<number, Map<string, string>>();
  for (const { attributes, text } of definedNames(root)) {
    const sheet = numberOf(attributes.localSheetId) ?? -1;
    const names = bySheet.get(sheet) ?? new Map<string, string>();
    bySheet.set(sheet, names.set(attributes.name ?? "", text));
  }
  return bySheet;
}

/** Which sheets are a budget's own, by hidden names. */
const keysOf = (root: XmlNode): ReadonlyMap<string, SheetKey> =>
  new Map(
    definedNames(root).flatMap(({ attributes: { name = "" }, text }): [string, SheetKey][] => {
      const [key, reference] = [keyOfName(name), readReference(text)];
      return key === null || reference === null ? [] : [[reference.sheet, key]];
    }),
  );

function keyOf(sheet: string, keys: ReadonlyMap<string, SheetKey>): Pick<Sheet, "key"> {
  const key = keys.get(sheet);
  return key === undefined ? {} : { key };
}

/** Names of cells for the whole workbook; a name of several cells keeps them all, written as a range. */
const namesOf = (root: XmlNode, sheets: ReadonlySet<string>): CellName[] =>
  definedNames(root).flatMap(({ attributes: { name, localSheetId }, text }) => {
    const reference = readReference(text);
    if (name === undefined || localSheetId !== undefined || reference === null || keyOfName(name) !== null) return [];
    const { sheet } = reference;
    return sheets.has(sheet) ? [{ name: fromFileText(name), sheet, at: rectangleText(reference) }] : [];
  });

function titleOf(file: Package): string | undefined {
  const part = file.relations("").find(({ kind }) => kind === "core-properties")?.part;
  const title = part === undefined ? undefined : down(file.xml(part), "title")?.text;
  return title === undefined || title === "" ? undefined : fromFileText(title);
}
