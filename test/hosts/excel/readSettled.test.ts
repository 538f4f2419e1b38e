import { readBook } from "../../../src/hosts/excel/readBook";
import { readSettled } from "../../../src/hosts/excel/readSettled";
import { shareCopy } from "../../../src/hosts/excel/shareCopy";
import { record, type Recorder } from "../../support/excelRecorder/recorder";
import { watching } from "./watch";

/** A book whose answer shows these in turn, one for each reading; the last of them stays. */
async function changing(...shows: readonly number[]): Promise<Recorder> {
  const excel = record();
  excel.fill("Sheet1", "A1:B1", [[4, "=DUCT.AREA(A1)"]]);
  const first = excel.requests();
  await readBook();
  const ofReading = excel.requests() - first;
  let made = 0;
  excel.behaviour.beforeSync = () => {
    const reading = Math.floor(made++ / ofReading);
    excel.book.sheets[0]!.cells.get("B1")!.value = shows[Math.min(reading, shows.length - 1)]!;
  };
  return excel;
}

const answerIn = (book: Awaited<ReturnType<typeof readSettled>>): unknown =>
  book?.shown.get("Sheet1")?.get("B1")?.value;

test.each([
  [[7], 7],
  [[7, 8], 8], // the first was of before a change
  [[7, 8, 9], 9],
])("an answer that shows %j in turn is read as %d, when two readings agree", async (shows, settled) => {
  await changing(...shows);
  expect(answerIn(await readSettled(watching().watch.signal))).toBe(settled);
});

test("a copy of values is made of what has settled, and none where nothing does", async () => {
  await changing(7, 8);
  const make = jest.fn(async () => ({ made: false as const, why: "Enough was seen." }));
  expect(await shareCopy("values", watching().watch, make)).toEqual({ made: false, why: "Enough was seen." });
  expect(answerIn((make.mock.calls as unknown as [Parameters<typeof answerIn>[0]][])[0]![0])).toBe(8);
  make.mockClear();
  await changing(1, 2, 3, 4, 5);
  expect(await shareCopy("values", watching().watch, make)).toEqual({
    made: false,
    why: "The cells go on changing, so a copy could hold numbers of before: wait until Excel has finished calculating, then make it again. No copy was made.",
  });
  expect(make).not.toHaveBeenCalled();
});
