import { withoutStanding, withStanding } from "../../src/share/standing";
import { newWorkings } from "../../src/share/translate/workings";
import type { Sheet, SheetCell } from "../../src/sheets/workbook";

const sheet = (name: string, cells: readonly SheetCell[]): Sheet => ({ name, columns: [], tallRows: [], frozen: { rows: 0, columns: 0 }, cells: [...cells], lists: [], flags: [] }); // prettier-ignore
const formulasOf = ({ cells }: Sheet): string[] => cells.flatMap((cell) => ("formula" in cell ? [cell.formula] : []));

const asks = (at: string): string => `=IF(AND(ISFORMULA(${at}),ROW(${at})=2),1,"see it")`;
const ASKED = ["'My (own) ducts'!$B$2", "'My (own) ducts'!$F$2", "Fan!$A$1"].map(asks);
const live = {
  sheet: "My (own) ducts",
  at: "B2",
  formula: "=DUCT.BUDGET(A1:A9)",
  cells: [
    ['=IF(1,"Run")', '="Airflow"'],
    ['=""', "=A1*2"],
    ['="Fan"', "=12"],
  ],
};
const fixed = {
  sheet: "My (own) ducts",
  at: "F2",
  formula: "=DUCT.SIZES()",
  function: "SIZES",
  why: "",
  extent: { rows: 1, columns: 1 },
};

test("a copy asks of each cell of an answer that holds a formula, of a fixed answer nothing, of other cells what the book asks", () => {
  const workings = newWorkings("Workings");
  const translated = { live: [live], fixed: [fixed], untranslated: [], units: [] };
  const [copied] = withStanding([sheet("Fan", ASKED.map((formula, index) => ({ at: `A${index + 2}`, formula })))], translated, workings); // prettier-ignore
  expect(formulasOf(copied!)).toEqual([
    "=IF(AND(AND(ISFORMULA('My (own) ducts'!$B$2),Workings!$A$4),ROW('My (own) ducts'!$B$2)=2),1,\"see it\")",
    "=IF(AND(OR(ISFORMULA('My (own) ducts'!$F$2),1),ROW('My (own) ducts'!$F$2)=2),1,\"see it\")",
    ASKED[2],
  ]);
  // the headings and numbers that stand as such are no formulas
  expect(formulasOf(workings.sheet)).toEqual([
    "=AND($A$5:$A$6)",
    "=IFERROR(AND(ISFORMULA('My (own) ducts'!$B$2)),TRUE)",
    "=IFERROR(AND(ISFORMULA('My (own) ducts'!$B$3),ISFORMULA('My (own) ducts'!$C$3)),TRUE)",
  ]);
  expect(formulasOf(copied!).map(withoutStanding)).toEqual(ASKED);
});

test("a program that writes a blank behind each comma changes nothing of that", () => {
  expect(withoutStanding("=IF(AND(ISFORMULA(B2), 'Workings (2)'!$A$4),1,2)")).toBe("=IF(ISFORMULA(B2),1,2)");
  expect(withoutStanding("=IF(OR(ISFORMULA(B2),1),AND(ISFORMULA(B2),ROW(B2)=2),2)")).toBe("=IF(ISFORMULA(B2),AND(ISFORMULA(B2),ROW(B2)=2),2)"); // prettier-ignore
});
