import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { parse, type Token } from "acorn";

/** What the parser tells of a token, though its types leave out the value. */
type Read = Token & { readonly value?: unknown };

/**
 * On a Mac, Excel shows the pane and computes the functions in the Safari of the system, which on an older Mac is an older one. docs/in-excel.md
 * promises Safari 15.4: the first with the methods that our sources may call (the "lib" of tsconfig.json). Class static blocks and
 * lookbehind in a regular expression came with 16.4; one such place and the whole file does not run. The build writes them as ES2020,
 * except the lookbehind, for which no compiler has other words.
 */
const LEVEL = 2020;

/** Escaped, the bracket is an ordinary one. */
const LOOKBEHIND = /(?<!\\)\(\?<[=!]/;

/** Methods that no Safari before 16 has. Ours cannot call them, since the types know none of them; a package's could. */
const LATER_METHODS = /^(toSorted|toReversed|toSpliced|groupBy|withResolvers|fromAsync|isWellFormed|toWellFormed)$/;

/** What in a script an older Safari would not run, in one sentence; null if it runs all of it. */
export function syntaxFault(script: string): string | null {
  const tokens: Read[] = [];
  try {
    parse(script, { ecmaVersion: LEVEL, onToken: tokens });
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return `holds what came after ES${LEVEL} (${error.message})`;
  }
  const lookbehind = tokens.find((token) => LOOKBEHIND.test(patternOf(token)));
  if (lookbehind !== undefined) return `holds a lookbehind: ${patternOf(lookbehind).slice(0, 60)}`;
  const method = tokens.find(
    ({ value }, at) => tokens[at - 1]?.type.label === "." && LATER_METHODS.test(String(value)),
  );
  return method === undefined ? null : `calls .${String(method.value)}(), which Safari 15.4 does not have`;
}

/** The text of a regular expression, or of a text that may become one. */
function patternOf({ type, value }: Read): string {
  if (type.label === "regexp") return (value as { readonly pattern: string }).pattern;
  return ["string", "template"].includes(type.label) ? String(value) : "";
}

/** Our own scripts in a folder; what lies in vendor/ belongs to the sheet in the browser and stays as it came. */
export const syntaxFaults = (folder: string): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".js"))
    .flatMap((name) => {
      const fault = syntaxFault(readFileSync(path.join(folder, name), "utf8"));
      return fault === null ? [] : [`${name} ${fault}`];
    });
