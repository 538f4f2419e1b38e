import "../support/customFunctions";
import { deviceloss } from "../../src/functions/losses/deviceloss";
import { equivlength } from "../../src/functions/losses/equivlength";
import { fittingloss } from "../../src/functions/losses/fittingloss";
import { friction } from "../../src/functions/losses/friction";
import { hoodairflow } from "../../src/functions/hoods/hoodairflow";
import { hoodsuction } from "../../src/functions/hoods/hoodsuction";
import { junctionloss } from "../../src/functions/losses/junctionloss";
import { losscoefficient } from "../../src/functions/losses/losscoefficient";
import { runloss } from "../../src/functions/losses/runloss";
import { velocitypressure } from "../../src/functions/losses/velocitypressure";
import { velocity } from "../../src/functions/duct/velocity";
import { refusal, shown } from "../support/refusal";

const one = (answer: any[][]): number => answer[0]![0] as number;
const call = (fn: (...args: any[]) => any[][], ...args: unknown[]): any[][] => fn(...args);

describe("FRICTION and RUNLOSS", () => {
  test("a run of 100 ft has the loss per 100 ft, a metre the loss per metre", () => {
    expect(one(runloss([[350]], [[4]], [[100]]))).toBeCloseTo(one(friction([[350]], [[4]])), 12);
    const si = [null, null, [["SI"]]];
    expect(one(call(runloss, [[600]], [[100]], [[1]], ...si))).toBeCloseTo(
      one(call(friction, [[600]], [[100]], ...si)),
      12,
    );
  });

  test("a roughness as a number is the same as the material that has it", () => {
    // galvanised steel, 0.0005 ft = 0.006 in
    expect(one(call(friction, [[350]], [[4]], [[0.006]]))).toBeCloseTo(one(friction([[350]], [[4]])), 12);
  });

  test("still air costs nothing", () => {
    expect(one(call(friction, 0, 4))).toBe(0);
  });

  test.each([
    ["material must be at least 0 in; got -1", [[350]], [[4]], [[-1]]],
    ["material must be rough by at most 0.2 of the diameter; got 2", [[350]], [[4]], [[2]]],
    ["material must be a number (in); got TRUE", [[350]], [[4]], [[true]]],
  ])("refuses a wall that is none: %s", (message, flow, width, wall) => {
    expect(refusal(() => call(friction, flow, width, wall))).toEqual({ code: "#VALUE!", message });
  });
});

