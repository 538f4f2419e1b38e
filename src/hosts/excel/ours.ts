/**
 * Calls of our functions in a formula, in each way in which Excel may show them: by their name; by the stored form,
 * which stays visible until the add-in is there; and with the number of another workbook before that, which other
 * add-ins have been seen to leave (office-js issue 2568, Excel-Custom-Functions issue 108).
 */
const CALL = /(?:\[\d+\]!)?(?<![\w.])(?:_xldudf_DUCT_|DUCT[.])([A-Z][A-Z0-9]*)(?=\s*\()/gi;

/** Texts and quoted names of sheets, in which nothing is a call. */
const QUOTED = /("(?:[^"]|"")*"|'(?:[^']|'')*')/;

/** Whether a formula calls a function of ours. */
export const callsOurs = (formula: string): boolean => inOurForm(formula) !== null;

/** The formula with its calls in the form that Excel understands when it is entered; null if none is ours. */
export function inOurForm(formula: string): string | null {
  let calls = 0;
  const parts = formula.split(QUOTED).map((part, index) =>
    index % 2 === 1
      ? part
      : part.replace(CALL, (_, name: string) => {
          calls++;
          return `DUCT.${name.toUpperCase()}`;
        }),
  );
  return calls === 0 ? null : parts.join("");
}

/** A text that begins with an equal sign comes back from Excel as if it were a formula, but its value is the same text. */
export const isFormula = (formula: unknown, value: unknown): formula is string =>
  typeof formula === "string" && formula.startsWith("=") && formula !== value;
