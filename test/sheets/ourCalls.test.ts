import { callsOurs, ourName, withTypedNames } from "../../src/sheets/ourCalls";

describe("a call of ours", () => {
  test.each([
    ["=DUCT.AREA(4)", "=DUCT.AREA(4)"],
    ["=duct.area (4)", "=DUCT.AREA (4)"],
    ["=_xldudf_DUCT_AREA(4)", "=DUCT.AREA(4)"],
    ["=1+_XLDUDF_duct_area(A1)", "=1+DUCT.AREA(A1)"],
    ["=_xldudf_duct.area(4)", "=DUCT.AREA(4)"],
    ["=[2]!_xldudf_DUCT_AREA(4)", "=DUCT.AREA(4)"],
    ['=DUCT.AREA("DUCT.AREA(_xldudf_DUCT_X(")', '=DUCT.AREA("DUCT.AREA(_xldudf_DUCT_X(")'],
    ["=IF('Bob''s'!A1>\"it's\",_xldudf_DUCT_AREA(4))", "=IF('Bob''s'!A1>\"it's\",DUCT.AREA(4))"],
    ["=Table1[[DUCT.AREA(x]]+duct.area(1)", "=Table1[[DUCT.AREA(x]]+DUCT.AREA(1)"],
  ])("is found in %s, which is entered as %s", (formula, entered) => {
    expect(callsOurs(formula)).toBe(true);
    expect(withTypedNames(formula)).toBe(entered);
  });

  test.each([
    '="DUCT.AREA(4)"',
    "='DUCT.AREA(4)'!A1",
    `='DUCT.AREA('!A1&"DUCT.AREA("`,
    "=Table1[[DUCT.AREA(x]]",
    "=AQUADUCT.AREA(4)",
    "=ÄDUCT.AREA(4)",
    "=X_DUCT.AREA(4)",
    "=MY.DUCT.AREA(4)",
    "=DUCT.AREA",
    "=DUCT.AREA+1",
    "=duct",
    "=SUM(A1)",
  ])("is not found in %s, which stays as it is", (formula) => {
    expect(callsOurs(formula)).toBe(false);
    expect(withTypedNames(formula)).toBe(formula);
  });
});

test("a word tells whether it is a name of ours", () => {
  expect(["DUCT.AREA", "duct.area", "_xldudf_DUCT_AREA", "_xldudf_duct.area"].map(ourName)).toEqual(
    Array(4).fill("AREA"),
  );
  expect(["AREA", "DUCT.", "DUCT_AREA", "AQUADUCT.AREA", "SUM"].map(ourName)).toEqual(Array(5).fill(null));
});
