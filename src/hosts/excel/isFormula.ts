/** A text that begins with an equal sign comes back from Excel as if it were a formula, but its value is the same text. */
export const isFormula = (formula: unknown, value: unknown): formula is string =>
  typeof formula === "string" && formula.startsWith("=") && formula !== value;
