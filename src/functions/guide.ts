import type { Basis } from "../reference/schema";
import type { SourceId } from "../reference/sources";

/**
 * What the pane and the help say of a function beyond the words that people see while they type. A guide holds plain values
 * only (no call, no spread, no tagged template), so that the build can leave it out of functions.js; so does a formula.
 */
export interface Guide {
  readonly maths: string; // as one types it
  /** Where the formula comes from; "tables" for what only hands out rows, each of which names its own source. */
  readonly source: SourceId | "geometry" | "tables";
  readonly basis: Basis | ""; // how the formula's source is known, as a row of a table says it; "" where it has none
  readonly limits: string;
  readonly cautions?: readonly string[]; // keys of those that its task calls for
  readonly also?: readonly string[]; // what people call what it gives, or what they have in hand: for searching
  readonly page?: { readonly file: string; readonly title: string }; // of the help, where it says more
  readonly example: Example;
}

/** The maths as a book prints them, for the help alone; a function that looks up or lists has none. */
export interface Formula {
  readonly tex: readonly string[];
  readonly letters: Readonly<Record<string, string>>; // what each stands for, with the SI unit in brackets
}

/** Arguments as one types them; a table stands for a range. Their result is computed when it is shown. */
export interface Example {
  readonly asks: string;
  readonly args: readonly (string | ExampleTable)[];
}

export type ExampleTable = readonly (readonly (string | number)[])[];

/** A function's guide under its name. */
export interface FunctionGuide extends Guide {
  readonly name: string;
}

/** Functions under what one wants to do. */
export interface Task {
  readonly title: string;
  readonly functions: readonly FunctionGuide[];
}
