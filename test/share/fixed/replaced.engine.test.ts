/** A find-and-replace over all sheets of a copy changes what is kept of a fixed number's inputs along with them: it is told as old all the same. */
import { clubCopy } from "../../../src/share/clubCopy";
import { fixedAddress } from "../../../src/sheets/address";
import type { CellValue } from "../../../src/sheets/workbook";
import { hardRecalculation } from "../../support/hardRecalculation";
import { ironCalc } from "../../support/ironCalc";
import { hasLibreOffice } from "../../support/libreOffice";
import { sampleBook } from "../sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "1.1.0" } as const;
const FRESH = "as of 2026-11-25";
const OLD = "inputs changed since: these numbers are old";

/** What was typed, what is looked for, and what comes in its place; the last row has nothing that is found. */
const REPLACED: readonly (readonly [CellValue, string, string])[] = [
  [550, "550", "600"],
  [52.5, "52.5", "60"],
  [-0.196, "0.196", "0.2"],
  [1200, "1200", "1400"],
  ["10 as it hangs", "10 as it", "15 as it"],
  ["open; shut", "shut", "open"],
  [70, "80", "90"],
];

const replace = (value: CellValue, from: string, to: string): CellValue => {
  const text = String(value).replaceAll(from, to);
  return typeof value === "number" ? Number(text) : text;
};

/** A copy in which a fixed number beside each input uses that alone, after all of it was replaced on all sheets, formulas too. */
function replacedCopy() {
  const { workbook } = clubCopy(
    sampleBook({
      Inputs: { rows: REPLACED.map(([value]) => [value]) },
      Answers: {
        formulas: Object.fromEntries(
          REPLACED.map((_, index) => [
            `A${index + 1}`,
            {
              code: `=DUCT.SOLVE(Inputs!${fixedAddress(1, index + 1)},Inputs!${fixedAddress(1, index + 1)})`,
              shows: [[0]],
            },
          ]),
        ),
      },
    }),
    ORDER,
  ).book;
  const inAll = (text: string): string => REPLACED.reduce((now, [, from, to]) => now.replaceAll(from, to), text);
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) => {
        if ("formula" in cell) return { ...cell, formula: inAll(cell.formula) };
        return { ...cell, value: REPLACED.reduce((now, [, from, to]) => replaceTyped(now, from, to), cell.value) };
      }),
    })),
  };
}

const replaceTyped = (value: CellValue, from: string, to: string): CellValue =>
  typeof value === "number" || typeof value === "string" ? replace(value, from, to) : value;

const expected = REPLACED.map((_, index) => (index === REPLACED.length - 1 ? FRESH : OLD));

test("is told in the independent engine", () => {
  const values = ironCalc(replacedCopy()).get("Answers")!;
  expect(REPLACED.map((_, index) => values.get(`B${index + 1}`))).toEqual(expected);
});

(hasLibreOffice ? test : test.skip)("is told in LibreOffice", async () => {
  const values = (await hardRecalculation(replacedCopy())).get("Answers")!;
  expect(REPLACED.map((_, index) => values.get(`B${index + 1}`))).toEqual(expected);
});
