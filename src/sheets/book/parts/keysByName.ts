import { isFreeName } from "../../freeName";
import { callsOurs } from "../../ourCalls";
import { type SheetKey, sheetKeys, usualNames } from "../../sheetKeys";
import { sheetPrefix } from "../../sheetPrefix";
import type { Sheet, Workbook } from "../../workbook";
import { namedCells } from "../start/startLayout";

type Keyed = Partial<Record<SheetKey, string>>;

/**
 * The sheets of a budget that say no key: version 1.0.0 kept none, and a program may drop the hidden names of a file. Start is
 * the one on which a cell called units is where ours is; the others are called as ours are and ask for our units, for a
 * function of ours, or for another of those sheets.
 *
 * @param keyed the sheets that say their key
 */
export function keysByName({ sheets, names }: Workbook, keyed: Keyed): Keyed {
  const units = [...names]
    .reverse()
    .find(({ name, at }) => isFreeName(name, "units", "_") && at === namedCells.units.replaceAll("$", ""));
  const start = keyed.start ?? units?.sheet;
  if (start === undefined) return {};
  const found: Keyed = { start };
  const budgets = sheets.filter(({ name }) => isFreeName(name, usualNames.budget)).map(({ name }) => name);
  const asked = [start, ...budgets].map(sheetPrefix);
  for (const sheet of sheets) {
    const key = sheetKeys.find((each) => each !== "start" && isFreeName(sheet.name, usualNames[each]));
    if (sheet.key === undefined && key !== undefined && asksFor(sheet, asked, units?.name)) found[key] = sheet.name;
  }
  return found;
}

const asksFor = ({ cells }: Sheet, prefixes: readonly string[], units: string | undefined): boolean =>
  cells.some(
    (cell) =>
      "formula" in cell &&
      (callsOurs(cell.formula) ||
        prefixes.some((prefix) => cell.formula.includes(prefix)) ||
        (units !== undefined && wordsOf(cell.formula).includes(units.toLowerCase()))),
  );

const wordsOf = (formula: string): string[] => formula.toLowerCase().split(/[^\p{L}\p{N}_.]+/u);
