import type { UnitSystem } from "../reference/quantities";
import type { Calculated, Shown, ShownCell } from "../sheets/calculated";
import { freeName } from "../sheets/freeName";
import { ourCallsIn } from "../sheets/ourCalls";
import { paperOf } from "../sheets/paper";
import type { ChoiceList, Sheet, SheetCell, Workbook } from "../sheets/workbook";
import { aboutCopy } from "./aboutCopy";
import { type Chosen, withChosenSystem, withFixedChoice } from "./chosenSystem";
import { copiedSheet, replacementsOf } from "./copiedSheet";
import { countOfFormulas } from "./countOfFormulas";
import type { ClubCopy, CopyOrder, FixedCell } from "./copy";
import { addChecks } from "./fixed/addChecks";
import { asWritten } from "./fixed/asWritten";
import { cellIndex } from "./fixed/cellIndex";
import { comparesSomething } from "./fixed/fixedCall";
import { fixedSheet } from "./fixed/fixedSheet";
import { restOn } from "./fixed/restOn";
import { withFixedNote } from "./marks";
import { type Original, originalsSheet } from "./originals";
import { withStanding } from "./standing";
import { sourcesOfCopy } from "./sourcesOfCopy";
import { copyTables } from "./translate/lookupTables";
import { nameGone, withNamesChecked } from "./translate/lookupNames";
import { usedEntries } from "./translate/usedEntries";
import { newWorkings } from "./translate/workings";
import { type TranslatedSheets, translateSheets } from "./translateSheets";
import { withUnitsWords } from "./unitsWords";
import { valuesCopy } from "./valuesCopy";
import { keptUnits } from "./words/keptUnits";
import { withWordsOfChoice } from "./wordsOfChoice";
import { makerOf } from "./words/maker";
import { triesIn } from "./words/tries";
import { wordedSheets } from "./words/wordedSheets";
import type { CopyFacts } from "./words/wordsInCopy";
import { itemAt } from "../reference/itemAt";

/**
 * A copy of a book for people without the functions. Every sheet is there, with its looks, lists, flags, charts and names; each of
 * our formulas is plain formulas, or the values it showed with a word on whether they are old. The book itself is not changed.
 */
export function clubCopy(given: Calculated, order: CopyOrder): ClubCopy {
  const chosen = withChosenSystem(given);
  const { book } = chosen;
  const { workbook } = book;
  const taken = workbook.sheets.map(({ name }) => name);
  const about = freeName("About this copy", taken);
  const units = unitsOfBook(book);
  if (order.kind === "values") return valuesCopy(given, order, about, units);
  const names = {
    workings: freeName("Workings", [...taken, about]),
    lookups: freeName("Lookups", [...taken, about]),
    fixed: freeName("Fixed numbers", [...taken, about]),
    originals: freeName("Original formulas", [...taken, about]),
  };
  const copied = copyTables(units, usedEntries(book), names.lookups);
  const workings = newWorkings(names.workings);
  const translated = translateSheets(book, copied.tables, workings);
  const lookups = withNamesChecked(copied, workings);
  const written = asWritten(book, translated.live);
  const index = cellIndex(written);
  const checks = fixedSheet(translated.fixed, written, index, names.fixed, order.date, lookups, nameGone(workings));
  const replacements = replacementsOf(translated, book, names.fixed);
  const plain = workbook.sheets.map((sheet) => copiedSheet(sheet, replacements.get(sheet.name) ?? new Map()));
  const replaced = withStanding(plain, translated, workings);
  const resting = restOn(book, translated.fixed.filter(comparesSomething), index);
  const facts = copyFacts(translated, units, names);
  const { sheets: worded, said } = wordedSheets(replaced, facts);
  const { sheets: checked, added } = addChecks(worded, translated.fixed, resting, checks, book, index, order.date);
  const { sheets: told, added: addedForUnits } = withUnitsWords(checked, translated.units, book, index);
  const sheets = told.map((sheet) =>
    withWordsOfChoice(withFixedChoice(withFixedUnits(sheet, book, units), chosen), chosen),
  );
  const fixed = translated.fixed.map(({ sheet, at, function: name, why }): FixedCell => ({
    sheet,
    at,
    function: name,
    why,
  }));
  const untranslated = translated.untranslated.map(({ sheet, at, function: name, why }): FixedCell => ({
    sheet,
    at,
    function: name,
    why,
  }));
  const counts = countOfFormulas(replaced, translated, resting, book.shown);
  const aboutSheet = aboutCopy({
    name: about,
    order,
    title: workbook.name,
    maker: makerOf(workbook),
    tries: triesIn(workbook, facts, names.lookups),
    units,
    counts,
    fixed,
    untranslated,
    sources: sourcesOfCopy(book, [lookups]),
    sheets: names,
  });
  const ours = [about, names.lookups, names.workings, names.fixed, names.originals];
  const kept = keptUnits(workbook, units, workings.sheet);
  const recorded = [...originalsOf(translated, chosen), ...added, ...addedForUnits, ...said, ...kept.said];
  const originals = originalsSheet(recorded, ours, names.originals);
  const copy: Workbook = {
    ...workbook,
    names: kept.names,
    sheets: [aboutSheet, ...sheets, ...[lookups, kept.workings, checks.sheet, originals].map(headPrinted(units))],
  };
  return {
    book: { workbook: copy, shown: shownInCopy(book, translated) },
    live: counts.reduce((sum, { live }) => sum + live, 0),
    fixed,
    untranslated,
  };
}

