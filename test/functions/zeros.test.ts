/**
 * A blank cell comes as null, as an empty text or, from some hosts, as 0. None of them may make another number than the
 * others: where a 0 and a blank would be two answers, all three are refused with both ways out, and a word says the 0.
 */
import "../support/customFunctions";
import { airflowerror } from "../../src/functions/measuring/airflowerror";
import { density } from "../../src/functions/duct/density";
import { fittingloss } from "../../src/functions/losses/fittingloss";
import { friction } from "../../src/functions/losses/friction";
import { losscoefficient } from "../../src/functions/losses/losscoefficient";
import { exampleArguments, signed } from "../support/cellFunctions";
import { refusal, shown } from "../support/refusal";

type Call = (...args: any[]) => unknown[][];
const answer = (call: Call, ...args: unknown[]): unknown => call(...args)[0]![0];
const BLANKS = [null, "", "  ", 0];

/** A number, or that it is refused. */
function outcome(call: () => unknown[][]): unknown {
  try {
    return call()[0]![0];
  } catch {
    return refusal(call).code;
  }
}

const each = signed.flatMap((declared) =>
  declared.names.map((argument, index) => ({ ...declared, argument, at: declared.first + index })),
);

test.each(each)("$name with its $argument blank: one number at most, however the blank comes", (row) => {
  const given = exampleArguments(row);
  const with_ = (cell: unknown): unknown =>
    outcome(() => row.call(...given.map((value, index) => (index === row.at ? [[cell]] : value))));
  const numbers = new Set(BLANKS.map(with_).filter((one) => typeof one === "number"));
  expect([...numbers].length).toBeLessThanOrEqual(1);
  const inRange = BLANKS.map((cell) =>
    outcome(() => row.call(...given.map((value, index) => (index === row.at ? [[cell], [cell]] : value)))),
  );
  expect(new Set(inRange.filter((one) => typeof one === "number")).size).toBeLessThanOrEqual(1);
});

describe.each(BLANKS)("a given cell that is %p", (blank) => {
  const said = (call: Call, ...args: unknown[]): string => refusal(() => call(...args)).message;
  const got = blank === 0 ? "got 0" : "got a blank cell";

  test("as a count is none", () => {
    expect(answer(fittingloss, [[400]], [[4]], [["elbow 1.5"]], [[blank]])).toBe(0);
    expect(answer(fittingloss, [[400]], [[4]], [["elbow 1.5"]])).toBeGreaterThan(0);
  });

  test("as a material is no material", () => {
    expect(said(friction, [[400]], [[4]], [[blank]])).toBe(
      `material must be a name, a roughness above 0, "smooth" for 0, or left out for galvanised steel; ${got}`,
    );
  });

  test("as a temperature is none", () => {
    expect(said(density, [[blank]])).toBe(
      `temperature must be a number other than 0, "0°" for 0, or left out for 70 °F; ${got}`,
    );
  });

  test.each([
    ["percent", 2, "3"],
    ["floor", 3, "39.37 fpm"],
    ["diametererror", 4, "0.03937 in"],
  ])("as a meter's %s is none", (argument, at, usual) => {
    const args = [[[4000]], [[4]], [["none"]], [["none"]], [["none"]]].map((one, index) => (index === at ? [[blank]] : one)); // prettier-ignore
    expect(said(airflowerror, ...args)).toBe(
      `${argument} must be a number other than 0, "none" for 0, or left out for ${usual}; ${got}`,
    );
  });

  test("as a shape or an angle is refused where the fitting has one, and its text does not say it", () => {
    expect(said(losscoefficient, [["cone"]], [[0.25]], [[blank]])).toBe(
      `angle must be a number other than 0, "0°" for 0, or left out for 90 (included angle); ${got}`,
    );
    expect(said(losscoefficient, [["bell mouth"]], [[blank]])).toBe(
      `shape must be a number other than 0, "sharp" for 0, or left out for 0.1 (r/D); ${got}`,
    );
    expect(said(losscoefficient, [["expansion abrupt"]], [[blank]])).toBe(
      `shape must be a number other than 0, "sharp" for 0 (area ratio, small / large); ${got}`,
    );
  });

  test("as a shape or an angle is nothing where the fitting has none, or its text says it", () => {
    const alone = (list: unknown): unknown => answer(losscoefficient, [[list]]);
    for (const list of ["tee", "cone 0.25 60", "elbow 1.5; branch 30", 0.4])
      expect(answer(losscoefficient, [[list]], [[blank]], [[blank]])).toBe(alone(list));
  });
});

// Published: a cone of no angle is the bare end, 1.0; a bell mouth of no radius in a wall is the flush end, 0.5.
test("a word says a 0 that is meant", () => {
  expect(answer(losscoefficient, [["cone"]], [[0.25]], [["0°"]])).toBe(1);
  expect(answer(losscoefficient, [["cone 0.25 0"]])).toBe(1);
  expect(answer(losscoefficient, [["bell mouth"]], [["Sharp"]])).toBe(0.5);
  // 0 °F is -17.78 °C: 101325 / (287.042 x 255.372) = 1.38227 kg/m3, 0.086293 lb/ft3
  expect(answer(density, [["0 deg"]])).toBeCloseTo(0.08629, 5);
  expect(answer(airflowerror, [[4000]], [[4]], [["none"]], [["none"]], [["none"]])).toBe(0);
});

/*
 * By hand, 400 cfm in 4 in: V = 4583.66 fpm = 23.285 m/s, D = 0.1016 m, Re = 1.20139 x 23.285 x 0.1016 / 1.819e-5 = 156 250.
 * Smooth pipe: 1/sqrt(f) = 2 log10(Re sqrt(f)) - 0.8 (Prandtl) gives f = 0.01643; f/D x 325.7 Pa = 52.66 Pa/m, which is
 * 52.66 x 30.48 / 248.84 = 6.45 in.w.g. per 100 ft.
 */
test("a smooth wall has a friction of its own, well below that of steel", () => {
  const smooth = answer(friction, [[400]], [[4]], [["smooth"]]) as number;
  expect(Math.abs(smooth / 6.45 - 1)).toBeLessThan(0.01);
  expect(answer(friction, [[400]], [[4]]) as number).toBeGreaterThan(1.2 * smooth);
});

test("in a range only the row with the blank is refused", () => {
  const answers = airflowerror([[4000], [4000]], [[4]], [[3], [null]], [["none"]], [["none"]]);
  expect(answers.map(([cell]) => shown(cell))).toEqual([
    expect.any(Number),
    '#VALUE! percent must be a number other than 0, "none" for 0, or left out for 3; got a blank cell',
  ]);
});
