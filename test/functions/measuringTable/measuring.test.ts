import "../../support/customFunctions";
import fc from "fast-check";
import { velocitypressure } from "../../../src/functions/losses/velocitypressure";
import { airflow } from "../../../src/functions/duct/airflow";
import { airflowerror } from "../../../src/functions/measuring/airflowerror";
import { correctedreading } from "../../../src/functions/measuring/correctedreading";
import { traverse } from "../../../src/functions/measuring/traverse";
import { traversepoints } from "../../../src/functions/measuring/traversepoints";
import { relative } from "../../support/printed";
import { refusal, shown } from "../../support/refusal";

const one = (answer: any[][]): number => answer[0]![0] as number;
const call = (fn: (...args: any[]) => any[][], ...args: unknown[]): any[][] => fn(...args);
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("TRAVERSEPOINTS", () => {
  // Instrument manual (read in a copy): 0.032 0.135 0.321 0.679 0.865 0.968 of the diameter, here 6 in.
  test("is a column of depths from the wall", () => {
    const depths = call(traversepoints, [[6]]);
    expect(depths.map((row) => row.length)).toEqual([1, 1, 1, 1, 1, 1]);
    [0.192, 0.81, 1.926, 4.074, 5.19, 5.808].forEach((depth, index) =>
      expect(Number(depths[index]![0])).toBeCloseTo(depth, 10),
    );
  });

  test("in SI the same places: 152.4 mm against 6 in, and 254 mm still takes six", () => {
    const inches = call(traversepoints, [[6]], null, null, [["IP"]]).flat() as number[];
    const millimetres = call(traversepoints, [[152.4]], null, null, [["SI"]]).flat() as number[];
    inches.forEach((depth, index) => expect(relative(millimetres[index]!, 25.4 * depth)).toBeLessThan(1e-12));
    expect(call(traversepoints, [[254]], null, null, [["SI"]])).toHaveLength(6);
    expect(call(traversepoints, [[255]], null, null, [["SI"]])).toHaveLength(8);
  });

  test("takes the number of points and the rule that are asked for, in any spelling of case and hyphen", () => {
    expect(call(traversepoints, [[6]], [[10]], [["LOG LINEAR"]])).toHaveLength(10);
    expect(call(traversepoints, [[20]], [[0]], [["log-tchebycheff"]])).toHaveLength(5); // 0 counts as left out
    expect(call(traversepoints, [[20]], [["7"]], [["log-Tchebycheff"]])).toHaveLength(7);
  });

  test.each([
    ['points must be 4, 6, 8 or 10 by the rule "log-linear"; got 7', [[[6]], [[7]]]],
    ['points must be 5, 6 or 7 by the rule "log-Tchebycheff"; got 8', [[[6]], [[8]], [["log-Tchebycheff"]]]],
    ['points must be a number; got "six"', [[[6]], [["six"]]]],
    ['rule must be "log-linear" or "log-Tchebycheff"; got "equal area"', [[[6]], null, [["equal area"]]]],
    ["diameter must be above 0 in; got 0", [[[0]]]],
    ["diameter must be above 0 in; got -6", [[[-6]]]],
    ["diameter must be a number (in); got a blank cell", [[[null]]]],
    ['diameter must be one cell; got "2 by 1 cells"', [[[4], [6]]]],
    ['points must be one cell; got "1 by 2 cells"', [[[6]], [[6, 8]]]],
  ] as const)("refuses, and says why: %s", (message, args) => {
    expect(refusal(() => call(traversepoints, ...args))).toEqual({ code: "#VALUE!", message });
  });
});

describe("TRAVERSE", () => {
  test("is the plain mean of velocities, in any shape of range; still air counts, what nobody read does not", () => {
    expect(one(call(traverse, [[3000, 4000, 5000]]))).toBeCloseTo(4000, 9);
    expect(one(call(traverse, [[3000, " Not read"], [4000, "5000"]]))).toBeCloseTo(4000, 9); // prettier-ignore
    expect(one(call(traverse, [[3000, "Still"], [4000, "5000"]]))).toBeCloseTo(3000, 9); // prettier-ignore
    expect(one(call(traverse, [["still"]]))).toBe(0);
  });

  test.each([null, "", 0])(
    "refuses cells that are %p, and counts them: nobody knows whether such a one was read",
    (blank) => {
      const { code, message } = refusal(() => call(traverse, [[3000, blank, 4100], [blank, 3900, 4000]])); // prettier-ignore
      expect(code).toBe("#VALUE!");
      expect(message).toBe(
        'readings must be filled throughout: "still" where the air stood still, "not read" where nobody read, or cells left out of the range; got "2 of 6 cells blank or 0"',
      );
    },
  );

  // By hand: 100 and 400 Pa at 1.25 kg/m3 are 12.64911 and 25.29822 m/s, mean 18.97367; the root of their mean is 20.
  test("of velocity pressures takes the mean of the roots, not the root of the mean", () => {
    const mean = one(call(traverse, [[100], [400]], [["velocity pressure"]], [[1.25]], [["SI"]]));
    expect(mean).toBeCloseTo(18.97367, 5);
    expect(one(call(traverse, [[100], [400]], [["Pressure"]], [[1.25]], [["SI"]]))).toBe(mean);
  });

  test("is the same from velocities and from their pressures, in either system", () => {
    fc.assert(
      fc.property(
        fc.array(number(500, 9000), { minLength: 1, maxLength: 20 }),
        fc.constantFrom("IP", "SI"),
        (fpm, system) => {
          const readings = fpm.map((speed) => [system === "SI" ? speed * 0.00508 : speed]);
          const pressures = call(velocitypressure, readings, null, [[system]]);
          const mean = one(call(traverse, readings, null, null, [[system]]));
          expect(
            relative(one(call(traverse, pressures, [["velocity pressure"]], null, [[system]])), mean),
          ).toBeLessThan(1e-12);
        },
      ),
      { numRuns: 100 },
    );
  });

  test("twice the readings are twice the velocity", () => {
    fc.assert(
      fc.property(fc.array(number(1, 4000), { minLength: 1, maxLength: 20 }), (fpm) => {
        const twice = one(call(traverse, [fpm.map((speed) => 2 * speed)]));
        expect(relative(twice, 2 * one(call(traverse, [fpm])))).toBeLessThan(1e-12);
      }),
    );
  });

  test.each([
    [
      'row 2, column 3 of readings must be a number (fpm); got "x"',
      [
        [
          [3000, 4000, 4100],
          [3900, 4000, "x"],
        ],
      ],
    ],
    ["row 1, column 2 of readings must be at least 0 fpm; got -5", [[[3000, -5]]]],
    ["row 1, column 1 of readings must be at most 11811 fpm, more than any dust duct carries; got 40000", [[[40000]]]],
    [
      "row 2, column 1 of readings must be at most 8.69 in.w.g., more than any dust duct carries; got 80",
      [[[0.8], [80]], [["velocity pressure"]]],
    ],
    [
      "row 1, column 2 of readings must be at most 60 m/s, more than any dust duct carries; got 61",
      [[[20, 61]], null, null, [["SI"]]],
    ],
    ["row 1, column 1 of readings must be a number (fpm); got TRUE", [[[true]]]],
    ["readings must be at least one reading; got a blank cell", [[["not read"]]]],
    ['kind must be "velocity" or "velocity pressure" or "pressure"; got "static"', [[[3000]], [["static"]]]],
  ] as const)("refuses, and says why: %s", (message, args) => {
    expect(refusal(() => call(traverse, ...args))).toEqual({ code: "#VALUE!", message });
  });
});

