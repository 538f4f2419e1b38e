import { chosenIn } from "../../src/share/chosenSystem";

const asked: string[] = [];
const to = (answer: boolean | null) => (reference: string) => (asked.push(reference), answer);

describe("a formula that chooses between what was entered and what was calibrated", () => {
  test.each<[string, string, string]>([
    ['=IF(Flow!$B$2="as calibrated",A1,B1)', "=A1", "=B1"],
    ['=DUCT.SOLVE(IF(Flow!$B$2="as calibrated",DUCT.X(A1:B2,"a,(b"),Runs!A1:B2),IF($B$2="as calibrated",C1,D1),1)', '=DUCT.SOLVE(DUCT.X(A1:B2,"a,(b"),C1,1)', "=DUCT.SOLVE(Runs!A1:B2,D1,1)"],
    ['=IF(A1<2,"",IF(Flow!$B$2="as calibrated",F(IF(Flow!$B$2="as calibrated",R1,"")),G({1,2})))', '=IF(A1<2,"",F(R1))', '=IF(A1<2,"",G({1,2}))'],
    ['=IF(A1="as entered",B1,C1)', '=IF(A1="as entered",B1,C1)', '=IF(A1="as entered",B1,C1)'],
  ])("%s keeps one side", (formula, calibrated, entered) => {
    expect(chosenIn(formula, to(true))).toBe(calibrated);
    expect(chosenIn(formula, to(false))).toBe(entered);
    expect(chosenIn(formula, to(null))).toBe(formula); // a cell that is nowhere decides nothing
  });
}); // prettier-ignore
