import { cellIndex } from "../../../src/share/fixed/cellIndex";
import { reachOf } from "../../../src/share/fixed/reach";
import { rectangles } from "../../../src/share/fixed/rectangles";
import { sampleBook, type SampleSheet } from "../sampleBooks";

const reach = (
  sheets: Record<string, SampleSheet>,
  formula: string,
  names = [{ name: "units", sheet: "S", at: "C1" }],
) => reachOf("S", formula, cellIndex(sampleBook(sheets, names)));

test("a formula rests on typed cells, also through plain formulas and other sheets, blanks counted", () => {
  const sheets = {
    S: { rows: [[1, 2]], formulas: { A3: { code: "=A1+'My sheet'!B2", shows: [[3]] } } },
    "My sheet": { rows: [[null], [null, 5]] },
  };
  expect(reach(sheets, "=DUCT.SOLVE(A3,D1:D2)")).toEqual({
    typed: ["S!D1", "S!D2", "S!A1", "My sheet!B2"],
    computed: ["S!A3"],
    unfollowed: [],
  });
});

test("a cell that a formula spills into rests on that formula's inputs", () => {
  const sheets = { S: { rows: [[7]], formulas: { A3: { code: "=FANS(A1)", shows: [[1], [2], [3]] } } } };
  expect(reach(sheets, "=DUCT.SOLVE(A5)")).toEqual({ typed: ["S!A1"], computed: ["S!A5"], unfollowed: [] });
});

test("circular references end, names are followed, whole columns are cut to what is filled", () => {
  const sheets = {
    S: { rows: [[1], [2]], formulas: { B1: { code: "=B2", shows: [[0]] }, B2: { code: "=B1+A2", shows: [[0]] } } },
  };
  expect(reach(sheets, "=DUCT.SOLVE(B1,units)").typed).toEqual(["S!C1", "S!A2"]);
  const column = reach(sheets, "=DUCT.SOLVE(A:A)").typed;
  expect(column.slice(0, 3)).toEqual(["S!A1", "S!A2", "S!A3"]);
  expect(column.length).toBeLessThan(100);
});

test("what cannot be followed is told", () => {
  const found = reach({ S: { rows: [[1]] } }, '=DUCT.SOLVE(INDIRECT("A1"),nothing,Runs[Airflow])').unfollowed;
  expect(found).toEqual(["INDIRECT", "nothing", "Runs[Airflow]"]);
});

test("cells gather into rectangles that cover each of them once and nothing else", () => {
  const keys = ["S!A1", "S!A2", "S!B1", "S!B2", "S!C2", "S!A9", "it's!odd!C3"];
  expect(rectangles(keys)).toEqual([
    { sheet: "S", top: 9, bottom: 9, left: 1, right: 1 },
    { sheet: "S", top: 1, bottom: 2, left: 1, right: 2 },
    { sheet: "S", top: 2, bottom: 2, left: 3, right: 3 },
    { sheet: "it's!odd", top: 3, bottom: 3, left: 3, right: 3 },
  ]);
});

test("cells in any order gather alike, runs of other rows stay apart", () => {
  const range = (top: number, left: number, bottom: number, right: number) => ({
    ...{ sheet: "S", top, left, bottom, right },
  });
  expect(rectangles(["S!B10", "S!A9", "S!B9", "S!A10"])).toEqual([range(9, 1, 10, 2)]);
  expect(rectangles(["S!C1", "S!A1"])).toEqual([range(1, 1, 1, 1), range(1, 3, 1, 3)]);
  expect(rectangles(["S!K1", "S!B1", "S!J1"])).toEqual([range(1, 2, 1, 2), range(1, 10, 1, 11)]);
  expect(rectangles(["S!A1", "S!B1", "S!B2"])).toEqual([range(1, 1, 1, 1), range(1, 2, 2, 2)]);
});

test("what stands behind a computed cell is typed, not computed, and is told once", () => {
  const sheets = {
    S: { rows: [[1, 2]], formulas: { A3: { code: "=A4+A4", shows: [[3]] }, A4: { code: "=A1+B1", shows: [[3]] } } },
  };
  expect(reach(sheets, "=DUCT.SOLVE(A3,A3:A4,A3)")).toEqual({
    typed: ["S!A1", "S!B1"],
    computed: ["S!A3", "S!A4"],
    unfollowed: [],
  });
  expect(reach(sheets, "=DUCT.SOLVE(A3)")).toEqual({ typed: ["S!A1", "S!B1"], computed: ["S!A3"], unfollowed: [] });
});

test("functions that only look like moving ones are none, a name that is not there is told", () => {
  expect(reach({ S: { rows: [[1]] } }, '=DUCT.SOLVE(A2:A,OFFSETS(1),"OFFSET(A1)")').unfollowed).toEqual(["A"]);
  expect(reach({ S: { rows: [[1]] } }, "=DUCT.SOLVE(offset(A1,1,1))")).toEqual({
    typed: ["S!A1"],
    computed: [],
    unfollowed: ["OFFSET"],
  });
});

test("a cell of a sheet that is not in the book counts as typed", () => {
  expect(reach({ S: { rows: [[1]] } }, "=DUCT.SOLVE(gone!B2)").typed).toEqual(["gone!B2"]);
});
