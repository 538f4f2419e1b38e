import { plain } from "../../../core/naming/findNamed";
import type { OurCall, Piece } from "../../../share/formula/tree";
import { cellAddress } from "../../../sheets/address";
import type { Calculated } from "../../../sheets/calculated";
import { isOneCell } from "../../../sheets/rectangle";
import { type CheckRule, type Finding, practice } from "../finding";
import { rangeOfArgument } from "../named/callsIn";
import { unitsOfBook } from "../namedCells";
import { type OurFormula, ourFormulasOn } from "../ourFormulas";

/** Functions that take no units: they have none, or name them in an argument of their own. */
export const WITHOUT_UNITS: ReadonlySet<string> = new Set([
  ...["CONVERTUNIT", "FANLAW", "LEAKAT", "ABOUT", "CAUTIONS"],
  ...["REFERENCE", "DEVICELOSS", "CORRECTEDREADING", "DIFFERENCE"],
]);

/** In a book whose cell named units says SI: calls that leave the units out, and so read and give inches and cfm. Once for each sheet. */
export const unitsLeftOut: CheckRule = ({ book, sheets }) => {
  if (unitsOfBook(book) !== "SI") return [];
  const looked = new Set(sheets.map(({ sheet }) => sheet));
  return book.workbook.sheets.flatMap((sheet): Finding[] => {
    const at = (formula: OurFormula) =>
      formula.calls
        .filter(({ name, args }) => !WITHOUT_UNITS.has(name) && !args.some((one) => mayBeUnits(one, sheet.name, book)))
        .slice(0, 1)
        .map(({ name }) => ({ at: formula.at, name }));
    const [first, ...more] = looked.has(sheet.name) ? ourFormulasOn(sheet).flatMap(at) : [];
    if (first === undefined) return [];
    const others =
      more.length === 0 ? "" : `; so ${more.length === 1 ? "does 1 cell" : `do ${more.length} cells`} more`;
    return [
      {
        rule: "Units left out",
        what: `${first.at} calls ${first.name} without units, so in I-P, and this book is in SI${others}.`,
        why: 'Left out, a function reads inches, feet, cfm, fpm and in.w.g., and gives such numbers. Let its last argument be units, the cell that the book\'s own sheets go by; where you mean I-P, let it be "IP".',
        source: practice,
        sheet: sheet.name,
        at: first.at,
      },
    ];
  });
};

/** The word or a cell with it, also among others: what is worked out in the formula may give it. */
const mayBeUnits = (pieces: readonly Piece[], sheet: string, book: Calculated): boolean =>
  pieces.some((piece) => {
    if (piece.type === "our call") return false;
    const { type, value } = piece as Exclude<Piece, OurCall>;
    if (type === "string") return isUnits(value.slice(1, -1));
    const range = rangeOfArgument([piece], sheet, book);
    if (range === null || !isOneCell(range)) return false;
    return isUnits(book.shown.get(range.sheet)?.get(cellAddress(range.left, range.top))?.value);
  });

const isUnits = (value: unknown): boolean => typeof value === "string" && ["si", "ip"].includes(plain(value));
