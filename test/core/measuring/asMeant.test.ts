import { asMeant } from "../../../src/core/measuring/asMeant";

// By the rule: one digit of the ±, two where it begins with a 1, and the value to the same place.
test.each([
  [338.4, 41.2, "340", "40"],
  [338.4, 14.2, "338", "14"],
  [1310.7, 162, "1310", "160"],
  [2.0934, 0.1432, "2.09", "0.14"],
  [2.0934, 0.0621, "2.09", "0.06"],
  [5, 87, "10", "90"],
  [99.6, 9.97, "100", "10"],
  [0, 0, "0", "0"],
  [1234.56, 0, "1235", "0"],
  [-23.4, 3.2, "-23", "3"],
])("%d ± %d is written %s ± %s", (value, error, written, off) => {
  expect(asMeant(value, error)).toEqual({ value: written, error: off });
});
