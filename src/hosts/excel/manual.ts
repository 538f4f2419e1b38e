/** Whether Excel computes only when it is asked to; what cells show may then be of before the last change. */
export const isManual = ({ calculationMode }: Pick<Excel.Application, "calculationMode">): boolean =>
  calculationMode === "Manual";

const WHERE = "Excel calculates only when asked";

export const NO_OLD_COPY = `${WHERE}, so a copy could hold numbers of before your last change: set Formulas › Calculation Options to Automatic, then make it again. No copy was made.`;
export const MAY_BE_OLD = `${WHERE}, so cells may show old numbers: press F9, or set Formulas › Calculation Options to Automatic.`;
