/** A whole column by mistake, or on purpose: it must not keep a host waiting, nor hand it more than it takes. */
import "../support/customFunctions";
import { MOST_ANSWERS, MOST_WRONG } from "../../src/functions/answer";
import { velocity } from "../../src/functions/duct/velocity";
import { losscoefficient } from "../../src/functions/losses/losscoefficient";
import { budget } from "../../src/functions/systems/budget";
import { refusal, shown } from "../support/refusal";

const ROWS = 1_048_576; // of a sheet
const wholeColumn = (filled: readonly unknown[], blank: unknown): unknown[][] =>
  Array.from({ length: ROWS }, (_, row) => [filled[row] ?? blank]);

test.each([null, 0, ""])("ranges that are whole columns end at the last filled row, where blanks are %p", (blank) => {
  const answers = velocity(wholeColumn([350, blank, 500, 700], blank), wholeColumn([4, 4, 5], blank));
  expect(answers.map(([cell]) => shown(cell))).toEqual([
    velocity([[350]], [[4]])[0]![0],
    blank === 0 ? 0 : "#VALUE! airflow must be given; got a blank cell",
    velocity([[500]], [[5]])[0]![0],
    "#VALUE! diameter must be given; got a blank cell",
  ]);
  const table = [["Run", "To", "Diameter", "Length", "Airflow"], ["saw", "fan", 4, 10, 400]]; // prettier-ignore
  const whole = [...table, ...Array.from({ length: ROWS - 2 }, () => table[0]!.map(() => blank))];
  expect(budget(whole)).toEqual(budget(table));
});

test("ranges that are whole columns with a number to the last row are refused", () => {
  const column = wholeColumn([], 350);
  expect(refusal(() => velocity(column, [[4]])).message).toBe(
    `the answer must be at most ${MOST_ANSWERS} cells in all; got "${ROWS} by 1 cells"`,
  );
});

test("ranges with more wrong cells than anybody could mend are refused as a whole, with the first one's sentence", () => {
  const long = "a name that nobody ever gave to any fitting of a duct";
  const wrong = (cells: number): unknown[][] => [["elbow 1.5"], ...Array.from({ length: cells }, () => [long])];
  const { code, message } = refusal(() => losscoefficient(wrong(MOST_WRONG + 1)));
  expect(code).toBe("#VALUE!");
  expect(message).toMatch(/^more than 1000 cells are wrong; of the first: fitting must be a fitting's name/);
  const answers = losscoefficient(wrong(MOST_WRONG));
  expect(answers.at(-1)!.map(shown)).toEqual([expect.stringMatching(/^#VALUE! fitting must be/)]);
});

test("ranges of as many cells as may be stay below the 5 MB that a host takes", () => {
  const answers = velocity(
    Array.from({ length: MOST_ANSWERS }, (_, row) => [100 + row / 7]),
    [[4]],
  );
  expect(answers).toHaveLength(MOST_ANSWERS);
  expect(JSON.stringify(answers).length).toBeLessThan(5e6);
});
