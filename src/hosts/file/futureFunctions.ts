/**
 * Functions of the spreadsheet that came after the file format: a file keeps them with a prefix, or they are not known when
 * it is opened. Names from memory; the published format description [MS-XLSX] 2.2.2 (future functions) lists them.
 */
const PREFIXED = `ACOT ACOTH AGGREGATE ARABIC BASE BETA.DIST BETA.INV BINOM.DIST BINOM.INV BITAND BITOR BITXOR
  BYCOL BYROW CEILING.MATH CHISQ.DIST CHISQ.INV CHISQ.TEST CHOOSECOLS CHOOSEROWS COMBINA CONCAT CONFIDENCE.NORM CONFIDENCE.T
  COT COTH COVARIANCE.P COVARIANCE.S CSC CSCH DAYS DECIMAL DROP EXPAND EXPON.DIST F.DIST F.INV F.TEST FLOOR.MATH
  FORECAST.LINEAR FORMULATEXT GAMMA GAMMA.DIST GAMMA.INV GAMMALN.PRECISE GAUSS HSTACK IFNA IFS ISFORMULA
  ISOWEEKNUM LAMBDA LET MAKEARRAY MAP MAXIFS MINIFS MODE.MULT MODE.SNGL MUNIT NORM.DIST NORM.INV NORM.S.DIST
  NORM.S.INV NUMBERVALUE PDURATION PERCENTILE.EXC PERCENTILE.INC PERCENTRANK.EXC PERCENTRANK.INC PERMUTATIONA
  PHI POISSON.DIST QUARTILE.EXC QUARTILE.INC RANDARRAY RANK.AVG RANK.EQ REDUCE RRI SCAN SEC SECH SEQUENCE SHEET SHEETS
  SKEW.P SORTBY STDEV.P STDEV.S SWITCH T.DIST T.INV T.TEST TAKE TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW
  UNICHAR UNICODE UNIQUE VAR.P VAR.S VSTACK WEIBULL.DIST WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR Z.TEST`;

const TWICE_PREFIXED = ["FILTER", "SORT"];

const prefixes = new Map([
  ...PREFIXED.split(/\s+/).map((name) => [name, "_xlfn."] as const),
  ...TWICE_PREFIXED.map((name) => [name, "_xlfn._xlws."] as const),
]);

/** A function of the spreadsheet as the file keeps it. */
export const withPrefix = (name: string): string => `${prefixes.get(name.toUpperCase()) ?? ""}${name}`;

/** The name that people type. SINGLE has none, so it keeps its prefix. */
export const withoutPrefix = (name: string): string =>
  /^_xlfn\.SINGLE$/i.test(name) ? name : name.replace(/^(?:_xlfn\.|_xlws\.)+/i, "");
