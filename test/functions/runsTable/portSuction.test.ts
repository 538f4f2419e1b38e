/** A machine's port by the static suction that it takes at an airflow: K = p / p_v - 1, and by the names of the table hoods. */
import "../../support/customFunctions";
import { budget } from "../../../src/functions/systems/budget";
import { gains } from "../../../src/functions/systems/gains";
import { losscoefficient } from "../../../src/functions/losses/losscoefficient";
import { reference } from "../../../src/functions/lookingUp/reference";
import { byName, type Row, table } from "../../support/tables";

const AIR = 1.2;
const answerOf = (rows: readonly Row[]) => byName(budget(table(rows), [[AIR]], [["SI"]]));
const fan: Row = { Run: "main", To: "fan", Diameter: 160 };

/*
 * A planer's manual: 900 Pa at 1450 m3/h in 160 mm. A = 0.0201062 m2, V = 20.0325 m/s; in standard air (1.201385 kg/m3)
 * p_v = 241.059 Pa, K = 900/241.059 - 1 = 2.73353. At 1000 m3/h and 1.2 kg/m3: V = 13.8155 m/s, p_v = 114.521 Pa, so the
 * entry costs 313.046 Pa.
 */
const planer: Row = {
  Run: "planer",
  To: "main",
  Diameter: 160,
  Airflow: 1000,
  "Port suction": 900,
  "Port airflow": 1450,
};

test("the entry costs what the machine takes beyond the velocity pressure, by the square of the airflow", () => {
  expect(answerOf([planer, fan]).planer!["Suction at its end"]).toBeCloseTo(313.046, 2);
});

test("is an open end like one with a hood", () => {
  expect(answerOf([planer, fan]).Fan!.Airflow).toBeCloseTo(1000, 9);
});

test.each<[string, Row, string]>([
  [
    "a suction without its airflow",
    { "Port airflow": null },
    'Port airflow of run "planer" (row 2) must be given beside a port suction; got a blank cell',
  ],
  [
    "an airflow without its suction",
    { "Port suction": null },
    'Port suction of run "planer" (row 2) must be given beside a port airflow; got a blank cell',
  ],
  [
    "a hood beside it",
    { Hood: "plain end" },
    'Hood of run "planer" (row 2) must be left blank beside a port suction, which says how the air enters; got "plain end"',
  ],
  [
    "less than the velocity pressure",
    { "Port suction": 200 },
    'Port suction of run "planer" (row 2) must be at least the velocity pressure of that airflow in this diameter, since the air must be brought to that speed; got 200',
  ],
])("%s is refused", (_what, facts, message) => {
  expect(budget(table([{ ...planer, ...facts }, fan]), [[AIR]], [["SI"]])[1]!.at(-1)).toBe(message);
});

describe("the ports of the table hoods", () => {
  // p / p_v - 1 with p_v = 0.5 x 1.201385 x 20^2 = 240.277 Pa; the shaper's body: 600 m3/h in 120 mm is 14.7366 m/s, 130.450 Pa.
  test.each([
    ["jointer port", 900, 240.277],
    ["planer port", 550, 240.277],
    ["table saw both ports", 1200, 240.277],
    ["shaper body", 800, 130.45],
  ])("%s takes %d Pa as its manual prints", (name, pascal, velocityPressure) => {
    const k = Number(losscoefficient([[name]])[0]![0]);
    expect(Math.abs(k - (pascal / velocityPressure - 1))).toBeLessThan(0.006);
  });

  test("show the static suction at 20 m/s as manuals print it, and a range around their K", () => {
    const read = (column: string): number =>
      Number((reference([["hoods"]], [["jointer port"]], [[column]]) as number[][])[0]![0]);
    expect(Math.abs(read("static suction at 20 m/s (Pa)") - 900)).toBeLessThan(2);
    expect(read("low")).toBeLessThan(2.75);
    expect(read("high")).toBeGreaterThan(2.75);
  });

  test("are no entry that another could replace, and keep their own size where the pipe behind them grows", () => {
    const curve = [
      [0, 2500],
      [3000, 500],
    ];
    const changes = (hood: string): unknown[] =>
      gains(
        table([{ ...planer, "Port suction": null, "Port airflow": null, Hood: hood, Length: 3 }, fan]),
        curve,
        [["planer"]],
        undefined,
        [[AIR]],
        [["SI"]],
      ).map((row) => row[1]);
    expect(changes("plain end").join()).toContain("entry improved");
    expect(changes("planer port").join()).not.toContain("entry improved");
  });
});
