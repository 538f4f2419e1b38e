import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { readingsNeeded, scatterLimit, studentT } from "../../../src/core/measuring/chance";
import { difference, type Meant } from "../../../src/core/measuring/difference";
import { expectRefusal } from "../../support/coreRefusal";
import { halfLastDigit } from "../../support/printed";
import { relative } from "../../support/printed";

/** Readings with exactly this count, mean and standard deviation: all lie one such deviation off, but for one at the mean where the count is odd. */
function readingsOf(count: number, mean: number, deviation: number): number[] {
  const pairs = Math.floor(count / 2);
  const off = deviation * Math.sqrt((count - 1) / (2 * pairs));
  const sides = Array.from({ length: pairs }, () => [mean - off, mean + off]).flat();
  return count % 2 === 1 ? [...sides, mean] : sides;
}

/** t as a book prints it, from our change and its ±. */
const tOf = (before: readonly number[], after: readonly number[]): number => {
  const { change, limit } = difference(before, after, null, [], "either");
  return (-change / limit!) * studentT(before.length + after.length - 2, 2);
};

describe("Student's t", () => {
  // As printed in the table of upper critical values of the NIST/SEMATECH e-Handbook, read in a copy; columns 0.05 and 0.025.
  test.each([
    [1, "6.314", "12.706"],
    [2, "2.920", "4.303"],
    [3, "2.353", "3.182"],
    [4, "2.132", "2.776"],
    [5, "2.015", "2.571"],
    [6, "1.943", "2.447"],
    [7, "1.895", "2.365"],
    [8, "1.860", "2.306"],
    [9, "1.833", "2.262"],
    [10, "1.812", "2.228"],
    [14, "1.761", "2.145"],
    [20, "1.725", "2.086"],
    [30, "1.697", "2.042"],
    [60, "1.671", "2.000"],
    [100, "1.660", "1.984"],
    [Infinity, "1.645", "1.960"],
  ])("of %d degrees is %s on one side, %s on both", (degrees, one, both) => {
    expect(Math.abs(studentT(degrees, 1) - Number(one))).toBeLessThanOrEqual(halfLastDigit(one));
    expect(Math.abs(studentT(degrees, 2) - Number(both))).toBeLessThanOrEqual(halfLastDigit(both));
  });

  test("has no value without a degree of freedom", () => {
    expectRefusal(() => studentT(0, 2), DomainError, "degrees must be at least 1; got 0");
    expectRefusal(() => scatterLimit(NaN), DomainError, "degrees must be at least 1; got a number that is not finite");
    expectRefusal(() => readingsNeeded(0, 1), DomainError, "deviations must be above 0; got 0");
  });
});

// Chi-square tables, upper 1 % points, from memory: 6.635, 9.210, 15.086, 23.209.
test.each([
  [1, 6.635],
  [2, 9.21],
  [5, 15.086],
  [10, 23.209],
])("chi-square of %d degrees exceeds %d once in a hundred times, within 1 %%", (degrees, printed) => {
  expect(relative(scatterLimit(degrees), printed)).toBeLessThan(0.01);
});

// Statistics pages of a research unit in Cambridge (imaging.mrc-cbu.cam.ac.uk/statswiki, FAQ on unpaired t tests), power 80 %:
// readings in each group for a change of so many standard deviations, one-tailed and two-tailed; read in a copy. The formula may be one off.
test.each([
  [0.3, 138, 175],
  [0.5, 51, 64],
  [0.8, 21, 26],
  [1.0, 14, 17],
  [1.3, 9, 11],
])("a change of %d standard deviations takes %d readings a side, or %d where it may go both ways", (d, one, both) => {
  expect(Math.abs(readingsNeeded(d, 1) - one)).toBeLessThanOrEqual(1);
  expect(Math.abs(readingsNeeded(d, 2) - both)).toBeLessThanOrEqual(1);
});

