/** Beginnings of the spreadsheet programs' own functions that have a dot in their name. */
const DOTTED =
  /^(_XLFN|_XLWS|BETA|BINOM|CEILING|CHISQ|CONFIDENCE|COVARIANCE|ECMA|ERF|ERFC|ERROR|EXPON|F|FLOOR|FORECAST|GAMMA|GAMMALN|HYPGEOM|ISO|LOGNORM|MODE|NEGBINOM|NETWORKDAYS|NORM|PERCENTILE|PERCENTRANK|POISSON|QUARTILE|RANK|SKEW|STDEV|T|VAR|WEIBULL|WORKDAY|Z)\./i;

const PREFIXED = /^(_xldudf_|_xll\.|_xludf\.)/i;

/**
 * The function in a formula that belongs to no spreadsheet program: another add-in's. Its name has a namespace before a dot, or
 * the prefix under which files keep such functions. Null where there is none.
 */
export function foreignFunction(formula: string): string | null {
  const bare = formula.replace(/"[^"]*"/g, '""').replace(/'[^']*'/g, "S");
  const names = bare.match(/[\p{L}_][\p{L}\p{N}_.]*(?=\s*\()/gu) ?? [];
  return names.find((name) => PREFIXED.test(name) || (name.includes(".") && !DOTTED.test(name))) ?? null;
}
