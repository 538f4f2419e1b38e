import { type Token, tokenize } from "@borgar/fx";
import { ourName } from "../../sheets/ourCalls";
import { itemAt } from "../../reference/itemAt";

/** A formula as its tokens, with every call of one of our functions gathered into one piece. */
export type Piece = Token | OurCall;

export interface OurCall {
  readonly type: "our call";
  readonly name: string; // AREA
  readonly args: readonly (readonly Piece[])[];
}

/** A formula that cannot be read: brackets that do not close. */
export class UnreadableFormula extends Error {
  constructor(message: string) {
    super(message);
    this.name = "UnreadableFormula";
  }
}

/** The pieces of a formula that begins with "=". */
export function formulaTree(formula: string): readonly Piece[] {
  const tokens = tokenize(formula);
  const { pieces, end } = readUntilClose(tokens, 0, 0);
  if (end < tokens.length) throw new UnreadableFormula("a bracket closes that was never opened");
  return pieces;
}

/** The name of our function that is called at this token, or null. A blank may stand before the bracket. */
function nameAt(tokens: readonly Token[], at: number): string | null {
  const token = itemAt(tokens, at);
  if (token.type !== "func" && token.type !== "range_named") return null;
  return tokens[bracketAfter(tokens, at)]?.value === "(" ? ourName(token.value) : null;
}

const bracketAfter = (tokens: readonly Token[], at: number): number =>
  tokens[at + 1]?.type === "whitespace" ? at + 2 : at + 1;

/** Pieces up to the bracket that closes this level, or to the end of the formula. */
function readUntilClose(tokens: readonly Token[], from: number, depth: number): { pieces: Piece[]; end: number } {
  const pieces: Piece[] = [];
  let open = 0;
  let at = from;
  while (at < tokens.length) {
    const token = itemAt(tokens, at);
    const name = nameAt(tokens, at);
    if (name !== null) {
      const call = readArguments(tokens, bracketAfter(tokens, at) + 1, depth + 1);
      pieces.push({ type: "our call", name, args: call.args });
      at = call.end;
      continue;
    }
    const isOperator = token.type === "operator";
    if (isOperator && (token.value === ")" || token.value === "}") && open-- === 0) return { pieces, end: at };
    if (isOperator && (token.value === "(" || token.value === "{")) open++;
    if (isOperator && token.value === "," && open === 0 && depth > 0) return { pieces, end: at };
    pieces.push(token);
    at++;
  }
  if (open > 0 || depth > 0) throw new UnreadableFormula("a bracket is not closed");
  return { pieces, end: at };
}

function readArguments(tokens: readonly Token[], from: number, depth: number): { args: Piece[][]; end: number } {
  const args: Piece[][] = [];
  let at = from;
  for (;;) {
    const { pieces, end } = readUntilClose(tokens, at, depth);
    args.push(pieces);
    at = end + 1;
    if (itemAt(tokens, end).value === ")") return { args: args.length === 1 && isNothing(pieces) ? [] : args, end: at };
  }
}

/** Whether pieces are blanks only: an argument that is left out. */
export const isNothing = (pieces: readonly Piece[]): boolean => pieces.every((piece) => piece.type === "whitespace");
