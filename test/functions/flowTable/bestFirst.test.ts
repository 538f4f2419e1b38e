import fc from "fast-check";
import { bestFirst } from "../../../src/functions/flowTable/bestFirst";

const HOOD = 0.2; // m3/s
const order = (gains: readonly number[]) => bestFirst(gains.map((gained, place) => ({ gained, place })), HOOD).map(({ place }) => place); // prettier-ignore

test("the largest gain comes first", () => {
  expect(order([0.01, 0.03, 0.02])).toEqual([1, 2, 0]);
  expect(order([])).toEqual([]);
});

// A billionth of 0.2 m3/s is 2e-10 m3/s.
test("gains that differ by less than a billionth of the hood's airflow stay as they came", () => {
  expect(order([0.01, 0.01 + 1e-10])).toEqual([0, 1]);
  expect(order([0.01, 0.01 + 3e-10])).toEqual([1, 0]);
  expect(order([0.01, 0.03 - 1e-10, 0.02, 0.03])).toEqual([1, 3, 2, 0]);
});

test("it is the best of the equal ones against which the others are held, so that no chain of small steps counts as equal", () => {
  expect(order([0.01, 0.01 + 1.5e-10, 0.01 + 3e-10])).toEqual([1, 2, 0]);
});

test("a change of the last digits never changes the order, and gains that differ are sorted", () => {
  const steps = fc.array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.double({ min: -1, max: 1, noNaN: true })));
  fc.assert(
    fc.property(steps, (gains) => {
      const exact = gains.map(([step]) => step * 0.01);
      const shaken = gains.map(([step, shake]) => step * 0.01 * (1 + shake * 1e-12));
      const sorted = exact.map((gained, place) => ({ gained, place })).sort((a, b) => b.gained - a.gained);
      expect(order(shaken)).toEqual(sorted.map(({ place }) => place));
    }),
  );
});
