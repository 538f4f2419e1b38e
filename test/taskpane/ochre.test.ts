import { ochre } from "../../src/taskpane/ochre";
import { contrast, luminance } from "../support/contrast";

// The grounds of the component library's light and dark themes.
const LIGHT = "#ffffff";
const LIGHT_RAISED = "#fafafa";
const DARK = "#292929";

test("the measure of contrast gives 21 for black on white, as the definition says", () => {
  expect(contrast("#000000", LIGHT)).toBeCloseTo(21, 10);
});

const steps = [10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110, 120, 130, 140, 150, 160] as const;

test("the ramp goes from dark to light", () => {
  const light = steps.map((step) => luminance(ochre[step]));
  expect(light).toEqual([...light].sort((a, b) => a - b));
});

test.each([40, 50, 60, 70, 80] as const)("step %d is readable on light grounds, and light text on it", (step) => {
  expect(contrast(ochre[step], LIGHT_RAISED)).toBeGreaterThanOrEqual(4.5);
});

test.each([100, 110, 120, 130] as const)("step %d is readable on the dark ground", (step) => {
  expect(contrast(ochre[step], DARK)).toBeGreaterThanOrEqual(4.5);
});

test("step 90, a pressed line in the dark theme, can be told from its ground", () => {
  expect(contrast(ochre[90], DARK)).toBeGreaterThanOrEqual(3);
});
