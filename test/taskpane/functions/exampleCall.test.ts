import { exampleCall } from "../../../src/taskpane/functions/exampleCall";

const wide = (columns: number): number[][] => [Array.from({ length: columns }, (_, index) => index)];

test("each table of an example stands in columns of its own, behind Z too", () => {
  const { formula, tables } = exampleCall("NAME", { asks: "", args: [wide(25), wide(3), "4", wide(2)] });
  expect(formula).toBe("=DUCT.NAME(A1:Y1,AA1:AC1,4,AE1:AF1)");
  expect(tables.map(({ range }) => range)).toEqual(["A1:Y1", "AA1:AC1", "AE1:AF1"]);
});
