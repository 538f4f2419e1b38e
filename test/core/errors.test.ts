import fc from "fast-check";
import {
  DomainError,
  limitsInWords,
  NoAnswerError,
  requireWithin,
  sentence,
  shown,
  type Limits,
} from "../../src/core/errors";
import { expectRefusal } from "../support/coreRefusal";

describe("the sentence of a refusal", () => {
  test.each<[unknown, string]>([
    [-4, "-4"],
    [0.1 + 0.2, "0.3"],
    [123456.789, "123456.8"],
    [NaN, "a number that is not finite"],
    [-Infinity, "a number that is not finite"],
    [true, "TRUE"],
    [false, "FALSE"],
    ["", "a blank cell"],
    [null, "a blank cell"],
    [undefined, "a blank cell"],
    [" saw ", '"saw"'],
    ["x".repeat(41), `"${"x".repeat(40)}…"`],
    ["x".repeat(40), `"${"x".repeat(40)}"`],
    [{ inWords: "the error #N/A" }, "the error #N/A"],
    [{}, "something that is neither number nor text"],
    [() => 1, "something that is neither number nor text"],
  ])("shows %p as %s", (value, words) => {
    expect(shown(value)).toBe(words);
  });

  test("is a clause: what was asked and what came", () => {
    expect(sentence("diameter", "above 0 in", -4)).toBe("diameter must be above 0 in; got -4");
  });

  test("never repeats more than forty characters of a text", () => {
    fc.assert(fc.property(fc.string({ maxLength: 500 }), (text) => shown(text).length <= 43));
  });
});

describe("limitsInWords", () => {
  test.each<[Limits, string, number, string]>([
    [{ above: 0 }, "in", -4, "above 0 in"],
    [{ atLeast: 0 }, "Pa", -1, "at least 0 Pa"],
    [{ below: 5 }, "m", 5, "below 5 m"],
    [{ atMost: 20 }, "m", 21, "at most 20 m"],
    [{ below: 5 }, "m", NaN, "below 5 m"],
    [{ atMost: 20 }, "m", -Infinity, "at most 20 m"],
    [{ atLeast: 0, atMost: 1 }, "", 2, "from 0 to 1"],
    [{ atLeast: -500, atMost: 11_000 }, "m", -900, "from -500 to 11000 m"],
    [{ above: 0, atMost: 20 }, "m", 21, "at most 20 m"],
    [{ above: 0, atMost: 20 }, "m", 0, "above 0 m"],
    [{ above: 0, atMost: 20 }, "m", NaN, "above 0 and at most 20 m"],
    [{ above: 0, atMost: 20 }, "m", Infinity, "above 0 and at most 20 m"],
    [{ above: 0, below: 1 }, "", 1, "below 1"],
    [{ atLeast: 1 / 3 }, "", 0, "at least 0.3333333"],
    [{}, "", NaN, "a number"],
    [{}, "m", NaN, "a number m"],
  ])("says %p in %s against %d as: %s", (limits, unit, value, words) => {
    expect(limitsInWords(limits, unit, value)).toBe(words);
  });
});

describe("requireWithin", () => {
  test("lets pass exactly what lies within", () => {
    const bound = fc.double({ min: -10, max: 10, noNaN: true });
    fc.assert(
      fc.property(bound, bound, fc.double({ min: -20, max: 20, noNaN: true }), (a, b, value) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const refuses = (limits: Limits): boolean => {
          try {
            requireWithin("x", value, limits, "");
            return false;
          } catch {
            return true;
          }
        };
        expect(refuses({ above: low, below: high })).toBe(!(value > low && value < high));
        expect(refuses({ atLeast: low, atMost: high })).toBe(!(value >= low && value <= high));
        expect(refuses({ atLeast: value, atMost: value })).toBe(false);
        expect(refuses({ above: value })).toBe(true);
        expect(refuses({ below: value })).toBe(true);
      }),
    );
  });

  test.each([NaN, Infinity, -Infinity])("refuses %d even without limits", (value) => {
    expectRefusal(
      () => requireWithin("x", value, {}, ""),
      DomainError,
      "x must be a number; got a number that is not finite",
    );
  });

  test("keeps the argument, the value and the limits for the cells", () => {
    const limits = { above: 0 };
    let caught: unknown;
    try {
      requireWithin("diameter", -4, limits, "in");
    } catch (error) {
      caught = error;
    }
    expect(caught).toMatchObject({
      name: "DomainError",
      argument: "diameter",
      value: -4,
      requirement: "above 0 in",
      limits,
    });
  });
});

test("no answer is an error of its own", () => {
  const error = new NoAnswerError("the curve ends before");
  expect(error).not.toBeInstanceOf(DomainError);
  expect(error.name).toBe("NoAnswerError");
  expect(error.message).toBe("the curve ends before");
});
