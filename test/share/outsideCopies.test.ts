/** What the owner's own sheets ask of other places is in no copy: its reader would be the one who asks. */
import { clubCopy } from "../../src/share/clubCopy";
import { revive } from "../../src/share/revive/revive";
import { sampleBook } from "./sampleBooks";

const FORMULAS = {
  B1: { code: '=WEBSERVICE("http://example.org/")', shows: [["a price"]] },
  B2: { code: "=cmd|'/C calc'!A0", shows: [[7]] },
  B3: { code: '=_xlfn.IMAGE("https://example.org/x.png")', shows: [[{ error: "#NAME?" }]] },
  B4: { code: "=[1]Sheet1!A1*2", shows: [[12.5]] },
  B5: { code: '=DUCT.AREA(4)*WEBSERVICE("http://example.org/")', shows: [[3]] },
  B6: { code: "=SUM(B2:B5)", shows: [[22.5]] },
} as const;
const book = sampleBook({ Prices: { formulas: FORMULAS } });
const REASONS = [
  "B1: it asks another place for its value (WEBSERVICE)",
  "B2: it asks another program for its value (a DDE link)",
  "B3: it asks another place for its value (IMAGE)",
  "B4: it reads another workbook",
  "B5: it asks another place for its value (WEBSERVICE)",
];

test.each(["formulas", "values"] as const)("a copy of %s keeps what they showed, and lists them", (kind) => {
  const copy = clubCopy(book, { kind, date: "2026-11-25", version: "0.2.0" });
  expect(copy.untranslated.map(({ at, why }) => `${at}: ${why}`)).toEqual(REASONS);
  const sheet = copy.book.workbook.sheets.find(({ name }) => name === "Prices")!;
  const content = Object.fromEntries(
    sheet.cells.map((cell) => [cell.at, "formula" in cell ? cell.formula : cell.value]),
  );
  expect(content).toEqual({
    B1: "a price",
    B2: 7,
    B3: kind === "values" ? "#NAME?" : "=NA()",
    B4: 12.5,
    B5: 3,
    B6: kind === "values" ? 22.5 : "=SUM(B2:B5)",
    ...(kind === "values" ? { C1: "values of 2026-11-25: nothing here recalculates" } : {}),
  });
  const about = copy.book.workbook.sheets[0]!.cells.flatMap((cell) => ("value" in cell ? [cell.value] : []));
  for (const reason of REASONS) {
    expect(about).toContain(`Prices!${reason.slice(0, 2)}`);
    expect(about).toContain(reason.slice(4));
  }
  const formulas = copy.book.workbook.sheets.flatMap(({ cells }) =>
    cells.flatMap((cell) => ("formula" in cell ? [cell.formula] : [])),
  );
  expect(formulas.filter((formula) => /webservice|image|\||\[/i.test(formula))).toEqual([]);
});

test("made live again, the budget tells which of them it does not have", () => {
  const withOurs = sampleBook({ Prices: { formulas: { ...FORMULAS, D1: { code: "=DUCT.AREA(4)", shows: [[0.1]] } } } });
  const { left, workbook } = revive(
    clubCopy(withOurs, { kind: "formulas", date: "2026-11-25", version: "0.2.0" }).book,
  );
  expect(left).toEqual(REASONS.map((reason) => `Prices!${reason}`));
  expect(workbook!.sheets[0]!.cells).toContainEqual({ at: "D1", formula: "=DUCT.AREA(4)" });
});
