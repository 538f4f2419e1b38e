/** A spelling that a find-and-replace over all sheets does not find. */
export const BEFORE = "·"; // every letter

export const apart = (text: string): string => [...text].map((letter) => BEFORE + letter).join("");

/** A formula's text as it is read again. */
export const together = (text: string): string => `SUBSTITUTE(${text},"${BEFORE}","")`;
