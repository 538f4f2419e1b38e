const LONGEST_PROMPT = 255; // characters of an input message, from [MS-OI29500] 2.1.613

/** A text as an input message of a cell takes it. */
export const asPrompt = (text: string): string =>
  text.length <= LONGEST_PROMPT ? text : `${text.slice(0, LONGEST_PROMPT - 1).trimEnd()}…`;

/** The title over the input message of a cell to be filled, by which it is known from a cell's own note; at most 32 characters. */
export const HINT_TITLE = "What to type";
