import { version } from "../../../package.json";
import { keptHere } from "../../../src/hosts/local/keptHere";
import { bookOf, sheetOf } from "./gridOfOurs";

const kept = { workbook: bookOf(sheetOf([{ at: "A1", value: 1 }])), file: "mine.xlsx", unsaved: false };
const bar = { ask: async () => 1 };

test("nothing is said of what this version kept", async () => {
  expect(await keptHere({ ...kept, keptBy: version }, bar)).toEqual({ book: kept, words: "" });
});

test.each([
  ["1.0.0", `Version 1.0.0 kept this budget; this is ${version}, which computed it anew.`],
  [undefined, `An earlier version kept this budget; this is ${version}, which computed it anew.`],
])("what version %s kept is said to be computed anew", async (keptBy, words) => {
  expect(await keptHere({ ...kept, ...(keptBy === undefined ? {} : { keptBy }) }, bar)).toEqual({
    book: kept,
    words: `${words} CHANGELOG.md says which results moved, and which were wrong.`,
  });
});
