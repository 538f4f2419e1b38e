import { eitherWay } from "../../sheets/eitherWay";

const WITH_COMMA = /^[+-]?\d+,\d+$/;

/** What must be said of a number while it is typed, for its cell shows no doubt once it is entered; empty where nothing must. */
export function typedWords(typed: string): string {
  const text = typed.trim();
  const read = eitherWay(text);
  if (read === null) return WITH_COMMA.test(text) ? `${text} is no number here: type ${text.replace(",", ".")}. ` : "";
  const [is, not] = read.sign === "." ? [read.small, read.large] : [read.large, read.small];
  return `${text} counts as ${is}, not as ${not}. `;
}
