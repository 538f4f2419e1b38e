import fc from "fast-check";
import "../../support/customFunctions";
import { budget } from "../../../src/functions/systems/budget";
import { gains } from "../../../src/functions/systems/gains";
import { scenarios } from "../../../src/functions/systems/scenarios";
import { solve } from "../../../src/functions/systems/solve";
import { type Row, table } from "../../support/tables";
import { FAN, tightSaw } from "../flowTable/shop";

const rows: Row[] = [
  { ...tightSaw, Leak: 0.2, "Leak open": 0.1, Fittings: "elbow 1; branch 30", Flex: 4, Dust: "heavy dust" },
  { ...tightSaw, Run: "sander", Gate: "shut", "Leak shut": "shut packed", K: 0.2, Material: "pvc pipe" },
  { Run: null, To: null, Diameter: null },
  { Run: "main", To: "fan", Diameter: 6, Length: 12, "Device loss": 1, "Device airflow": 600, "Device exponent": 1 },
  { Run: "stack", To: "outside", Diameter: 7, Length: 5, Side: "discharge", "Device clean loss": 0.3 },
];

const straight = table(rows);
const width = straight[0]!.length;

/** A column of the user's own, which nobody reads. */
const own = ["Bought in", 2019, "", "no", 7, null];

/** What each function that takes a table of runs says of it, in the order of its rows. */
const said = (runs: unknown[][]): unknown[] => [
  budget(runs),
  solve(runs, FAN),
  solve(runs, FAN, [["all"]]),
  scenarios(runs, FAN, [["saw"], ["all"]]),
  gains(runs, FAN, [["saw"]]),
];

test("a table's columns may stand in any order, with others among them: every answer is the same", () => {
  const expected = said(straight);
  const orders = fc.shuffledSubarray(
    Array.from({ length: width }, (_, place) => place),
    { minLength: width },
  );
  fc.assert(
    fc.property(orders, fc.nat({ max: width }), (order, place) => {
      const shuffled = straight.map((line, row) => {
        const cells = order.map((column) => line[column]!);
        return [...cells.slice(0, place), own[row]!, ...cells.slice(place)];
      });
      expect(said(shuffled)).toEqual(expected);
    }),
  );
});

test("a column moved under another header is another table", () => {
  const other: Record<string, string> = { Length: "Flex", Flex: "Length" };
  const swapped = [straight[0]!.map((name) => other[String(name)] ?? name), ...straight.slice(1)];
  expect(budget(swapped)).not.toEqual(budget(straight));
});
