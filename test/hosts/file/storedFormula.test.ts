import { fromStored, toStored } from "../../../src/hosts/file/storedFormula";
import { sharedFormula } from "../../../src/hosts/file/read/sharedFormula";

describe("formulas as a file keeps them", () => {
  test.each([
    ["=DUCT.AREA(B4,,units)", "_xldudf_DUCT_AREA(B4,,units)"],
    ["=duct.area (4)*2", "_xldudf_DUCT_AREA(4)*2"],
    ['="=DUCT.AREA("&DUCT.AREA(4)', '"=DUCT.AREA("&_xldudf_DUCT_AREA(4)'],
    ["=SUM('Single cells'!A1:B2)", "SUM('Single cells'!A1:B2)"],
    ["=XLOOKUP(1,A1:A3,B1:B3)", "_xlfn.XLOOKUP(1,A1:A3,B1:B3)"],
    ["=SORT(A1:A3)", "_xlfn._xlws.SORT(A1:A3)"],
    ["=IF(A1>0,SUM(A1:A3),xor(A1,B1))", "IF(A1>0,SUM(A1:A3),_xlfn.xor(A1,B1))"],
    ["=SUM (A1:A3)", "SUM(A1:A3)"],
    ['=IF(A1>0,SUM(A1:A3)+B1,"")', 'IF(A1>0,SUM(A1:A3)+B1,"")'],
    ["=SUM(B5#)", "SUM(_xlfn.ANCHORARRAY(B5))"],
    ['=IF(A1="DUCT.AREA(",1,2)', 'IF(A1="DUCT.AREA(",1,2)'],
  ])("%s is kept as %s", (typed, stored) => {
    expect(toStored(typed)).toBe(stored);
  });

  test.each([
    ["_xldudf_DUCT_AREA(4)", "=DUCT.AREA(4)"],
    ["_xldudf_duct_area(4)", "=DUCT.AREA(4)"],
    ["_XLDUDF_Duct_Area(4)", "=DUCT.AREA(4)"],
    ["duct.area(4)", "=DUCT.AREA(4)"],
    ["DUCT.AREA(4)", "=DUCT.AREA(4)"],
    ["[2]!_xldudf_DUCT_AREA(4)", "=DUCT.AREA(4)"],
    ["IFERROR(_xldudf_duct_leak(1,_xldudf_DUCT_AREA(4)),0)", "=IFERROR(DUCT.LEAK(1,DUCT.AREA(4)),0)"],
    ['"_xldudf_DUCT_AREA("&_xldudf_DUCT_AREA(4)', '="_xldudf_DUCT_AREA("&DUCT.AREA(4)'],
    ["_xlfn.IFS(A1,1)+_xlfn._xlws.FILTER(A1:A3,B1:B3)", "=IFS(A1,1)+FILTER(A1:A3,B1:B3)"],
    ["SUM(_xlfn.ANCHORARRAY(B5))", "=SUM(B5#)"],
    ["_xlfn.SINGLE(A1:A3)", "=_xlfn.SINGLE(A1:A3)"],
    ["product.area(1)", "=product.area(1)"],
    ['"never closed', '="never closed'],
  ])("%s is read as %s", (stored, typed) => {
    expect(fromStored(stored)).toBe(typed);
  });

  test.each([
    ["=A1+$B$2+A$3+'My sheet'!C3*units", "=B3+$B$2+B$3+'My sheet'!D5*units"],
    ['=SUM($A$1:C3,D:D,$5:7)&"A1"', '=SUM($A$1:D5,E:E,$5:9)&"A1"'],
    ["=LET(r,A1,r+R2)", "=LET(r,B3,r+S4)"],
    ["=[1]Other!A1+Rates[cost]", "=[1]Other!B3+Rates[cost]"],
  ])("%s, which the file says once for many cells, moves its relative places only", (said, there) => {
    expect(sharedFormula(said, "D4").at("E6")).toBe(there);
  });
});
