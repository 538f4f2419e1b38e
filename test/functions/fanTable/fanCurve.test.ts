import "../../support/customFunctions";
import { fancurve } from "../../../src/functions/fan/fancurve";
import { solve } from "../../../src/functions/systems/solve";
import { relative } from "../../support/printed";
import { refusal } from "../../support/refusal";
import { type Row, table } from "../../support/tables";

type Answer = (string | number)[][];
type Call = (...args: unknown[]) => Answer;
const [FANCURVE, SOLVE] = [fancurve, solve] as unknown as [Call, Call];

/** An invented fan, and readings in a duct of 200 mm in front of it: v = Q / 3600 / (π/4 0.2²), p_v = 1.2014 v² / 2. */
const CURVE = [["m³/h", "Pa"], [0, 2600], [900, 2500], [1800, 2100], [2700, 1400], [3400, 500]]; // prettier-ignore
const READINGS: readonly Row[] = [
  { "Airflow (m³/h)": 500, Suction: 2300, After: null },
  { "Airflow (m³/h)": 1300, Suction: 2080 },
  { "Airflow (m³/h)": 2100, Suction: 1650 },
  { "Airflow (m³/h)": 2900, Suction: 1090 },
];
const read = (readings: readonly Row[], ...more: unknown[]): Answer => FANCURVE(table(readings), 200, ...more);
const sure = { "Air ±": 0.1, "Pressure ±": 0.1, Times: 100 };
const column = (answer: Answer, place: number): number[] => answer.slice(1).map((row) => Number(row[place]));

