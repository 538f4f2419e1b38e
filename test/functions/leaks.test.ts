import "../support/customFunctions";
import { gateleak } from "../../src/functions/leaks/gateleak";
import { leak } from "../../src/functions/leaks/leak";
import { leakarea } from "../../src/functions/leaks/leakarea";
import { leakat } from "../../src/functions/leaks/leakat";
import { seamleak } from "../../src/functions/leaks/seamleak";
import { refusal } from "../support/refusal";

const one = (answer: any[][]): number => answer[0]![0] as number;
const call = (fn: (...args: any[]) => any[][], ...args: unknown[]): any[][] => fn(...args);

describe("LEAK, LEAKAREA and LEAKAT", () => {
  test("LEAKAREA undoes LEAK", () => {
    expect(one(leakarea(leak([[0.8]], [[3]]), [[3]]))).toBeCloseTo(0.8, 12);
  });

  // By hand, SI: 0.6 x 500e-6 m2 x sqrt(2 x 750 / 1.2) = 0.6 x 500e-6 x 35.35534 = 0.01060660 m3/s = 38.18377 m3/h
  test("500 mm² at 750 Pa in air of 1.2 kg/m³ pass 38.18377 m³/h", () => {
    expect(one(call(leak, [[500]], [[750]], null, [[1.2]], [["SI"]]))).toBeCloseTo(38.18377, 5);
  });

  test("LEAKAT: four times the suction doubles an opening's leak, and brings a seam to 4^0.65 = 2.4623 times", () => {
    expect(one(leakat([[22]], [[1]], [[4]]))).toBeCloseTo(44, 12);
    expect(one(call(leakat, [[22]], [[1]], [[4]], [[0.65]]))).toBeCloseTo(22 * 2.4623, 3);
  });

  test.each([
    ["area must be at least 0 in²; got -1", () => leak([[-1]], [[3]])],
    ["coefficient must be at most 1; got 1.5", () => call(leak, [[1]], [[3]], [[1.5]])],
    ["suction must be above 0 in.w.g.; got 0", () => leakarea([[20]], [[0]])],
    ["exponent must be from 0.5 to 1; got 0.2", () => call(leakat, [[20]], [[1]], [[4]], [[0.2]])],
  ])("refuses, and says why: %s", (message, attempt) => expect(refusal(attempt)).toEqual({ code: "#VALUE!", message }));
});

describe("GATELEAK", () => {
  // By hand: 3/16 in x 6 in = 1.125 in²; the trade's 4005 √p: 0.6 x 1.125 / 144 x 4005 √2 = 26.55 cfm. The gap itself is an estimate.
  test("a bare slot across an open 6 in gate passes 26.5 cfm at 2 in.w.g. (common practice, no source)", () => {
    expect(Math.abs(one(gateleak([["open bare slot"]], [[6]], [[2]])) - 26.55)).toBeLessThanOrEqual(0.05);
  });

  test("grows with the gate and with the square root of the suction", () => {
    expect(
      one(gateleak([["shut packed"]], [[10]], [[3]])) / one(gateleak([["shut packed"]], [[5]], [[3]])),
    ).toBeCloseTo(2, 9);
    expect(
      one(gateleak([["shut packed"]], [[5]], [[12]])) / one(gateleak([["shut packed"]], [[5]], [[3]])),
    ).toBeCloseTo(2, 9);
  });

  test("another condition is answered with the nearest", () => {
    expect(refusal(() => gateleak([["open bare slit"]], [[5]], [[3]])).message).toMatch(
      /^condition must be a name in the table "gates" \(nearest: "open bare slot", .*\); got "open bare slit"$/,
    );
    expect(refusal(() => gateleak([[5]], [[4]], [[3]])).message).toBe(
      'condition must be a name in the table "gates"; got 5',
    );
  });
});

describe("SEAMLEAK", () => {
  // trade playbook, row GL32: class 6 at 2 in.w.g. allows 9.4 cfm per 100 ft2; 400 ft2 gives 37.6 cfm
  test("class 6 at 2 in.w.g.: 9.4 cfm on 100 ft², 37.6 on 400 ft²", () => {
    expect(Math.abs(one(seamleak([[6]], [[100]], [[2]])) - 9.4)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(one(seamleak([[6]], [[400]], [[2]])) - 37.6)).toBeLessThanOrEqual(0.1); // four times a rounded 9.4
  });

  // EN 12237, class A: 0.027 L/(s m2) x 400^0.65 = 0.027 x 49.13 = 1.3265 L/s = 4.775 m3/h per m2
  test("EN class A at 400 Pa: 0.027 x 400^0.65 L/s per m²", () => {
    expect(one(seamleak([["A"]], [[1]], [[400]], [["SI"]]))).toBeCloseTo(0.027 * 400 ** 0.65 * 3.6, 9);
  });

  test("a class that is none is refused", () => {
    expect(refusal(() => seamleak([["Q"]], [[1]], [[1]])).message).toMatch(
      /^class must be a class number or an EN letter A to D \(nearest: /,
    );
    expect(refusal(() => seamleak([[-3]], [[1]], [[1]])).message).toBe("class must be at least 0; got -3");
  });
});
