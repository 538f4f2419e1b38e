/** Where this grid differs from Excel, for whoever will carry a sheet from one to the other. */
const differences: readonly string[] = [
  "-2^2 is -4 here and 4 in Excel. Write (-2)^2 or -(2^2), which both read alike.",
  "LOG10(x) is not understood here, where it reads as the address of a cell. Write LOG(x) or LN(x)/LN(10).",
  "LET, LAMBDA, MAP and AGGREGATE are missing here.",
  "Whole rows and columns end with the sheet here: ROWS(A:A) counts the rows that it has, not 1,048,576.",
  "A sheet here has at most 50,000 rows, 500 columns and 1,500,000 cells. A single cell of a file beyond them is left out and named; where a formula reads it, the file is not opened.",
  "A formula that asks for more cells, text or steps than some seconds of work shows #ERROR and says so, and no IFERROR puts a number in its place. REGEXTEST and its like are not computed, since some patterns never end.",
  "Table references such as Runs[Airflow] work in Excel only; here use ranges such as D11:D22.",
  "Errors of the grid's own functions are called #ERROR, #REF and #CYCLE where Excel says #VALUE!, #REF! and a warning of a circular reference. Errors of DUCT functions have Excel's names.",
  "A text that is exactly the name of an error, such as #N/A, is taken for that error here.",
  "A blank cell reaches a DUCT function as a blank here. Some versions of Excel send 0, so the functions take both alike wherever 0 cannot be meant.",
  'A double quote inside a text of a formula ("a""b") is not understood here. Write CHAR(34) in its place.',
  "A text that looks like a web address stays a text: nothing here opens it, and no icon of another host is fetched. HYPERLINK shows its label only.",
  "1/2 and 4 1/2 are fractions of an inch here, where Excel takes 1/2 for a day: write 0.5 or =1/2, which both read alike. A DUCT function refuses a cell that shows a day or a time; in Excel it gets the number behind it.",
  "A sheet's name has no straight apostrophe here: a file's Bob's becomes Bob’s, in its formulas too.",
  "Ctrl+P prints the sheet in front, on the paper of its units. To print several, save the file and print it in a spreadsheet program.",
  "What a reload or Save keeps: values, formulas, looks, number formats, notes, names, lists of words, marks by text, line charts, tables that came with the sheet, widths, frozen rows, print set-up. Merged cells, pictures, pivot tables, other charts, rules and marks, hidden rows, colours of tabs and tables that you make here are not kept.",
];

/** Fills a list on the page. */
export function listDifferences(list: HTMLElement): void {
  list.replaceChildren(
    ...differences.map((sentence) => {
      const item = document.createElement("li");
      item.textContent = sentence;
      return item;
    }),
  );
}
