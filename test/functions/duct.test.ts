import "../support/customFunctions";
import fc from "fast-check";
import { airflow } from "../../src/functions/duct/airflow";
import { area } from "../../src/functions/duct/area";
import { diameter } from "../../src/functions/duct/diameter";
import { equivdiameter } from "../../src/functions/duct/equivdiameter";
import { tradesize } from "../../src/functions/duct/tradesize";
import { velocity } from "../../src/functions/duct/velocity";
import { refusal } from "../support/refusal";

const one = (answer: any[][]): number => answer[0]![0] as number;

describe("AREA, VELOCITY, AIRFLOW and DIAMETER", () => {
  // By hand: π/4 (5/12)² = 0.136354
  test("a 5 in circle is 0.136354 ft²", () => {
    expect(one(area([[5]]))).toBeCloseTo(0.136354, 6);
  });

  test("350 cfm in a 4 in duct is about 4,000 fpm (common practice, no source)", () => {
    expect(Math.abs(one(velocity([[350]], [[4]])) - 4000)).toBeLessThanOrEqual(50);
  });

  test("a rectangle takes width times height: 18 in x 12 in is 1.5 ft²", () => {
    expect(one(area([[18]], [[12]]))).toBeCloseTo(1.5, 12);
  });

  test("AIRFLOW undoes VELOCITY, and DIAMETER undoes both, in either system", () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(number(1, 1e4), number(0.5, 100), fc.constantFrom("IP", "SI"), (flow, width, system) => {
        const units = [[system]];
        const speed = velocity([[flow]], [[width]], null as any, units);
        expect(one(airflow(speed, [[width]], null as any, units)) / flow).toBeCloseTo(1, 12);
        expect(one(diameter([[flow]], speed, units)) / width).toBeCloseTo(1, 12);
      }),
      { numRuns: 100 },
    );
  });

  test.each([
    ["velocity must be at least 0 fpm; got -1", () => airflow([[-1]], [[4]])],
    ["airflow must be at least 0 cfm; got -1", () => velocity([[-1]], [[4]])],
    ["airflow must be above 0 cfm; got 0", () => diameter([[0]], [[4000]])],
    ["velocity must be above 0 fpm; got -2", () => diameter([[350]], [[-2]])],
    ["height must be above 0 in; got -1", () => equivdiameter([[10]], [[-1]])],
  ])("refuses, and says why: %s", (message, call) => expect(refusal(call)).toEqual({ code: "#VALUE!", message }));
});

/** Those that 0.0254 does not give back among them: 3, 6, 12, 24, 48. */
const INCH_SIZES = [2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 24, 30, 36, 48];

describe("TRADESIZE", () => {
  test.each([
    ["down", 4.4, 4],
    ["up", 4.4, 4.5],
    ["nearest", 4.2, 4],
    ["nearest", 4.3, 4.5],
    ["down", 4, 4],
    ["up", 6, 6],
  ])("%s from %p in is %p in, a stock size (common practice, no source)", (rounding, wanted, expected) => {
    expect(one(tradesize([[wanted]], [[rounding]]))).toBeCloseTo(expected, 10);
  });

  test("a size is the very number of its list, so that a look-up finds it and not the one below", () => {
    const inches = INCH_SIZES.map((size) => [size]);
    expect(tradesize(inches)).toEqual(inches);
    const millimetres = [63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250].map((size) => [size]); // prettier-ignore
    expect(tradesize(millimetres, undefined, [["SI"]])).toEqual(millimetres);
  });

  test("goes down by default, since the smaller pipe keeps dust moving", () => {
    expect(one(tradesize([[6.9]]))).toBeCloseTo(6, 10);
  });

  test("in SI it is the EN 1506 series (from memory)", () => {
    expect(one(tradesize([[180]], [["down"]], [["SI"]]))).toBeCloseTo(160, 9);
    expect(one(tradesize([[180]], [["up"]], [["SI"]]))).toBeCloseTo(200, 9);
  });

  test("beyond the series there is no answer", () => {
    expect(refusal(() => tradesize([[500]], [["up"]]))).toEqual({
      code: "#N/A",
      message: "no stock size is as large as that",
    });
    expect(refusal(() => tradesize([[1]]))).toEqual({ code: "#N/A", message: "no stock size is as small as that" });
  });

  test("another word for rounding is refused", () => {
    expect(refusal(() => tradesize([[4]], [["sideways"]])).message).toBe(
      'rounding must be "down" or "up" or "nearest" or "down metric stock" or "up metric stock" or "nearest metric stock" or "down drain pipe" or "up drain pipe" or "nearest drain pipe"; got "sideways"',
    );
  });

  // 140 and 180 mm stand in dust-extraction stock (common practice, no source) and not in EN 1506.
  test.each([
    ["down", 155, 125],
    ["down metric stock", 155, 150],
    ["up metric stock", 130, 140],
    ["UP  Metric-Stock", 165, 175],
    ["nearest metric stock", 182, 180],
    ["nearest metric stock", 190, 180],
  ])("%s from %p mm is %p mm", (rounding, wanted, expected) => {
    expect(one(tradesize([[wanted]], [[rounding]], [["SI"]]))).toBeCloseTo(expected, 9);
  });

  // ASTM D2729 lets 4 in drain pipe be as narrow as 98.42 mm inside, 6 in pipe 149.22 mm (second-hand).
  test("drain pipe of 4 and 6 in is narrower than duct of that name", () => {
    expect(one(tradesize([[100]], [["down drain pipe"]], [["SI"]]))).toBeCloseTo(98.42, 9);
    expect(one(tradesize([[5.9]], [["nearest drain pipe"]]))).toBeCloseTo(149.22 / 25.4, 9);
    expect(refusal(() => tradesize([[6]], [["up drain pipe"]]))).toEqual({
      code: "#N/A",
      message: "no stock size is as large as that",
    });
  });
});