describe("AIRFLOWERROR", () => {
  // By hand: 20 m/s in 100 mm: sqrt(0.6^2 + 0.2^2 + 0.4^2) = 0.7483315 m/s through 0.007853982 m2, times 3600: 21.15857 m3/h.
  test("takes 3 %, 0.2 m/s and 1 mm where nothing is given: 21.15857 m³/h", () => {
    expect(one(call(airflowerror, [[20]], [[100]], null, null, null, [["SI"]]))).toBeCloseTo(21.15857, 4);
    expect(one(call(airflowerror, [[20]], [[100]], [[3]], [[0.2]], [[1]], [["SI"]]))).toBeCloseTo(21.15857, 4);
  });

  test("of the percent alone is that percent of the airflow, and a word switches a part off", () => {
    fc.assert(
      fc.property(number(100, 9000), number(2, 30), number(0.1, 20), (speed, width, percent) => {
        const error = one(call(airflowerror, [[speed]], [[width]], [[percent]], [["none"]], [["None"]]));
        expect(relative(error, (percent / 100) * one(airflow([[speed]], [[width]])))).toBeLessThan(1e-12);
      }),
    );
  });

  test("follows the array rule: a wrong row is an error with its sentence, a blank one stays blank", () => {
    const answer = call(airflowerror, [[4000], [null], [40000]], [[4]]);
    expect(answer[0]![0]).toBeGreaterThan(0);
    expect(answer[1]).toEqual([""]);
    expect(shown(answer[2]![0])).toBe("#VALUE! velocity must be from 0 to 11811.02 fpm; got 40000");
  });

  test.each([
    ["percent must be from 0.1 to 100; got 101", [[[4000]], [[4]], [[101]]]],
    ["percent must be from 0.1 to 100; got 0.03", [[[4000]], [[4]], [[0.03]]]],
    ["floor must be at least 0 fpm; got -1", [[[4000]], [[4]], null, [[-1]]]],
    ["diametererror must be below 4 in; got 4", [[[4000]], [[4]], null, null, [[4]]]],
    ["diameter must be above 0 in; got 0", [[[4000]], [[0]]]],
  ] as const)("refuses, and says why: %s", (message, args) => {
    expect(refusal(() => call(airflowerror, ...args))).toEqual({ code: "#VALUE!", message });
  });
});

describe("CORRECTEDREADING", () => {
  // By hand: the square of 160 mm, 0.0256 m², for the circle, 0.0201 m²; 1280 / 0.0256 = 50 000, x 0.0201 = 1005; twice that is 2010.
  test("a column of readings with the wrong area is put right at once", () => {
    const answer = call(correctedreading, [[1280], [null], [2560]], [[0.0256]], [[0.0201]]);
    expect(answer[0]![0]).toBeCloseTo(1005, 9);
    expect(answer[1]![0]).toBe("");
    expect(answer[2]![0]).toBeCloseTo(2010, 9);
  });

  test.each([
    ["areaentered must be above 0; got 0", [[[1005]], [[0]], [[0.0201]]]],
    ["areatrue must be above 0; got 0", [[[1005]], [[0.0201]], [[0]]]],
    ["areatrue must be above 0; got -1", [[[1005]], [[0.0201]], [[-1]]]],
    ["reading must be at least 0; got -1005", [[[-1005]], [[0.0201]], [[1]]]],
    ["areaentered must be given; got a blank cell", [[[350]], [[null]], [[1]]]],
  ] as const)("refuses, and says why: %s", (message, args) => {
    expect(refusal(() => call(correctedreading, ...args))).toEqual({ code: "#VALUE!", message });
  });
});
