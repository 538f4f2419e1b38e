/** BUDGET in a copy while rows are wrong: what it says of each row, held against BUDGET itself on the same table. */
import { answerOf, copied } from "./inGrid";
import { wrongIn, wrongTable } from "./wrongTables";

/** So many tables by lot. More are asked by hand: WRONG_TABLES=300 */
const TABLES = Number(process.env.WRONG_TABLES ?? 10);

test("tables drawn by lot with a wrong row or two: each says what BUDGET says, row by row", () => {
  const tables = Array.from({ length: TABLES }, (_, seed) => wrongTable(1 + seed));
  const counts = { whole: 0, part: 0 };
  for (const units of ["SI", "IP"] as const) {
    const own = tables.filter((_, index) => (index % 2 === 1) === (units === "SI"));
    const answers = own.map((table) => answerOf(table, units) as unknown[][]);
    const values = copied(own, units, own.map(() => [[null]])); // prettier-ignore
    answers.forEach((answer, index) => {
      const isPart = answer.some((row) => row.some((cell) => cell instanceof CustomFunctions.Error));
      counts[isPart ? "part" : "whole"]++;
      expect([own[index], wrongIn(answer, `Answer${index}`, values)]).toEqual([own[index], []]);
    });
  }
  expect(counts.part).toBeGreaterThan(TABLES / 2);
});
