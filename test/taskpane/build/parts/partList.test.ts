import { lossFamilies } from "../../../../src/reference/lossFamilies";
import {
  oneLess,
  oneMore,
  partsOf,
  stillToSay,
  textOfParts,
  usualWords,
} from "../../../../src/taskpane/build/parts/partList";

const family = (key: string) => lossFamilies.find((one) => one.key === key)!;

test("a list is read one by one with its counts, and written as it was read", () => {
  const text = "elbow 1.5 x2; branch 30; 0.4";
  expect(partsOf(text)).toEqual([
    { words: "elbow 1.5", count: 2 },
    { words: "branch 30", count: 1 },
    { words: "0.4", count: 1 },
  ]);
  expect(textOfParts(partsOf(text))).toBe(text);
  expect(partsOf("")).toEqual([]);
});

test("one more of what is there counts up, of what is not there comes last; one less takes the last one away", () => {
  const parts = partsOf("Elbow 1.5; branch 30");
  expect(textOfParts(oneMore(parts, "elbow 1.5"))).toBe("Elbow 1.5 x2; branch 30");
  expect(textOfParts(oneMore(parts, "gate"))).toBe("Elbow 1.5; branch 30; gate");
  expect(textOfParts(oneLess(oneMore(parts, "branch 30"), 1))).toBe("Elbow 1.5; branch 30");
  expect(textOfParts(oneLess(parts, 0))).toBe("branch 30");
});

// the usual r/D and angle stand in the tables of fittings; a contraction's area ratio has none
test("a fitting is named with its usual shape or angle, and what has none is asked for", () => {
  expect(["elbow smooth", "branch", "gate", "contraction"].map((key) => usualWords(family(key)))).toEqual([
    "elbow smooth 1.5",
    "branch 45",
    "gate",
    "contraction",
  ]);
  expect(stillToSay(family("contraction"))).toBe("say its area ratio, entering / leaving");
  expect(stillToSay(family("branch"))).toBe("");
});
