import fc from "fast-check";
import { MOST_SETS, setsOfGates } from "../../../src/functions/flowTable/setsOfGates";

test("each set of gates comes once, those of fewer gates first", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 9 }), (count, most) => {
      const sets = setsOfGates(count, most);
      // Every subset is a number in binary; those of 1 to `most` digits are counted without any formula.
      const masks = Array.from({ length: 2 ** count - 1 }, (_, mask) => mask + 1);
      const digits = (mask: number): number => [...mask.toString(2)].filter((digit) => digit === "1").length;
      expect(sets.map((set) => set.reduce((sum, place) => sum + 2 ** place, 0)).sort((a, b) => a - b)).toEqual(
        masks.filter((mask) => digits(mask) <= most),
      );
      expect(sets.map((set) => set.length)).toEqual(sets.map((set) => set.length).sort((a, b) => a - b));
    }),
  );
});

test("31 gates two at a time are the most: 31 + 31 × 30 / 2 = 496 sets", () => {
  expect(setsOfGates(31, 2)).toHaveLength(496);
  expect(() => setsOfGates(32, 2)).toThrow(`at most ${MOST_SETS} sets of open gates, and 32 gates make 528; got 2`);
});
