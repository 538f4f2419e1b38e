import { addNewSheets } from "../../../src/hosts/excel/addNewSheets";
import { readBook } from "../../../src/hosts/excel/readBook";
import { shareCopy } from "../../../src/hosts/excel/shareCopy";
import { record, type Recorder } from "../../support/excelRecorder/recorder";
import { sample } from "./sample";
import { watching } from "./watch";

/** A book whose formulas Excel computes when its user presses F9, and not before. */
function manual(): Recorder {
  const excel = record();
  excel.book.calculationMode = "Manual";
  return excel;
}

describe("a book that is calculated when asked", () => {
  test("is read as such", async () => {
    manual();
    expect((await readBook()).settings).toEqual(["calculates when asked"]);
  });

  test.each(["formulas", "values"] as const)(
    "gets no copy of %s: nobody could tell old numbers in it",
    async (kind) => {
      const excel = manual();
      const make = jest.fn();
      expect(await shareCopy(kind, watching().watch, make)).toEqual({
        made: false,
        why: "Excel calculates only when asked, so a copy could hold numbers of before your last change: set Formulas › Calculation Options to Automatic, then make it again. No copy was made.",
      });
      expect(make).not.toHaveBeenCalled();
      expect(excel.opened).toEqual([]);
    },
  );

  test("gets its new sheets, with a word that they may not be computed", async () => {
    manual();
    expect(await addNewSheets(async () => sample, watching().watch)).toMatchObject({
      added: true,
      refused: [
        "Excel calculates only when asked, so cells may show old numbers: press F9, or set Formulas › Calculation Options to Automatic.",
      ],
    });
  });
});

test("a book that rounds its numbers as it shows them is read as such", async () => {
  record().book.usePrecisionAsDisplayed = true;
  expect((await readBook()).settings).toEqual(["rounds as shown"]);
});

test("a book in an Excel that goes round in circles is read as such", async () => {
  record().book.iterates = true;
  expect((await readBook()).settings).toEqual(["counts in circles"]);
});

test.each(["Automatic", "AutomaticExceptTables"] as const)("%s calculation is nothing to be told", async (mode) => {
  record().book.calculationMode = mode;
  expect((await readBook()).settings).toEqual([]);
  expect(await addNewSheets(async () => sample, watching().watch)).toMatchObject({ added: true, refused: [] });
});

test("a book with a cell that still waits for its answer gets no copy, and it is named", async () => {
  const excel = record();
  excel.behaviour.calculate = (formula) => (formula.includes("AREA") ? "#BUSY!" : 1);
  excel.fill("My ducts", "A1:A2", [["=DUCT.VELOCITY(400,4)"], ["=DUCT.AREA(4)"]]);
  const make = jest.fn();
  expect(await shareCopy("values", watching().watch, make)).toEqual({
    made: false,
    why: "'My ducts'!A2 still waits for its answer, so a copy would lack it: wait a moment, then make it again, or enter it anew by Repair below. No copy was made.",
  });
  expect(make).not.toHaveBeenCalled();
});
