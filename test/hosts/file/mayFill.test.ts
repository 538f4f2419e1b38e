import "../../support/customFunctions";
import { cellFunctions, exampleArguments } from "../../support/cellFunctions";
import { mayFill } from "../../../src/hosts/file/write/mayFill";

describe("formulas that may fill more cells than their own", () => {
  test.each([
    "=DUCT.BUDGET(A1:F9,density,units)",
    '=IF(COUNTA(A2:A9)=0,"Fill in first",duct.solve(A1:F9,H1:I9))',
    "=INDEX(DUCT.SOLVE(A1:F9,H1:I9),0,2)",
    "=INDEX(DUCT.SOLVE(A1:F9,H1:I9),,2)",
    '=DUCT.REFERENCE("materials")',
    "=DUCT.AREA(A1:A9)",
    "=DUCT.AREA(A1:A9*2)+1",
    "=DUCT.AREA(Runs[Diameter])",
    "=DUCT.FANPRESSURE(A1:B9,D1:D5)",
    '=IF(A1="","",SORT(B1:B9))',
  ])("%s may", (formula) => {
    expect(mayFill(formula)).toBe(true);
  });

  test.each([
    "=DUCT.AREA(A1,,units)",
    '=DUCT.GATELEAK("shut packed",6,4)',
    '=INDEX(DUCT.REFERENCE("transport",$B$10,"low (fpm)"),1,1)',
    '="In slower air: "&INDEX(DUCT.REFERENCE("transport",A1),1,MATCH("x",A1:C1,0))',
    "=SUM(DUCT.AREA(A1:A9))",
    '=IF(COUNT(A1:B9)=0,"",DUCT.TRAVERSE(A1:B9,D1,density,units))',
    "=DUCT.FANPRESSURE(A1:B9,D1)",
    "=SUM(A1:A9)",
    '="DUCT.BUDGET(A1:B2)"',
    "=DUCT.BUDGET(",
  ])("%s does not", (formula) => {
    expect(mayFill(formula)).toBe(false);
  });
});

// Whoever adds a function that answers with a table must name it there, or a file keeps its first value alone for ever.
test.each(cellFunctions)("knows whether $name answers single cells with a table", ({ name, call, guide }) => {
  const args = exampleArguments({ name, call, guide });
  const cells = args.map((_, index) => `${String.fromCharCode(65 + index)}1`);
  expect(mayFill(`=DUCT.${name}(${cells.join(",")})`)).toBe(call(...args).flat().length > 1);
});