describe("the two-sample t test as printed", () => {
  // NIST/SEMATECH e-Handbook 1.3.5.3, mileage of 249 and 79 cars, read second-hand in a reprint of that page of 2018, which names its
  // address (itl.nist.gov/div898/handbook/eda/section3/eda353.htm): means and standard deviations as printed,
  // T = -12.62059, and at 5 % on both sides with 326 degrees the critical value 1.9673.
  test("249 American and 79 Japanese cars", () => {
    const [us, japan] = [readingsOf(249, 20.14458, 6.4147), readingsOf(79, 30.48101, 6.10771)];
    expect(Math.abs(tOf(us, japan) + 12.62059)).toBeLessThan(5e-5); // the means are printed to 1e-5, and T has 1e-4 from that
    expect(Math.abs(studentT(326, 2) - 1.9673)).toBeLessThanOrEqual(5e-5);
    expect(difference(us, japan, null, [], "either").says).toBe("more");
  });

  // NAG Library, example program results of g07caf: 4 of mean 25 and s 0.8185, 8 of mean 21 and s 4.208; t = 1.8403; the 95 %
  // limits of the difference are -0.8429 and 8.8429.
  test("a numerical library's example", () => {
    const [x, y] = [readingsOf(4, 25, 0.8185), readingsOf(8, 21, 4.208)];
    expect(Math.abs(tOf(x, y) - 1.8403)).toBeLessThan(2e-4); // s is printed to 4 digits
    const { change, limit, says } = difference(x, y, null, [], "either");
    expect(change).toBeCloseTo(-4, 12);
    expect(Math.abs(limit! - 4.8429)).toBeLessThan(6e-4);
    expect(says).toBe("too small");
  });
});

describe("what the readings say", () => {
  const says = (before: number[], after: number[], more: Partial<Record<"percent" | "floor", number>> | null = null, repeats: number[] = [], meant: Meant = "either") =>
    difference(before, after, more && { percent: 0, floor: 0, ...more }, repeats, meant); // prettier-ignore

  test("single readings get a verdict only where it is known how one repeats", () => {
    expect(says([20], [25])).toMatchObject({ says: "single", limit: null, needed: null, change: 5 });
    // by hand: 1.96 √(1² + 1²) = 2.77
    const known = says([20], [25], { floor: 1 });
    expect(known.says).toBe("more");
    expect(known.limit).toBeCloseTo(2.772, 3);
    // 5 % of 20 and of 25 are 1 and 1.25: 1.96 √(1 + 1.5625) = 3.137
    expect(says([20], [25], { percent: 5 }).limit).toBeCloseTo(3.137, 3);
  });

  // by hand: 10, 12, 11 have s = 1 and two degrees: 4.303 × 1 × √2 = 6.085; meant to be less 2.920 √2 = 4.129
  test("further readings at one spot tell it for single ones", () => {
    expect(says([11], [5], null, [10, 12, 11]).limit).toBeCloseTo(6.085, 3);
    expect(says([11], [5], null, [10, 12, 11], "less")).toMatchObject({ says: "less" });
    expect(says([11], [5], null, [10, 12, 11]).says).toBe("too small");
    // at 33, three times as large, they stray three times as much; at 1 no less than there
    expect(says([33], [5], null, [10, 12, 11]).limit).toBeCloseTo(3 * 6.085, 2);
    expect(says([1], [2], null, [10, 12, 11]).limit).toBeCloseTo(6.085, 3);
  });

  // by hand: s = √2, so 2 is 1.414 deviations and 1 half of that
  test("too small a change says how many readings would show it", () => {
    expect(says([10, 12], [12, 14])).toMatchObject({ says: "too small", change: 2 });
    expect(says([10, 12], [12, 14]).needed).toBe(9); // 2/√2 = 1.414: 15.698 / 2 + 0.96 = 8.81
    expect(says([10, 12], [13, 11]).needed).toBe(33); // 0.7071: 31.396 + 0.96 = 32.36
  });

  test.each<[string, Partial<ReturnType<typeof says>>, () => unknown]>([
    ["no change", {}, () => says([0.1, 0.2, 0.3], [0.3, 0.2, 0.1])], // their sums differ in the last digit
    ["alike", { limit: null }, () => says([5, 5], [6, 6])],
    ["scattered", { limit: null }, () => says([5, 9], [6, 10], { percent: 1 })],
    ["no change", {}, () => says([5, 6], [6, 5])],
    ["other way", {}, () => says([5, 6], [25, 26], null, [], "less")],
  ])("%s", (word, fields, call) => {
    expect(call()).toMatchObject({ says: word, needed: null, ...fields });
  });

  test.each<[string, () => unknown]>([
    ["before must be at least one reading; got a blank cell", () => says([], [1])],
    ["after must be at least one reading; got a blank cell", () => says([1], [])],
    ['repeats must be at least two readings; got "one reading"', () => says([1], [2], null, [3])],
    ["repeats must be readings whose mean is not 0; got 0", () => says([1], [2], null, [3, -3])],
    ["percent must be from 0.1 to 100 %; got 101", () => says([1], [2], { percent: 101 })],
    ["percent must be from 0.1 to 100 %; got 0.03", () => says([1], [2], { percent: 0.03 })],
    ["floor must be at least 0; got -1", () => says([1], [2], { floor: -1 })],
  ])("refuses: %s", (message, call) => expectRefusal(call, DomainError, message));
});

