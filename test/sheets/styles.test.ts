import { type Look, styles } from "../../src/sheets/styles";
import { contrast } from "../support/contrast";

const WHITE = "#ffffff";

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
