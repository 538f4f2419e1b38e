import { tokenize } from "@borgar/fx";

/** Names of sheets in a formula: whatever stands before an exclamation mark, without its quotes. */
export const sheetsIn = (formula: string): string[] =>
  tokenize(formula, { mergeRefs: true }).flatMap(({ type, value }) => {
    const cut = type === "string" ? -1 : value.lastIndexOf("!");
    if (cut <= 0) return [];
    const before = value.slice(0, cut);
    return [before.startsWith("'") ? before.slice(1, -1).replaceAll("''", "'") : before];
  });
