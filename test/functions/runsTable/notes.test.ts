import { transport } from "../../../src/reference/transport";
import { inUnit } from "../../../src/functions/runsTable/inUnit";
import { leakNotes, speedNotes } from "../../../src/functions/runsTable/notes";

test.each([
  [0.47194745, "airflow", "IP", "1000 cfm"], // 1 cfm = 0.00047194745 m3/s
  [0.047194745, "airflow", "IP", "100 cfm"],
  [0.0470531, "airflow", "IP", "99.7 cfm"],
  [20, "velocity", "SI", "20 m/s"],
  [20, "velocity", "IP", "3937 fpm"],
  [1.23456, "pressure", "SI", "1.23 Pa"],
  [-0.5, "velocity", "SI", "-0.5 m/s"],
  [-2.54, "velocity", "IP", "-500 fpm"], // 1 fpm = 0.00508 m/s
  [0, "pressure", "IP", "0 in.w.g."],
] as const)("%p of %s in %s is %s", (value, quantity, system, words) =>
  expect(inUnit(value, quantity, system)).toBe(words),
);

describe("what the velocity of dust is worth saying", () => {
  const dust = transport.find(({ key }) => key === "wood dust")!; // 20 and 28 m/s
  const settles = ['dust settles: "wood dust" needs 20 m/s'];
  const fast = ["too fast: over 28 m/s only costs pressure and wears the duct"];

  test.each([
    [0, settles],
    [19.99, settles],
    [20, []],
    [28, []],
    [28.01, fast],
  ])("%p m/s", (velocity, notes) => expect(speedNotes(dust, velocity, "SI")).toEqual(notes));

  test("dust of which no upper limit is known is never too fast", () => {
    const endless = transport.find(({ key }) => key === "heavy moist waste")!;
    expect(endless.high).toBeNull();
    expect(speedNotes(endless, 100, "SI")).toEqual([]);
  });
});

test("a leak is worth a word beyond a tenth of the air", () => {
  expect(leakNotes(0.1, 1)).toEqual([]);
  expect(leakNotes(0.101, 1)).toEqual(["its leak carries 10 % of its air"]);
  expect(leakNotes(0.06, 0.5)).toEqual(["its leak carries 12 % of its air"]);
  expect(leakNotes(0, 0)).toEqual([]);
});