/** What the formulas need fills a hundred and fifty pages that nobody reads, so of these sheets only title and note are printed. */
const headPrinted =
  (units: UnitSystem) =>
  (sheet: Sheet): Sheet => ({ ...sheet, print: { paper: paperOf(units), landscape: true, area: "A1:D2" } });

/** What the texts of a copy go by. */
function copyFacts(
  { live, fixed, untranslated }: TranslatedSheets,
  units: UnitSystem,
  sheets: CopyFacts["sheets"],
): CopyFacts {
  const kept = [...fixed, ...untranslated];
  return {
    units,
    sheets,
    isLive: (call) => live.some(({ formula }) => formula.includes(call)),
    allLive: (name) => !kept.some(({ formula }) => ourCallsIn(formula).includes(name)),
  };
}

/** The unit system that the cell called units shows; I-P where there is none. */
function unitsOfBook({ workbook, shown }: Calculated): UnitSystem {
  const named = workbook.names.find(({ name }) => name.toLowerCase() === "units");
  const value = named === undefined ? null : shown.get(named.sheet)?.get(named.at)?.value;
  return typeof value === "string" && value.trim().toUpperCase() === "SI" ? "SI" : "IP";
}

/** A cell that is no input in a copy; where the live budget comes back it is one again. */
const asLabel = (cell: SheetCell): SheetCell => (cell.style === "input" ? { ...cell, style: "label" } : cell);

/** The units cell offers only the units that the copy was made in, and says so. */
function withFixedUnits(sheet: Sheet, { workbook }: Calculated, units: UnitSystem): Sheet {
  const named = workbook.names.find(({ name }) => name.toLowerCase() === "units");
  if (named?.sheet !== sheet.name) return sheet;
  const only: ChoiceList = { range: named.at, choices: [units], strict: true };
  const sentence = `the formulas were made for ${units}. For other units make another copy.`;
  return {
    ...sheet,
    lists: [...sheet.lists.filter(({ range }) => range !== named.at), only],
    cells: sheet.cells.map((cell) => (cell.at === named.at ? withFixedNote(asLabel(cell), sentence) : cell)),
  };
}

const originalsOf = ({ live, fixed, untranslated }: TranslatedSheets, { was }: Chosen): Original[] =>
  [
    ...live.map(({ sheet, at, formula, cells }) => ({
      sheet,
      at,
      formula,
      written: { rows: cells.length, columns: itemAt(cells, 0).length },
    })),
    ...[...fixed, ...untranslated].map(({ sheet, at, formula, extent }) => ({ sheet, at, formula, written: extent })),
  ].map((one) => ({ ...one, formula: was(one.sheet, one.at) ?? one.formula }));

/** What the cells show, as far as it is known: our formulas spill no more, and rows that they did not fill before are left out. */
function shownInCopy({ shown }: Calculated, { live, fixed, untranslated }: TranslatedSheets): Shown {
  const anchors = new Set([...live, ...fixed, ...untranslated].map(({ sheet, at }) => `${sheet}!${at}`));
  const copied = new Map<string, ReadonlyMap<string, ShownCell>>();
  for (const [sheet, cells] of shown) {
    const there = new Map<string, ShownCell>();
    for (const [at, cell] of cells) there.set(at, anchors.has(`${sheet}!${at}`) ? { value: cell.value } : cell);
    copied.set(sheet, there);
  }
  return copied;
}
