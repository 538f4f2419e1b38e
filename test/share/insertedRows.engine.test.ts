/**
 * A row that a member inserts into a fan's curve or among readings, in LibreOffice: the steps of a copy have no line for it. So what would leave it
 * out has no answer; what comes of many runs, and what stands row by row, does as before.
 */
import "../support/customFunctions";
import { writeBook } from "../../src/hosts/file/writeBook";
import { clubCopy } from "../../src/share/clubCopy";
import { type Edit, editsInOffice } from "../support/editsInOffice";
import { hasLibreOffice } from "../support/libreOffice";
import { sampleBook } from "./sampleBooks";

const ORDER = { kind: "formulas", date: "2026-11-25", version: "0.2.0" } as const;
const NOT_AVAILABLE = "#32767"; // LibreOffice's own number of #N/A

const book = sampleBook({
  // a straight line falls on itself: 8 - 0.006 q
  Fan: {
    rows: [
      ["Airflow (cfm)", "Pressure (in.w.g.)"],
      [0, 8],
      [500, 5],
      [1000, 2],
    ],
  },
  Read: { rows: [[3000], [4000], [5000]] },
  Ducts: { rows: [["Run", "To", "Diameter", "Length", "Hood"], ["saw", "fan", 5, 9, 0.9], [null, null, null, null, null]] }, // prettier-ignore
  A: {
    formulas: {
      A1: { code: "=DUCT.FANPRESSURE(Fan!A1:B4,250)", shows: [[6.5]] },
      A2: { code: "=DUCT.TRAVERSE(Read!A1:A3)", shows: [[4000]] },
      A3: { code: "=SUM(DUCT.AIRFLOW(Read!A1:A3,6))", shows: [[2356]] },
      B1: { code: "=DUCT.AIRFLOW(Read!A1:A3,6)", shows: [[589], [785], [982]] },
      E1: { code: "=DUCT.FANLAW(Fan!A1:B4,1)", shows: [["Airflow (cfm)", "Pressure (in.w.g.)"], [0, 8], [500, 5], [1000, 2]] }, // prettier-ignore
      H1: { code: "=DUCT.SOLVE(Ducts!A1:E3,Fan!A1:B4)", shows: [["Run"]] },
    },
  },
});

/** Area of 6 in: pi/4 x 0.5² ft². */
const AREA = 0.1963495;

(hasLibreOffice ? test : test.skip)("a row inserted where it would be left out leaves no number", async () => {
  const bytes = await writeBook({ workbook: clubCopy(book, ORDER).book.workbook, shown: new Map() }, { title: "rows" });
  const insert = (sheet: string, row: number): Edit => ({ sheet, does: "insert row", row });
  const [plain, fan, read, runs] = editsInOffice(
    bytes,
    [
      [],
      [insert("Fan", 3), { sheet: "Fan", does: "type", at: "A3", value: 250 }, { sheet: "Fan", does: "type", at: "B3", value: 7 }], // prettier-ignore
      [{ sheet: "Fan", does: "open anew" }, insert("Read", 2), { sheet: "Read", does: "type", at: "A2", value: 8000 }],
      [{ sheet: "Fan", does: "open anew" }, insert("Ducts", 2)],
    ],
    [{ sheet: "A", range: "A1:I4" }],
  ).map(([look]) => look!);
  const flows = (seen: typeof plain): unknown => seen!.flat().some((cell, at) => at > 8 && typeof cell === "number" && at % 9 === 8); // prettier-ignore
  expect(plain!.slice(0, 2).map(([first]) => first)).toEqual([6.5, 4000]);
  expect(plain![2]![0]).toBeCloseTo(AREA * 12_000, 2);
  expect([plain, fan, read, runs].map(flows)).toEqual([true, false, true, true]);
  expect([fan![0]![0], fan![1]![4]]).toEqual([NOT_AVAILABLE, NOT_AVAILABLE]);
  expect(fan![1]![0]).toBe(4000);
  expect(read!.slice(0, 3).map(([first]) => first)).toEqual([6.5, NOT_AVAILABLE, NOT_AVAILABLE]);
  expect(read![1]![1]).toBeCloseTo(AREA * 4000, 2); // the reading that stands there has its own
});
