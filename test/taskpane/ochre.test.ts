import { ochre } from "../../src/taskpane/ochre";

// Relative luminance and contrast ratio as WCAG 2.2 (W3C, 2023) defines them; 4.5 for text is its criterion 1.4.3, 3 for
// signs that are no text its 1.4.11.
function luminance(colour: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const channel = parseInt(colour.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

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
