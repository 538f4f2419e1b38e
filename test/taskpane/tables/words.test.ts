import fc from "fast-check";
import { finder, fold, numbersMeant, wordsOf } from "../../../src/taskpane/tables/words";
import { lawRuns } from "../../support/lawRuns";

describe("fold", () => {
  test.each([
    ["GALVANIZED", "galvanised"],
    ["galvanised", "galvanised"],
    ["Röhre", "rohre"],
    ["ft²", "ft2"],
    ["№ 5", "no 5"],
    ["İ", "i"],
  ])("writes %s as %s", (text, folded) => expect(fold(text)).toBe(folded));
});

describe("wordsOf", () => {
  test.each([
    ["  elbow,  (90°)  ", ["elbow", "90"]],
    ["r/D 1.5:", ["r/d", "1.5"]],
    ["– … ?", []],
    ["", []],
  ])("takes %p apart into %p", (search, words) => expect(wordsOf(search)).toEqual(words));
});

describe("numbersMeant", () => {
  test.each([
    ["0.27", [0.27]],
    ["0,27", [0.27]],
    ["4", [4]],
    ["1,500", [1.5, 1500]],
    ["1,5000", [1.5]],
    ["0,500", [0.5]],
    ["4-piece", []],
    ["1.2.3", []],
    ["elbow", []],
  ])("reads %s as %p", (word, numbers) => expect(numbersMeant(word)).toEqual(numbers));
});

describe("finder", () => {
  test.each([
    ["galvanised steel", "vanis", true],
    ["elbow 1.5", "1.5", true],
    ["4-piece elbow", "4", true],
    ["ends with 4.", "4", true],
    ["4, 5", "4", true],
    ["elbow 1.5", "5", false],
    ["elbow 1.5", "1", false],
    ["elbow 15", "5", false],
    ["elbow 1.55", "1.5", false],
    ["elbow 1x5", "1.5", false],
    ["steel", "brass", false],
  ])("in %p, %p: %p", (text, word, expected) => expect(finder(word)(text)).toBe(expected));

  test("finds in any text each of its own words", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (text) => {
        for (const word of wordsOf(text)) expect(finder(word)(fold(text))).toBe(true);
      }),
    );
    const numeric = fc.string({ unit: fc.constantFrom(..."0159., -xİ²") });
    fc.assert(
      fc.property(numeric, (text) => {
        for (const word of wordsOf(text)) expect(finder(word)(fold(text))).toBe(true);
      }),
      lawRuns(1000),
    );
  });
});
