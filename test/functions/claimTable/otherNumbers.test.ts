/** Numbers of a data sheet that are not the ones asked for: a peak where a rating is, one inlet of two. Nothing is judged by them. */
import { allRowsOf, rowsOf, told } from "./claimCalls";

// 5 hp is 3.73 kW; 1000 cfm at 8 in.w.g. is 1.26 hp, so as a rating 5 hp would hold and 0.5 hp would be impossible.
describe("a motor's power that is no rating", () => {
  test.each([
    ["motor power", "5 peak hp", 5],
    ["motor power", "5 hp peak", 5],
    ["motor power", "5 HP (peak)", 5],
    ["motor power", "0.5 HP max. developed", 0.5],
    ["motor power", "2 hp maximum developed", 2],
    ["motor power", "1491.4 W max", 2],
    ["motor power", "1491.4 W input", 2],
    ["motor power", "1491.4 W (P1)", 2],
    ["peak hp", 5, 5],
    ["Peak power", "5 hp", 5],
    ["Peak horsepower", 5, 5],
    ["HP (peak)", 5, 5],
    ["Motor (max. developed)", 5, 5],
    ["Motor power (P1) (W)", 1491.4, 2],
    ["Input power (W)", 1491.4, 2],
    ["Power input", "1491.4 W", 2],
  ])("%s = %p is told as none, and nothing is judged by it", (name, typed, hp) => {
    const rows = rowsOf({ "rated point": "1000 at 8", efficiency: 60, volts: 120, amps: 15, phases: 1, [name]: typed });
    expect(Object.keys(rows)).toEqual(["Motor power", "Air power against the supply", "Efficiency"]);
    expect(rows["Motor power"]).toMatchObject({ allowed: "", unit: "hp", verdict: "cannot tell" });
    expect(rows["Motor power"]!.claimed).toBeCloseTo(hp, 3);
    expect(rows["Motor power"]!.why).toBe(
      "A peak, maximum or input power is not the output that a motor holds for long, so nothing here is judged by it; its rated output decides.",
    );
    expect(rows["Motor power"]!.source).toMatch(/^NEMA MG 1.*from memory/);
  });

  test("and the seller is asked for the rated one", () =>
    expect(allRowsOf({ "peak hp": 5 })["In short"]!.why).toBe("Ask the seller for the motor's rated output."));

  test.each(["5 peaks", "5 max decibels"])("%s is no power at all", (typed) =>
    expect(told(["motor power", typed]).why).toMatch(/ must be a number, bare \(hp\) or with its unit: hp, kW, W, /),
  );
});

// Two 4 in inlets have the area of one of 5.66 in: 4 taken for both would double the velocity.
test.each([
  ["Inlet diameter (x2)", "Inlet diameter", "of two alike inlets 1.41 times the diameter of one"],
  ["inlet diameter (in) [each]", "Inlet diameter", "of two alike inlets 1.41 times the diameter of one"],
  ["Inlet (2 x)", "Inlet diameter", "of two alike inlets 1.41 times the diameter of one"],
  ["Port (dual)", "Inlet diameter", "of two alike inlets 1.41 times the diameter of one"],
  ["Filter area (per bag)", "Filter area", "of several filters their areas added up"],
  ["Inlet diameter (in, x2)", "Inlet diameter", "of two alike inlets 1.41 times the diameter of one"],
  ["Media area (× 2)", "Filter area", "of several filters their areas added up"],
])("%s is not taken for all of them", (name, fact, instead) => {
  expect(told([name, 4])).toMatchObject({
    why: `${fact} in row 1 of the facts must be one number for all of them, since its name tells of several: ${instead}; got 4.`,
  });
});

test.each(["Inlet diameter (in)", "Inlet diameter (max 2.5 ft)", "Filter area (12 x 20)", "Filter area (sq ft)"])(
  "%s is one number, as it was",
  (name) => expect(told([name, 30])).toBeUndefined(),
);
