/** BUDGET in a copy while rows are wrong: what it says of each row, held against BUDGET itself on the same table. */
import { answerOf, copied, type Table } from "./inGrid";
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

/*
 * Where losses go by what meets at a junction, a run beside one that may name a branch costs what nobody knows. A list that cannot be
 * read may name one; one that can be read and is outside its table names what it names.
 */
test("beside a run whose fittings cannot be read the copy shows no loss of the junction, as BUDGET does not", () => {
  const waits = ["x2", true, -1, "brunch 45", "elbow 1.5; elbwo", "branch 95", "elbow 1.2.5"];
  const known = ["elbow 9", "elbow 0.4"];
  const table: Table = [
    ["Run", "To", "Diameter", "Length", "Airflow", "Fittings", "Hood"],
    ...[...waits, ...known].flatMap((fittings, junction) => [
      [`saw ${junction}`, `main ${junction}`, 100, 3, 600, fittings, 0.9],
      [`sound ${junction}`, `main ${junction}`, 100, 3, 600, "elbow 1.5", 0.9],
      [`main ${junction}`, "trunk", 150, 3, null, null, null],
    ]),
    ["trunk", "fan", 400, 3, null, null, null],
  ];
  const answer = answerOf(table, "SI") as unknown[][];
  const isUnknown = [...waits, ...known].map((_, junction) => answer[3 * junction + 2]![5] instanceof CustomFunctions.Error); // prettier-ignore
  expect(isUnknown).toEqual([...waits.map(() => true), ...known.map(() => false)]);
  expect(wrongIn(answer, "Answer0", copied([table], "SI", [[[null]]]))).toEqual([]);
});