describe("FANCURVE", () => {
  // By hand at 2100 m³/h: v = 2100/3600 / 0.0314159 = 18.568 m/s, p_v = 0.6007 v² = 207.1 Pa, so 1650 of suction leave 1442.9 Pa;
  // behind the fan 120 Pa more make 1562.9.
  test.each([
    [null, 1442.9],
    [120, 1562.9],
  ])("takes fan static pressure from suction, velocity pressure and %p Pa after the fan", (after, pressure) => {
    const exact = READINGS.map((row): Row => ({ ...row, ...sure, After: after }));
    const only = exact.filter(({ "Airflow (m³/h)": airflow }) => airflow !== 500 && airflow !== 1300);
    const answer = read(only, CURVE, null, null, "SI"); // begins at 2100 m³/h
    expect(answer[0]!.slice(0, 2)).toEqual(["Airflow (m³/h)", "Fan static pressure (Pa)"]);
    expect(relative(column(answer, 0)[0]!, 2100)).toBeLessThan(1e-9);
    expect(Math.abs(column(answer, 1)[0]! - pressure)).toBeLessThan(0.5);
    expect(String(answer[1]![5]).includes("counts as blowing freely")).toBe(after === null);
  });

  test("readings under another unit than the call's are refused", () => {
    expect(refusal(() => read(READINGS))).toEqual({
      code: "#VALUE!",
      message: 'a header of readings must be with (cfm) or no unit in this call, unless its units are "SI"; got "Airflow (m³/h)"', // prettier-ignore
    });
  });

  test("a velocity is an airflow in that duct, and thin air makes less pressure of the same curve", () => {
    const flows = read(READINGS, CURVE, null, null, "SI");
    const speeds = READINGS.map(({ "Airflow (m³/h)": airflow, ...row }) => ({ ...row, Velocity: Number(airflow) / 3600 / (Math.PI / 4) / 0.04 })); // prettier-ignore
    read(speeds, CURVE, null, null, "SI").slice(1).forEach((row, index) =>
      row.slice(0, 3).forEach((cell, place) => expect(relative(Number(cell), Number(flows[index + 1]![place]))).toBeLessThan(1e-9)),
    ); // prettier-ignore
    // every pressure in air of half the density is half as large, the velocity pressure's too
    const half = READINGS.map((row) => ({ ...row, Suction: Number(row.Suction) / 2 }));
    read(half, CURVE, null, 1.201384 / 2, "SI").slice(1).forEach((row, index) =>
      expect(relative(Number(row[1]), Number(flows[index + 1]![1]))).toBeLessThan(1e-5),
    ); // prettier-ignore
  });

  test("tells the same in I-P", () => {
    const metric = read(READINGS, CURVE, "printed", null, "SI");
    const inches = FANCURVE(
      table(READINGS.map((row) => ({ Airflow: Number(row["Airflow (m³/h)"]) / 1.699010796, Suction: Number(row.Suction) / 248.84 }))), // prettier-ignore
      200 / 25.4,
      CURVE.map((row, index) =>
        index === 0 ? ["cfm", "in.w.g."] : [Number(row[0]) / 1.699010796, Number(row[1]) / 248.84],
      ),
      "printed",
    );
    expect(inches[0]!.slice(0, 2)).toEqual(["Airflow (cfm)", "Fan static pressure (in.w.g.)"]);
    expect(inches.length).toBe(metric.length);
    inches.slice(1).forEach(([airflow, pressure], index) => {
      expect(relative(Number(airflow) * 1.699010796, Number(metric[index + 1]![0]) || 1e-300)).toBeLessThan(airflow === 0 ? 2 : 1e-6); // prettier-ignore
      expect(relative(Number(pressure) * 248.84, Number(metric[index + 1]![1]))).toBeLessThan(1e-5);
    });
  });

  test("says how its curve lies to the printed one, and from where on only the print speaks", () => {
    const answer = read(READINGS, CURVE, "printed", null, "SI");
    const beyond = answer.slice(1).filter((row) => String(row[5]).includes("beyond what was read"));
    for (const [airflow] of beyond) expect(Number(airflow) < 500 || Number(airflow) > 2900).toBe(true);
    expect(beyond.length).toBeGreaterThan(2);
    expect(answer[1]![5]).toMatch(/^4 readings; each ± is two standard deviations/);
    for (const [, pressure, error, printed, share] of answer.slice(1)) {
      expect(Number(error)).toBeGreaterThan(0);
      if (printed !== "")
        expect(relative(Number(share), (100 * Number(pressure)) / Number(printed))).toBeLessThan(1e-12);
    }
    const alone = read(READINGS, null, null, null, "SI");
    expect(alone.slice(1).map((row) => [row[3], row[4]])).toEqual(alone.slice(1).map(() => ["", ""]));
  });

  test("a reading that fits no fan is named by its row", () => {
    const wrong = [...READINGS, { "Airflow (m³/h)": 1700, Suction: 190 }];
    expect(read(wrong, CURVE, null, null, "SI")[1]![5]).toMatch(/row 6 of readings is left out: its pressure is 0\.0\d+ times/); // prettier-ignore
  });

  test("SOLVE takes its first two columns as a curve", () => {
    const runs = [["Run", "To", "Diameter (mm)", "Hood", "K"], ["saw", "fan", 150, 0.5, 4]]; // prettier-ignore
    const curve = read(READINGS, CURVE, null, null, "SI").map((row) => row.slice(0, 2));
    // p = (1 + 0.5 + 4) p_v(Q) less p_v, since fan static pressure leaves the inlet's velocity pressure out
    const [, saw] = SOLVE(runs, curve, null, null, "SI");
    const airflow = Number(saw![1]);
    const v = airflow / 3600 / (Math.PI / 4) / 0.15 ** 2;
    const asked = 4.5 * 0.600692 * v ** 2;
    const [left, right] = [curve.slice(1).filter(([q]) => Number(q) <= airflow).at(-1), curve.slice(1).find(([q]) => Number(q) > airflow)]; // prettier-ignore
    expect(asked).toBeLessThanOrEqual(Number(left![1]));
    expect(asked).toBeGreaterThanOrEqual(Number(right![1]));
  });

  test.each<[string, readonly unknown[], string]>([
    ["a table without suction", [table([{ Airflow: 400 }]), 200], "readings must be a table whose first row has the headers Suction and Velocity or Airflow; got \"Airflow\""], // prettier-ignore
    ["a header twice", [[["Airflow", "Airflow (cfm)", "Suction"], [1, 2, 3]], 200], "readings must be headed by each column once, not twice; got \"Airflow\""], // prettier-ignore
    ["a single throttle", [table(READINGS.slice(0, 1)), 200, CURVE, null, null, "SI"], "readings must be at 2 different airflows at least beside a curve; got 1"], // prettier-ignore
    ["two without a curve", [table(READINGS.slice(0, 2)), 200, null, null, null, "SI"], "readings must be at 3 different airflows at least where no curve is given; got 2"], // prettier-ignore
    ["a word under Use that may mean either", [table([{ ...READINGS[0]!, Use: "n" }, ...READINGS.slice(1)]), 200, CURVE, null, null, "SI"], "Use in row 2 of readings must be \"no\" for a row that is left aside, or blank; got \"n\""], // prettier-ignore
    ["an error typed with its sign", [table([{ ...READINGS[0]!, "Air ±": 0.04 }, ...READINGS.slice(1)]), 200, CURVE, null, null, "SI"], "Air ± in row 2 of readings must be from 0.1 to 100; got 0.04"], // prettier-ignore
    ["a throttle without a suction", [table([...READINGS, { "Airflow (m³/h)": 800 }]), 200, CURVE, null, null, "SI"], "Suction in row 6 of readings must be given; got a blank cell"], // prettier-ignore
    ["no air told", [table([...READINGS, { Suction: 800 }]), 200, CURVE, null, null, "SI"], "Airflow in row 6 of readings must be given; got a blank cell"], // prettier-ignore
    ["velocity and airflow", [table([{ Airflow: 500, Velocity: 9, Suction: 2300 }]), 200, CURVE, null, null, "SI"], "Airflow in row 2 of readings must be left out beside a velocity; got 500"], // prettier-ignore
    ["a pressure after the fan here and there", [table([...READINGS, { "Airflow (m³/h)": 800, Suction: 2200, After: 30 }]), 200, CURVE, null, null, "SI"], "After in row 2 of readings must be given in every row, or in none; got a blank cell"], // prettier-ignore
    ["a duct so narrow that nothing is left", [table(READINGS), 60, CURVE, null, null, "SI"], "Suction in row 3 of readings must be more than the velocity pressure of that airflow in this diameter; got 2080"], // prettier-ignore
    ["a reach of its own", [table(READINGS), 200, CURVE, "far", null, "SI"], "reach must be \"read\" or \"printed\"; got \"far\""], // prettier-ignore
    ["no diameter", [table(READINGS), null, CURVE, null, null, "SI"], "diameter must be a number (mm); got a blank cell"], // prettier-ignore
  ])("refuses %s", (_, given, message) => {
    expect(refusal(() => FANCURVE(...given))).toEqual({ code: "#VALUE!", message });
  });

  test("a row set aside counts for nothing, and neither does a blank one", () => {
    const more = [...READINGS, { "Airflow (m³/h)": 1000, Suction: 10, Use: "no" }, { Suction: null }];
    expect(read(more, CURVE, null, null, "SI")).toEqual(read(READINGS, CURVE, null, null, "SI"));
  });
});
