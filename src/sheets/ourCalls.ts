/**
 * Calls of our functions in a formula, in each way in which a program may show them: DUCT.AREA; as files store it,
 * _xldudf_DUCT_AREA, in any case and with a dot as well, which stays visible until the add-in is there; and with the number of
 * another workbook before that, which other add-ins have been seen to leave (office-js issue 2568, Excel-Custom-Functions
 * issue 108). A blank may stand before the bracket.
 */
const PREFIX = String.raw`(?:_xldudf_DUCT[._]|DUCT\.)`;
const NAME = String.raw`([A-Z][A-Z0-9_.]*)`;
const WORD = new RegExp(`^${PREFIX}${NAME}$`, "i");
const CALL = new RegExp(String.raw`(^|[^\p{L}\p{N}_.])(?:\[\d+\]!)?${PREFIX}${NAME}(?=\s*\()`, "giu");

/** Texts, quoted names of sheets and names of a table's columns, in which nothing is a call. */
const QUOTED = /("(?:[^"]|"")*"|'(?:[^']|'')*'|\[(?!\d+\]!)[^[\]]*\])/;

/** The name of a function of ours, in capitals, where a word is one: AREA. */
export const ourName = (word: string): string | null => WORD.exec(word)?.[1]?.toUpperCase() ?? null;

/** Whether a formula calls a function of ours. */
export const callsOurs = (formula: string): boolean =>
  /duct/i.test(formula) && formula.split(QUOTED).some((part, index) => index % 2 === 0 && part.search(CALL) >= 0);

/** The names of our functions that a formula calls, in capitals. */
export const ourCallsIn = (formula: string): string[] =>
  /duct/i.test(formula)
    ? formula
        .split(QUOTED)
        .flatMap((part, index) =>
          index % 2 === 1 ? [] : [...part.matchAll(CALL)].map(([, , name]) => name!.toUpperCase()),
        )
    : [];

/** The formula with its calls of ours by the names that people type, which is what Excel understands when it is entered. */
export const withTypedNames = (formula: string): string =>
  formula
    .split(QUOTED)
    .map((part, index) =>
      index % 2 === 1 ? part : part.replace(CALL, (_, before: string, name: string) => before + typedName(name)),
    )
    .join("");

export const typedName = (name: string): string => `DUCT.${name.toUpperCase()}`;
