import { createRequire } from "node:module";

const load = createRequire(__filename);
const { withoutProperties } = load("../../scripts/withoutProperties.js") as {
  withoutProperties: (code: string, names: readonly string[]) => string;
};

const TABLE = `interface Row { readonly key: string; readonly note: string }
const MORE = "and more";
const from = (note: string) => ({ source: note, note });
export const rows: readonly Row[] = [
  { key: "one, note", value: 1, note: \`of \${MORE}\`, ...from("a") },
  {
    key: "two",
    note:
      "of { two }, note: ",
    points: [{ at: 2, source: "b" }],
  },
  { note: "only", ...source },
];
`;

const spaces = (code: string): string => code.replace(/\s+/g, " ");

describe("a table whose rows lack some of their properties", () => {
  const left = withoutProperties(TABLE, ["note", "source"]);

  test("has all others, wherever the same words stand in a text, a type or a name", () => {
    expect(spaces(left)).toBe(
      spaces(`interface Row { readonly key: string; readonly note: string }
const MORE = "and more";
const from = (note: string) => ({ });
export const rows: readonly Row[] = [
  { key: "one, note", value: 1, ...from("a") },
  { key: "two", points: [{ at: 2, }], },
  { },
];
`),
    );
  });

  test("has each line in its place, for the source map", () => {
    const lineOf = (code: string, words: string): number => code.split("\n").findIndex((line) => line.includes(words));
    for (const words of ["const from", 'key: "two"', "points:", "];"])
      expect([words, lineOf(left, words)]).toEqual([words, lineOf(TABLE, words)]);
  });

  test("is untouched where it has none of them", () => {
    expect(withoutProperties(TABLE, ["label"])).toBe(TABLE);
  });
});
