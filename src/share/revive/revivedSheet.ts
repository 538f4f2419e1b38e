import type { ShownCell } from "../../sheets/calculated";
import { CALIBRATED, ENTERED } from "../../sheets/book/layout";
import { lookOfCell } from "../../sheets/lookOfCell";
import type { ChoiceList, Sheet, SheetCell } from "../../sheets/workbook";
import { OLD_FLAG } from "../fixed/fixedCall";
import { noteBefore, unmarked } from "../marks";
import { withoutStanding } from "../standing";
import { OTHER_WORD, withoutWordsOfChoice } from "../wordsOfChoice";
import { sheetsIn } from "./sheetsIn";
import type { Recalled } from "./record";

interface Surroundings {
  readonly gone: ReadonlySet<string>; // names, in small letters, of the copy's own sheets
  readonly shown: ReadonlyMap<string, ShownCell>;
}

/** A sheet of the copy as the live budget has it. */
export function revivedSheet(sheet: Sheet, recalled: readonly Recalled[], { gone, shown }: Surroundings): Sheet {
  const left = new Set(recalled.flatMap(({ cells, why }) => (why === null ? [] : cells)));
  const brought = recalled.filter(({ why }) => why === null);
  const formulas = new Map(brought.flatMap(({ at, formula }) => (formula === null ? [] : [[at, formula] as const])));
  const filled = new Set(brought.flatMap(({ cells }) => cells));
  const said = recalled.filter((one) => one.said !== undefined);
  const cells = sheet.cells.map((cell): SheetCell => {
    if (!filled.has(cell.at))
      return left.has(cell.at) ? asItIs(cell, gone, shown) : withoutOtherWord(asBefore(withoutFixedNote(cell), said));
    const style = unmarked(cell.style);
    const look = lookOfCell({ at: cell.at, format: cell.format, note: noteBefore(cell.note), style });
    const formula = formulas.get(cell.at);
    return formula === undefined ? { ...look, value: null } : { ...look, formula };
  });
  const listed = new Set(cells.map(({ at }) => at));
  for (const [at, formula] of formulas) if (!listed.has(at)) cells.push({ at, formula });
  const flags = sheet.flags.filter(({ containsText }) => containsText !== OLD_FLAG && containsText !== OTHER_WORD);
  const unmarkedNow = sheet.oldMarks === undefined ? {} : { oldMarks: [] };
  const notes = new Map(said.flatMap(({ said: words }) => (words?.part === "note" ? [[words.became, words.was]] : [])));
  const hints = sheet.hints?.map((hint) => ({ ...hint, text: notes.get(hint.text) ?? hint.text }));
  return {
    ...sheet,
    cells,
    flags,
    lists: sheet.lists.map(bothUnits).map(bothSystems),
    ...(hints === undefined ? {} : { hints }),
    ...unmarkedNow,
  };
}

/** A cell with the text and the note that it had before the copy said otherwise; one that a member has changed stays. */
function asBefore(cell: SheetCell, said: readonly Recalled[]): SheetCell {
  const here = said.flatMap(({ at, said: words }) => (at === cell.at && words !== undefined ? [words] : []));
  return here.reduce<SheetCell>((before, { part, was, became }) => {
    if (part === "note") return before.note === became ? { ...before, note: was } : before;
    if (part === "name") return before.style === "label" ? { ...before, style: "input" } : before;
    return part === "text" && "value" in before && before.value === became ? { ...before, value: was } : before;
  }, cell);
}

/** A cell whose formula is not made live; one that computes from the copy's own sheets, which go, keeps what it shows. */
function asItIs(cell: SheetCell, gone: ReadonlySet<string>, shown: ReadonlyMap<string, ShownCell>): SheetCell {
  if (!("formula" in cell) || !sheetsIn(cell.formula).some((sheet) => gone.has(sheet.toLowerCase()))) return cell;
  const value = shown.get(cell.at)?.value ?? null;
  const look = lookOfCell(cell);
  return value !== null && typeof value === "object" ? { ...look, formula: "=NA()" } : { ...look, value };
}

/** The copy's units cell offers its own units only. */
const bothUnits = (list: ChoiceList): ChoiceList =>
  list.strict && list.choices.length === 1 && (list.choices[0] === "IP" || list.choices[0] === "SI")
    ? { ...list, choices: ["IP", "SI"] }
    : list;

/** Likewise its cell of the choice between what was entered and what was calibrated. */
const bothSystems = (list: ChoiceList): ChoiceList =>
  list.strict && list.choices.length === 1 && (list.choices[0] === ENTERED || list.choices[0] === CALIBRATED)
    ? { ...list, choices: [ENTERED, CALIBRATED] }
    : list;

/** A formula without what the copy asks beyond the book, and says at another word in the cell of its choice. */
const withoutOtherWord = (cell: SheetCell): SheetCell =>
  "formula" in cell ? { ...cell, formula: withoutStanding(withoutWordsOfChoice(cell.formula)) } : cell;

/** A cell without what the copy said in its note. */
function withoutFixedNote(cell: SheetCell): SheetCell {
  const note = noteBefore(cell.note);
  if (note === cell.note) return cell;
  const look = lookOfCell({ ...cell, note });
  return "formula" in cell ? { ...look, formula: cell.formula } : { ...look, value: cell.value };
}
