import { roundedPressure } from "../../../src/taskpane/check/picture/shortWords";

test.each([
  [1584.6, "SI", "1,585 Pa"],
  [12_340.2, "SI", "12,340 Pa"],
  [7.918, "IP", "7.9 in.w.g."],
  [12.26, "IP", "12.3 in.w.g."],
] as const)("a pressure of %d (%s) is said as %s, as near as the sheets show it", (pressure, system, words) =>
  expect(roundedPressure(pressure, system)).toBe(words),
);
