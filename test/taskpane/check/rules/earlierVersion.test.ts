import packageJson from "../../../../package.json";
import { about } from "../../../../src/functions/lookingUp/about";
import { foundIn } from "../../../support/books";

const bookOf = (version: string, formula = "=DUCT.ABOUT()") => ({
  About: {
    rows: [
      ["Duct Ledger", "version", version],
      ["Tables of", "date", "2026-11-20"],
    ],
    at: { column: 2, row: 21 },
    formulas: { B21: formula },
  },
});

test("an answer of ABOUT by another version is told, with the way to compute all anew", () => {
  expect(foundIn(bookOf("1.0.0"))).toEqual([
    {
      rule: "Numbers of another version",
      what: `D21 says that version 1.0.0 computed it; this is ${packageJson.version}.`,
      sheet: "About",
      at: "B21",
    },
  ]);
});

test.each([
  ["this version", bookOf(packageJson.version)],
  ["another formula beside such words", bookOf("1.0.0", "=SUM(1)")],
  ["an answer that shows something else", { About: { rows: [["#", "of", "x"]], formulas: { A1: "=DUCT.ABOUT()" } } }],
])("%s is none", (_, sheets) => expect(foundIn(sheets)).toEqual([]));

test("what ABOUT answers now is of this version", () => {
  const [first] = about() as string[][];
  const rows = [first!];
  expect(foundIn({ About: { rows, formulas: { A1: "=DUCT.ABOUT()" } } })).toEqual([]);
  expect(first).toContain(packageJson.version);
});
