import { transport } from "../../../src/reference/transport";
import { leakNotes, speedNotes } from "../../../src/functions/runsTable/notes";

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
