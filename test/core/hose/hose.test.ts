import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { hoseFactor } from "../../../src/core/hose/hoseFactor";
import { hoseText } from "../../../src/core/hose/hoseText";
import { expectRefusal } from "../../support/coreRefusal";

describe("the text of a hose", () => {
  test.each([
    ["10", { length: 10, smooth: false, lies: "drawn out" }],
    [" 2,5 Corrugated ", { length: 2.5, smooth: false, lies: "drawn out" }],
    ["10 smooth-bore", { length: 10, smooth: true, lies: "drawn out" }],
    ["10 compressed 15%", { length: 10, smooth: false, lies: { compressed: 15 } }],
    ["10 compressed 15 %", { length: 10, smooth: false, lies: { compressed: 15 } }],
    ["3 smooth as it hangs", { length: 3, smooth: true, lies: "as it hangs" }],
    ["3 drawn out", { length: 3, smooth: false, lies: "drawn out" }],
  ])("%j is read", (text, read) => expect(hoseText("Flex", text)).toEqual(read));

  test.each([
    "ten",
    "10 ft",
    "10 15%",
    "10 compressed",
    "10 compressed 15",
    "-3",
    "10 hose",
    "10 rough compressed 15%",
  ])("%j is refused with the ways it may be written", (text) =>
    expectRefusal(
      () => hoseText("Flex", text),
      DomainError,
      `Flex must be a length, or one with its kind and how it lies: "10", "10 smooth-bore", "10 compressed 15%", "10 as it hangs"; got "${text}"`,
    ),
  );

  test("is refused beyond what was measured", () =>
    expectRefusal(
      () => hoseText("Flex", "10 compressed 40%"),
      DomainError,
      "Flex: compressed must be from 0 to 30 %; got 40",
    ));
});

describe("what a hose costs as it lies", () => {
  // 6 in: exp(-0.756) = 0.469542; 15 %: 1 + 8.7 x 0.469542 = 5.08501; 4 %: 1 + 2.32 x 0.469542 = 2.08934.
  // 4 in: exp(-0.504) = 0.604109; 10 %: 1 + 5.8 x 0.604109 = 4.50383.
  test.each([
    [6, 15, 5.08501],
    [6, 4, 2.08934],
    [4, 10, 4.50383],
  ])("%d in, compressed %d %%: %d times", (inches, compressed, times) => {
    expect(hoseFactor(inches * 0.0254, { compressed })).toBeCloseTo(times, 4);
  });

  // LBNL's abstract: moderate compression about 4 times, further close to 10 (6 to 10 in).
  test("lies between the 4 and the 10 times that the abstract tells", () => {
    expect(hoseFactor(0.1524, { compressed: 30 })).toBeGreaterThan(8);
    expect(hoseFactor(0.1524, { compressed: 30 })).toBeLessThan(11);
    expect(hoseFactor(0.1524, "as it hangs")).toBe(4);
    expect(hoseFactor(0.1524, "drawn out")).toBe(1);
  });

  test("grows with compression and falls with diameter", () => {
    const percent = fc.double({ min: 0, max: 29, noNaN: true });
    fc.assert(
      fc.property(percent, fc.double({ min: 0.05, max: 0.4, noNaN: true }), (compressed, diameter) => {
        const at = (d: number, c: number) => hoseFactor(d, { compressed: c });
        expect(at(diameter, compressed + 1)).toBeGreaterThan(at(diameter, compressed));
        expect(at(diameter * 1.1, compressed + 1)).toBeLessThan(at(diameter, compressed + 1));
        expect(at(diameter, compressed)).toBeGreaterThanOrEqual(1);
      }),
    );
  });

  test("refuses what was not measured", () => {
    expectRefusal(() => hoseFactor(0.1, { compressed: 31 }), DomainError, "compressed must be from 0 to 30 %; got 31");
    expectRefusal(() => hoseFactor(0, "drawn out"), DomainError, "diameter must be above 0 m; got 0");
  });
});
