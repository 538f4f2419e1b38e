/** Functions by which a spreadsheet program asks the network, another program or another file when it computes. */
const ASKING = new Set(
  (
    "WEBSERVICE FILTERXML IMAGE STOCKHISTORY TRANSLATE DETECTLANGUAGE COPILOT PY RTD DDE CALL REGISTER REGISTER.ID EXEC SQL.REQUEST " +
    "CUBEVALUE CUBEMEMBER CUBEMEMBERPROPERTY CUBESET CUBESETCOUNT CUBERANKEDMEMBER CUBEKPIMEMBER " +
    "IMPORTDATA IMPORTFEED IMPORTHTML IMPORTRANGE IMPORTXML"
  ).split(" "),
);

const TEXT = /"(?:[^"]|"")*"/g;
const QUOTED = /'(?:[^']|'')*'/g; // a sheet's name
const WORD = /[\p{L}_][\p{L}\p{N}_.]*(?![\p{L}\p{N}_.!])/gu; // and no sheet's name
const OTHER_BOOK = /\[[^[\]]*\][\p{L}\p{N}_.]*!/u; // [1]!name, [Prices.xlsx]Sheet1!A1
const QUOTED_BOOK = /'(?:[^']|'')*\[(?:[^']|'')*'!/; // 'C:\shop\[Prices.xlsx]Sheet1'!A1
const OTHER_BOOK_IN_TEXT = /"(?:[^"]|"")*\[(?:[^"]|"")*"/; // INDIRECT("[Prices.xlsx]Sheet1!A1")

/**
 * Why a formula reaches outside its workbook when it is computed, as a clause; null where it does not. A name is enough,
 * since a function may be called by another: MAP(A1:A3,WEBSERVICE).
 */
export function reachesOutside(formula: string): string | null {
  const names = namesIn(formula);
  const asking = names.find((name) => ASKING.has(name));
  if (asking !== undefined) return `it asks another place for its value (${asking})`;
  const code = formula.replace(TEXT, '""');
  const bare = code.replace(QUOTED, "''");
  if (bare.includes("|")) return "it asks another program for its value (a DDE link)";
  const written = names.includes("INDIRECT") && OTHER_BOOK_IN_TEXT.test(formula);
  return OTHER_BOOK.test(bare) || QUOTED_BOOK.test(code) || written ? "it reads another workbook" : null;
}

/** Words that may name a function, in capitals and without the prefixes of files. */
export const namesIn = (formula: string): string[] =>
  (formula.replace(TEXT, '""').replace(QUOTED, "''").match(WORD) ?? []).map((word) =>
    word.toUpperCase().replace(/^(?:_XLFN\.|_XLWS\.)+/, ""),
  );
