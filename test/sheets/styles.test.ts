import { type Look, styles } from "../../src/sheets/styles";

const WHITE = "#ffffff";

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const part = parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

describe("the looks of cells", () => {
  test("the contrast formula gives what WCAG says of black on white, and of the grey at its limit", () => {
    expect(contrast("#000000", WHITE)).toBeCloseTo(21, 10);
    expect(contrast("#767676", WHITE)).toBeGreaterThanOrEqual(4.5); // the lightest grey that passes on white
    expect(contrast("#777777", WHITE)).toBeLessThan(4.5);
  });

  test.each(Object.entries<Look>(styles))("%s is readable: at least 4.5 to 1", (_, look) => {
    expect(contrast(look.ink, look.fill ?? WHITE)).toBeGreaterThanOrEqual(4.5);
  });

  test("an input cell differs from every other by its box, not by colour alone", () => {
    const boxed = Object.entries<Look>(styles).filter(([, look]) => look.border === "box");
    expect(boxed.map(([name]) => name)).toEqual(["input"]);
  });
});