describe("laws", () => {
  const reading = fc.double({ min: 1, max: 100, noNaN: true });
  const several = fc.array(reading, { minLength: 2, maxLength: 6 });

  test("swapping before and after flips only the sign", () => {
    fc.assert(
      fc.property(several, several, fc.array(reading, { minLength: 2, maxLength: 5 }), (one, other, repeats) => {
        const [there, back] = [difference(one, other, null, repeats, "either"), difference(other, one, null, repeats, "either")]; // prettier-ignore
        expect(back.change).toBe(-there.change);
        expect(relative(back.limit ?? 1, there.limit ?? 1)).toBeLessThan(1e-9);
        const flipped = { more: "less", less: "more" } as Record<string, string>;
        expect(back.says).toBe(flipped[there.says] ?? there.says);
      }),
    );
  });

  test("a factor that all readings have in common changes no verdict: a wrong area in the meter cannot spoil it", () => {
    fc.assert(
      fc.property(
        several,
        several,
        several,
        fc.constantFrom(0.1, 4, 4 / Math.PI, 10),
        (one, other, repeats, factor) => {
          const times = (readings: readonly number[]): number[] => readings.map((value) => factor * value);
          const plain = difference(one, other, null, repeats, "either");
          const wrong = difference(times(one), times(other), null, times(repeats), "either");
          const share = Math.abs(plain.change) / Math.max(plain.before, plain.after); // near 0 it is made of the last digits alone
          fc.pre(plain.limit !== null && Math.abs(Math.abs(plain.change) / plain.limit - 1) > 1e-9);
          fc.pre(share === 0 || share > 1e-11);
          expect(wrong.says).toBe(plain.says);
          expect(relative(wrong.limit!, factor * plain.limit)).toBeLessThan(1e-9);
          const needed = plain.needed ?? 0; // it goes by the change squared, and the change is a difference of means
          const lastDigits = share === 0 ? 0 : (20 * Number.EPSILON) / share;
          expect(Math.abs((wrong.needed ?? 0) - needed)).toBeLessThanOrEqual((1e-9 + lastDigits) * needed + 1);
        },
      ),
    );
  });
});

describe("a change that is not there", () => {
  let state = 20_261;
  const uniform = (): number => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
  const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  const draw = (count: number): number[] => Array.from({ length: count }, () => 50 + normal());

  // 20,000 draws: the standard error of 5 % is 0.15 %.
  test.each<[string, number, number, number, Meant]>([
    ["two before and two after", 2, 2, 0, "either"],
    ["three and five, meant to be less", 3, 5, 0, "less"],
    ["single ones beside five repeats", 1, 1, 5, "either"],
    ["single ones beside five repeats, meant to be more", 1, 1, 5, "more"],
  ])("is called real in 5 of 100 cases: %s", (_, before, after, repeats, meant) => {
    let called = 0;
    for (let pair = 0; pair < 20_000; pair++) {
      const { says } = difference(draw(before), draw(after), null, draw(repeats), meant);
      if (says === "more" || says === "less") called++;
    }
    expect(Math.abs(called / 20_000 - 0.05)).toBeLessThan(0.006);
  });

  test("and with a known repeatability, too, of which one in a hundred is called scattered", () => {
    let [called, scattered] = [0, 0];
    for (let pair = 0; pair < 20_000; pair++) {
      const { says } = difference(draw(2), draw(2), { percent: 0, floor: 1 }, [], "either");
      if (says === "more" || says === "less") called++;
      if (says === "scattered") scattered++;
    }
    expect(Math.abs(called / 20_000 - 0.05)).toBeLessThan(0.006);
    expect(Math.abs(scattered / 20_000 - 0.01)).toBeLessThan(0.003);
  });

  // Non-central t, design paper: 14 and 4 readings a side show a change of one and of two standard deviations eight times of ten.
  test.each([
    [1, 14],
    [2, 4],
  ])("a change of %d deviations is seen eight times of ten with %d readings a side", (size, count) => {
    let seen = 0;
    for (let pair = 0; pair < 5000; pair++) {
      const after = draw(count).map((value) => value - size);
      if (difference(draw(count), after, null, [], "less").says === "less") seen++;
    }
    expect(seen / 5000).toBeGreaterThan(0.78);
    expect(seen / 5000).toBeLessThan(0.86);
  });
});
