import type { CompiledFormula as Compiled } from "@odoo/o-spreadsheet";

type Compile = (formula: string, sheetId: string, getters: Getters) => Compiled;
type Getters = Parameters<typeof o_spreadsheet.CompiledFormula.Compile>[2];

type Range = ReturnType<Getters["getRangeFromSheetXC"]>;

/** A formula without its references. */
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

/** A copy has a few thousand. */
const ENOUGH = 30_000;

/** A formula of each frame, as the library took it apart. */
const known = new Map<string, Compiled>();

/**
 * Makes a book of the grid, whose formulas are all read meanwhile. Of those that differ in their references alone, down a column, across,
 * or in a book before, the library takes the first apart, and the others are as its own copying makes them; all of them would be most of what a
 * club copy waits for when it opens. A formula that is not understood here the library reads by itself.
 */
export function withAlikeOnce<Made>(make: () => Made): Made {
  const library = o_spreadsheet.CompiledFormula as { Compile: Compile };
  const { Compile } = library;
  const others = new Set<string>(); // frames that the library reads otherwise
  const ranges = new Map<string, Range>(); // by sheet and reference: nine of ten are there already
  const rangeOf = (reference: string, sheetId: string, getters: Getters): Range => {
    const key = `${sheetId} ${reference}`;
    const range = ranges.get(key) ?? getters.getRangeFromSheetXC(sheetId, reference);
    if (range.invalidSheetName === undefined) ranges.set(key, range); // its sheet may come
    return range;
  };
  library.Compile = (formula, sheetId, getters) => {
    const parts = partsOf(formula);
    if (parts === null || others.has(parts.frame)) return Compile(formula, sheetId, getters);
    const like = known.get(parts.frame) ?? readAs(parts, formula, Compile);
    if (like === null) {
      others.add(parts.frame);
      return Compile(formula, sheetId, getters);
    }
    const dependencies = parts.references.map((reference) => rangeOf(reference, sheetId, getters));
    return o_spreadsheet.CompiledFormula.CopyWithDependencies(like, sheetId, dependencies);
  };
  try {
    return make();
  } finally {
    library.Compile = Compile;
  }
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

/** What the library makes of it; null if it finds other references than these, or no formula at all: of one that it can't read it keeps the text only. */
function readAs({ frame, references }: Parts, formula: string, compile: Compile): Compiled | null {
  const asSpelled = { getRangeFromSheetXC: (_: string, reference: string) => reference };
  const compiled = compile(formula, "", asSpelled as never);
  const found = compiled.rangeDependencies as unknown as readonly string[];
  const isRead =
    !compiled.isBadExpression &&
    found.length === references.length &&
    found.every((reference, index) => reference === references[index]);
  if (!isRead) return null;
  if (known.size >= ENOUGH) known.clear();
  known.set(frame, compiled);
  return compiled;
}
