/** A cell with a function of ours, as Excel asks office.js for it and hears of it. */

/** A function by its id and its arguments as Excel hands them over: rows of cells, or null for what was left out. */
export type CellCall = readonly [id: string, ...given: (readonly (readonly unknown[])[] | null)[]];

/** What a cell shows: rows of values, or an error with its sentence. */
export type CellAnswer = { readonly rows: unknown } | { readonly error: string; readonly sentence: string };

/** In an Excel that knows data types, what is no plain value comes as a text inside an object. */
const inside = (value: object): unknown => ({ value: JSON.stringify(value) });

/** An error in a cell that a function is given. */
export const errorCell = (code: string): unknown => inside({ type: "CustomFunctionError", code });

/** A number with a format of its own. */
export const formattedCell = (basicValue: number): unknown =>
  inside({ type: "FormattedNumber", basicType: "Double", basicValue, numberFormat: "0.00" });

const FUNCTIONS = 1; // the kind of message
const EVALUATE = 1000;
const TAKES_ERRORS = 4; // what functions.json says of every function of ours: allowErrorForDataTypeAny
const TAKES_FORMATS = 8; // and allowCustomDataForDataTypeAny

/** The message by which Excel asks for a cell. */
export function messageFor([id, ...given]: CellCall, number: number): unknown[] {
  const asked = [number, id, given, "Sheet1!A1", TAKES_ERRORS + TAKES_FORMATS];
  return [FUNCTIONS, EVALUATE, "", JSON.stringify(asked), number, false];
}

const ERRORS: Readonly<Record<number, string>> = {
  1: "#N/A",
  2: "a fault of the program",
  5: "#DIV/0!",
  6: "#NUM!",
  7: "#VALUE!",
  10: "no such function",
};

/** What office.js tells of one cell: its number, whether it went well, the value or the sentence, the error's number. */
export function readAnswer([number, isGood, value, code]: [number, boolean, unknown, number]): [number, CellAnswer] {
  if (isGood) return [number, { rows: value }];
  return [number, { error: ERRORS[code] ?? `error ${code}`, sentence: String(value) }];
}
