import { quotedText } from "../references";

/** A number in a sentence: the cell that holds it as it is said, and the unit behind it. */
export interface Said {
  readonly number: string;
  readonly label: string;
}

/** A piece of a sentence that a formula gives. */
export interface Worked {
  readonly formula: string;
}

export const worked = (formula: string): Worked => ({ formula });

const LONGEST = 250; // a spreadsheet takes no longer text inside a formula

/** A text as a formula writes it, however long. */
export function literal(text: string): string {
  const pieces = text.match(new RegExp(`[^]{1,${LONGEST}}`, "g")) ?? [""];
  return pieces.map(quotedText).join("&");
}

/** One of several texts or numbers, the last where no condition holds; what does not depend on a condition is written once. */
export const oneOf = (cases: readonly (readonly [when: string, then: string])[], otherwise: string): string =>
  cases.every(([, then]) => then === otherwise)
    ? otherwise
    : cases.reduceRight((rest, [when, then]) => `IF(${when},${then},${rest})`, otherwise);

/** A sentence as the function writes it, as a formula. One that ends with "in.w.g." has one full stop. */
export function say(words: TemplateStringsArray, ...values: readonly (string | Said | Worked)[]): string {
  const pieces: (string | Worked)[] = [];
  const add = (text: string): void => {
    const last = pieces.at(-1);
    if (typeof last === "string") pieces[pieces.length - 1] = last + text;
    else pieces.push(text);
  };
  words.forEach((text, index) => {
    add(text);
    const value = values[index];
    if (typeof value === "string") add(value);
    else if (value !== undefined && "formula" in value) pieces.push(value);
    else if (value !== undefined) {
      pieces.push(worked(value.number));
      add(` ${value.label}`);
    }
  });
  return pieces
    .map((piece, index) => {
      if (typeof piece !== "string") return piece.formula;
      const end = index === pieces.length - 1 ? /\.\.(?=\s|$)/g : /\.\.(?=\s)/g;
      return piece === "" ? "" : literal(piece.replace(end, "."));
    })
    .filter((code) => code !== "")
    .join("&");
}
