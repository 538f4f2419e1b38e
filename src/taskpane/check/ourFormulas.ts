import { formulaTree, type OurCall, type Piece, UnreadableFormula } from "../../share/formula/tree";
import { callsOurs } from "../../sheets/ourCalls";
import type { Sheet } from "../../sheets/workbook";

/** A formula of a sheet that calls functions of ours. */
export interface OurFormula {
  readonly at: string;
  readonly pieces: readonly Piece[]; // none where it cannot be read
  readonly calls: readonly OurCall[]; // also those inside other calls
}

/** Those of a sheet, each read once for all who look at it; a host hands over the very sheet of last time where nothing changed. */
export function ourFormulasOn(sheet: Sheet): readonly OurFormula[] {
  const known = read.get(sheet);
  if (known !== undefined) return known;
  const fresh = sheet.cells.flatMap((cell): OurFormula[] => {
    if (!("formula" in cell) || !callsOurs(cell.formula)) return [];
    const pieces = piecesOf(cell.formula);
    return [{ at: cell.at, pieces, calls: callsAmong(pieces) }];
  });
  read.set(sheet, fresh);
  return fresh;
}

const read = new WeakMap<Sheet, readonly OurFormula[]>();

function piecesOf(formula: string): readonly Piece[] {
  try {
    return formulaTree(formula);
  } catch (error) {
    if (error instanceof UnreadableFormula) return [];
    throw error;
  }
}

const callsAmong = (pieces: readonly Piece[]): OurCall[] =>
  pieces.flatMap((piece) =>
    piece.type === "our call" ? [piece as OurCall, ...(piece as OurCall).args.flatMap(callsAmong)] : [],
  );