describe("LOSSCOEFFICIENT and FITTINGLOSS", () => {
  // SMACNA HVAC Systems Duct Design, Table A-7: 4-piece elbow r/D 1.5 0.27; branch of 30 degrees 0.18 (from memory)
  test("a list adds up: two elbows of 0.27 and a branch of 0.18", () => {
    expect(one(losscoefficient([["elbow 1.5 x2; branch 30"]]))).toBeCloseTo(2 * 0.27 + 0.18, 12);
  });

  test("shape and angle may stand in the text or in their arguments", () => {
    const apart = one(call(losscoefficient, [["elbow smooth"]], [[2]], [[45]]));
    expect(one(losscoefficient([["elbow smooth 2 45"]]))).toBe(apart);
    expect(apart).toBeCloseTo(0.13 * 0.6, 12); // SMACNA Table A-7: 0.13 at r/D 2, 0.6 for 45 degrees
  });

  // ASHRAE Fundamentals 2009 (SI), CD3-1: die-stamped elbow of 90 degrees, 100 mm: 0.21
  test("a shape that is a diameter carries the call's unit", () => {
    expect(one(call(losscoefficient, [["elbow stamped"]], [[100]], null, [["SI"]]))).toBeCloseTo(0.21, 12);
    expect(one(call(losscoefficient, [["elbow stamped"]], [[100 / 25.4]]))).toBeCloseTo(0.21, 12);
    expect(one(losscoefficient([["elbow stamped 100 mm 90"]]))).toBeCloseTo(0.21, 12);
  });

  test("FITTINGLOSS is count times K times velocity pressure, with the duct's own diameter for fittings that go by it", () => {
    const pressure = one(velocitypressure(velocity([[350]], [[4]])));
    expect(one(call(fittingloss, [[350]], [[4]], [[0.5]], [[3]]))).toBeCloseTo(1.5 * pressure, 12);
    const stamped = one(call(losscoefficient, [["elbow stamped"]], [[4]]));
    expect(one(fittingloss([[350]], [[4]], [["elbow stamped"]]))).toBeCloseTo(stamped * pressure, 12);
  });

  test("a column of fittings with one airflow gives a column", () => {
    const answer = call(fittingloss, [[350]], [[4]], [["elbow 1.5"], ["nothing of the kind"], [null]]);
    expect(typeof answer[0]![0]).toBe("number");
    expect(shown(answer[1]![0])).toMatch(/^#VALUE! fitting must be a fitting's name or its K \(nearest: /);
    expect(answer[2]![0]).toBe("");
  });

  test.each([
    [
      "shape must be left out: the fitting's text has its own number; got 2",
      () => call(losscoefficient, [["elbow 1.5"]], [[2]]),
    ],
    [
      "shape must be left out beside a list or a bare K; got 2",
      () => call(losscoefficient, [["elbow; branch"]], [[2]]),
    ],
    ['shape must be left out: "branch" has no shape; got 2', () => call(losscoefficient, [["branch"]], [[2]])],
    [
      'angle must be from 10 to 90 degrees for "branch" (angle between the axes); got 95',
      () => call(losscoefficient, [["branch"]], null, [[95]]),
    ],
    [
      'shape must be given for "elbow stamped" (diameter); got a blank cell',
      () => losscoefficient([["elbow stamped"]]),
    ],
    ["fitting must be from 0 to 10000; got -0.5", () => losscoefficient([[-0.5]])],
    ["count must be at least 0; got -1", () => call(fittingloss, [[350]], [[4]], [[0.5]], [[-1]])],
  ])("refuses, and says why: %s", (message, attempt) => expect(refusal(attempt)).toEqual({ code: "#VALUE!", message }));
});

describe("EQUIVLENGTH", () => {
  test("that length of straight duct has the fitting's loss", () => {
    const length = one(equivlength([["elbow 1.5 x2"]], [[350]], [[4]]));
    const straight = one(runloss([[350]], [[4]], [[length]]));
    expect(straight).toBeCloseTo(one(fittingloss([[350]], [[4]], [["elbow 1.5 x2"]])), 12);
  });
});

describe("HOODSUCTION and HOODAIRFLOW", () => {
  test("undo each other", () => {
    const suction = hoodsuction([[350]], [[4]], [["flanged end"]]);
    expect(one(hoodairflow(suction, [[4]], [["flanged end"]]))).toBeCloseTo(350, 9);
  });

  test("an entry without loss leaves the velocity pressure", () => {
    expect(one(hoodsuction([[350]], [[4]], [[0]]))).toBeCloseTo(one(velocitypressure(velocity([[350]], [[4]]))), 12);
  });

  test("a fitting is no hood entry", () => {
    expect(refusal(() => hoodsuction([[350]], [[4]], [["elbow 1.5"]])).message).toMatch(
      /^entry must be a hood entry's name or its K \(nearest: /,
    );
  });
});

describe("DEVICELOSS", () => {
  test("goes with the square by default: twice the air, four times the loss", () => {
    expect(one(deviceloss([[2000]], [[1.5]], [[1000]]))).toBeCloseTo(6, 12);
  });

  test("a filter medium goes straight: twice the air, twice the loss", () => {
    expect(one(call(deviceloss, [[2000]], [[1.5]], [[1000]], [[1]]))).toBeCloseTo(3, 12);
  });

  test.each([
    ["ratedairflow must be above 0; got 0", [[1]], [[1]], [[0]], [[1]]],
    ["exponent must be from 0.5 to 2.5; got 3", [[1]], [[1]], [[1]], [[3]]],
  ])("refuses, and says why: %s", (message, flow, loss, rated, exponent) =>
    expect(refusal(() => call(deviceloss, flow, loss, rated, exponent)).message).toBe(message),
  );
});

describe("JUNCTIONLOSS", () => {
  // By hand: equal ducts at 90 degrees, a quarter of the air from aside: branch 0.675 (1 + 0.0625 - 1.125) = -0.0421875,
  // straight 1.55 / 4 - 1 / 16 = 0.325, of the main's velocity pressure, which is 1.2 / 2 x 20^2 = 240 Pa.
  test("of a column of airflows, the branch's and the straight duct's, in units and air of its own", () => {
    const main = (Math.PI / 4) * 0.1 ** 2 * 20 * 3600;
    const si = [100, 100, null].map((value) => value && [[value]]);
    const branch = [[main / 4], [null], [0]];
    const answer = call(junctionloss, [[90]], branch, [[main], [null], [main]], ...si, null, [[1.2]], [["SI"]]);
    expect(answer[0]![0]).toBeCloseTo(-0.0421875 * 240, 9);
    expect(answer[1]![0]).toBe("");
    expect(answer[2]![0]).toBeCloseTo(0.9 * (1 - 2) * 240, 9); // still air beside a main that draws at it
    const on = call(junctionloss, [[90]], [[main / 4]], [[main]], ...si, [["Straight"]], [[1.2]], [["SI"]]);
    expect(one(on)).toBeCloseTo(0.325 * 240, 9);
  });

  test.each([
    ["branchairflow must be from 0 to 400 cfm; got 500", [45, 500, 400, 4, 6]],
    ['leg must be \"branch\" or \"straight\"; got "main"', [45, 200, 400, 4, 6, null, "main"]],
  ])("refuses: %s", (message, given) => {
    const cells = given.map((value) => value && [[value]]);
    expect(refusal(() => call(junctionloss, ...cells))).toEqual({ code: "#VALUE!", message });
  });
});
