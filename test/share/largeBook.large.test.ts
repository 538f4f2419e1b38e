import { clubCopy } from "../../src/share/clubCopy";
import { sampleBook } from "./sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;

test("fifty thousand cells are copied whole", () => {
  const rows = Array.from({ length: 25_000 }, (_, row) => [row + 1]);
  const formulas = Object.fromEntries(
    rows.map((_, row) => {
      const at = row + 1;
      const code = at % 25 === 0 ? `=DUCT.AREA(A${at})` : at % 40 === 1 ? `=SUM(A$1:A${at})` : `=A${at}*2`;
      return [`B${at}`, { code, shows: [[at]] }] as const;
    }),
  );
  const solve = { code: "=DUCT.SOLVE(B1:B25000,A1:A25000)", shows: [[1]] } as const;
  const { book, live, fixed } = clubCopy(sampleBook({ Big: { rows, formulas: { ...formulas, D1: solve } } }), ORDER);
  expect(fixed).toHaveLength(1);
  expect(live).toBe(25_000);
  const last = book.workbook.sheets
    .flatMap(({ name, cells }) => (name === "Big" ? cells : []))
    .find(({ at }) => at === "B25000");
  expect(last).toMatchObject({ formula: expect.stringMatching(/^=.*A25000/) as string });
});
