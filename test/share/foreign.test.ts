import { foreignFunction } from "../../src/share/foreign";

test.each([
  ["=OTHER.THING(A1)+1", "OTHER.THING"],
  ["=SUM(A1)+my.own.f (A1)", "my.own.f"],
  ["=É.T(1)", "É.T"],
  ["=A2.B3(1)", "A2.B3"],
  ["=_xldudf_OTHER_THING(A1)", "_xldudf_OTHER_THING"],
  ["=_XLDUDF_OTHER(A1)", "_XLDUDF_OTHER"],
  ["=_xll.OTHER(A1)", "_xll.OTHER"],
  ["=_xludf.OTHER(A1)", "_xludf.OTHER"],
  ["=FIRST.F(A1)+SECOND.F(A1)", "FIRST.F"],
  ["=TREND.OWN(A1)", "TREND.OWN"], // begins as T. does not
  ["=XF.DIST(1)", "XF.DIST"], // ends as F. does
])("%s calls another add-in's function", (formula, name) => expect(foreignFunction(formula)).toBe(name));

test.each([
  ["=NORM.DIST(A1,0,1,TRUE)+t.inv(0.5,3)"],
  ["=_xlfn.STDEV.S(A1:A3)"],
  ["=_xlfn._xlws.SORT(A1:A3)"],
  ["=SUM(A1:A3)"],
  ['="OTHER.THING(1)"&"a ""OTHER.F(2)"" b"'],
  ["='MY.SHEET (1)'!A1+SUM('IT''S.A (B)'!A1)"],
  ["=my.name+1"], // a name with a dot is no call
  ["=my_xldudf_name(1)"],
])("%s calls none", (formula) => expect(foreignFunction(formula)).toBeNull());
