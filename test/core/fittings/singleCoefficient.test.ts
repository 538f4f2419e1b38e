import { DomainError } from "../../../src/core/errors";
import { parseFittingList } from "../../../src/core/fittings/fittingList";
import { singleCoefficient } from "../../../src/core/fittings/singleCoefficient";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";

const k = (text: string, shape: number | null, angle: number | null, inch = 0.0254): number =>
  singleCoefficient(parseFittingList("fitting", text, inch, "any"), shape, angle, inch);

describe("singleCoefficient", () => {
  // SMACNA Table A-7: smooth elbow 0.13 at r/D 2, multiplier 0.6 at 45 degrees; ASHRAE CD3-1: 0.16 at 125 mm, CD3-3: 0.10
  test("takes the shape and the angle that stand beside the name", () => {
    expect(k("elbow smooth", 2, null)).toBe(0.13);
    expect(relative(k("elbow smooth", 2, 45), 0.13 * 0.6)).toBeLessThan(1e-12);
    expect(relative(k("elbow smooth x3", 2, null), 0.39)).toBeLessThan(1e-12);
    expect(relative(k("elbow smooth 2", null, 45), 0.13 * 0.6)).toBeLessThan(1e-12);
    expect(k("elbow stamped", 125, null, 0.001)).toBe(0.16);
    expect(relative(k("elbow stamped 45", 125 / 25.4, null), 0.1)).toBeLessThan(1e-9);
  });

  test("without them is the list's own sum", () => {
    expect(relative(k("elbow 1.5; 0.4 x2", null, null), 0.27 + 0.8)).toBeLessThan(1e-12);
  });

  test.each<[string, number | null, number | null, string]>([
    ["elbow; branch", 1.5, null, "shape must be left out beside a list or a bare K; got 1.5"],
    ["elbow; branch", null, 45, "angle must be left out beside a list or a bare K; got 45"],
    ["0.4", 1.5, null, "shape must be left out beside a list or a bare K; got 1.5"],
    ["", 1.5, null, "shape must be left out beside a list or a bare K; got 1.5"],
    ["elbow 1.5", 2, null, "shape must be left out: the fitting's text has its own number; got 2"],
    ["branch 30", null, 45, "angle must be left out: the fitting's text has its own number; got 45"],
    ["branch", 2, null, 'shape must be left out: "branch" has no shape; got 2'],
    ["elbow", 9, null, 'shape must be from 0.75 to 2 for "elbow 4-piece" (r/D); got 9'],
  ])("refuses %p with shape %p and angle %p", (text, shape, angle, message) => {
    expectRefusal(() => k(text, shape, angle), DomainError, message);
  });
});
