import { placeOf } from "../../sheets/address";

/** The references of a formula that is otherwise the one above it, in the words of the grid's own files. */
interface OtherReferences {
  readonly R: readonly string[];
}

/** A formula taken apart. */
interface Parts {
  readonly frame: string; // all but its references, and which of them are ranges
  readonly references: readonly string[];
}

/** A text, or a word as the library ends one, with what makes a range or a function of it. */
const PIECES = /"[^"]*"|[\p{L}\p{N}_.!$]+(?::[A-Z$\d]+(?![\p{L}\p{N}_.!$]))?\(?/gu;

/** A cell or a range of cells, on another sheet or not. */
const REFERENCE = /^(?:[\p{L}_][\p{L}\p{N}_.]*!)?\$?[A-Z]{1,3}\$?\d{1,7}(:\$?[A-Z]{1,3}\$?\d{1,7})?$/u;

/** What makes another reference of what stands beside it: whole columns, quoted sheets, spilled cells. "\" keeps the library in a text. */
const OTHERS = /[:'#{[]/;

/**
 * The contents of a sheet's cells with each formula that is filled down a column written once, as the grid's own files have it. The
 * library then takes it apart once and not in each row, which is most of what a club copy waits for when it opens. Each reference
 * is spelled out, as it stands in its formula, so that none is shifted; a formula that is not understood here goes as it is.
 */
export function filledDown(contents: Readonly<Record<string, string>>): Record<string, string | OtherReferences> {
  const all: Record<string, string | OtherReferences> = {};
  const known = new Map<string, boolean>(); // by frame
  const isReadAlike = (formula: string, parts: Parts): boolean => {
    const is = known.get(parts.frame) ?? isRead(formula, parts);
    known.set(parts.frame, is);
    return is;
  };
  for (const column of columnsOf(contents)) {
    let above: Parts | null = null;
    for (const at of column) {
      const formula = contents[at]!;
      const parts = partsOf(formula);
      const isFilled = parts !== null && above?.frame === parts.frame && isReadAlike(formula, parts);
      all[at] = isFilled ? { R: parts.references } : formula;
      above = parts;
    }
  }
  return all;
}

/** The addresses of each column, from above. */
function columnsOf(contents: object): Iterable<readonly string[]> {
  const columns = new Map<number, { row: number; at: string }[]>();
  for (const at of Object.keys(contents)) {
    const { column, row } = placeOf(at);
    const list = columns.get(column) ?? [];
    columns.set(column, list);
    list.push({ row, at });
  }
  return [...columns.values()].map((cells) => cells.sort((one, other) => one.row - other.row).map(({ at }) => at));
}

/** Null where a formula has no reference, or something beside its references that is not understood here. */
function partsOf(formula: string): Parts | null {
  if (!formula.startsWith("=") || formula.includes("\\")) return null;
  const references: string[] = [];
  const frame = formula.replace(PIECES, (piece) => {
    const found = REFERENCE.exec(piece);
    if (found === null) return piece;
    references.push(piece);
    return found[1] === undefined ? "\0" : "\0\0";
  });
  return references.length === 0 || OTHERS.test(frame.replace(/"[^"]*"/g, "")) ? null : { frame, references };
}

/** Whether the library finds these references in a formula, and a formula at all: of one that it can't read it keeps the text only. */
function isRead(formula: string, { references }: Parts): boolean {
  const asSpelled = { getRangeFromSheetXC: (_: string, reference: string) => reference };
  const compiled = o_spreadsheet.CompiledFormula.Compile(formula, "", asSpelled as never);
  const found = compiled.rangeDependencies as unknown as readonly string[];
  return (
    !compiled.isBadExpression &&
    found.length === references.length &&
    found.every((reference, index) => reference === references[index])
  );
}
