import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";

/*
 * Examples, demo and tests are scenarios of our own, so each slip and each leak in them is one that we made up. What may
 * not come back is listed here: spelt so that this file does not hold it either.
 */

const ROOT = join(__dirname, "../..");
const TEXT = /\.(tsx?|m?js|md|html|css)$/;

const filesBelow = (folder: string): string[] =>
  readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return filesBelow(path);
    return TEXT.test(entry.name) ? [path] : [];
  });

const files = ["README.md", "CHANGELOG.md", "DEVELOPERS.md", ...["src", "test", "scripts", "docs"].flatMap(filesBelow)];
const texts = files.map((path) => ({ path: relative("", path), text: readFileSync(join(ROOT, path), "utf8") }));

/** The numbers of a text as they are written, thousands without their comma. */
const numbersIn = (text: string): Set<number> =>
  new Set((text.match(/(?<![\d.])\d[\d,]*(?:\.\d+)?/g) ?? []).map((number) => Number(number.replaceAll(",", ""))));

/** A number in one file with its tenfold, both rounded alike: the trace of a decimal place that slipped. */
const heldWithTenfold = (text: string, value: number, digits: number): boolean => {
  const numbers = numbersIn(text);
  const rounded = (number: number): number => Number(number.toPrecision(digits));
  return numbers.has(rounded(value)) && numbers.has(rounded(10 * value));
};

const FOUR_INCH_AREA = (Math.PI / 4) * (4 / 12) ** 2; // ft²

const SLOT = ["open", "bare", "slot"].join(" ");
const FORBIDDEN: readonly (readonly [what: string, found: (text: string) => boolean])[] = [
  [
    "the area of a 4 in duct and its tenfold",
    (text) => [2, 3, 4].some((d) => heldWithTenfold(text, FOUR_INCH_AREA, d)),
  ],
  [
    "a reading and its tenfold on one line, of the size that a 4 in duct carries at 4000 fpm",
    (text) => text.split("\n").some((line) => [349, 350].some((reading) => heldWithTenfold(line, reading, 4))),
  ],
  [
    "a bare slot of a 4 in gate, logged or computed alone",
    (text) => text.includes(`, 4, "${SLOT}"`) || text.includes(`("${SLOT}",4,`) || text.includes(`["${SLOT}"]], [[4]]`),
  ],
  [
    "two ranges of a leak",
    (text) =>
      [
        [21, 23],
        [45, 50],
      ].some((range) => text.includes(range.join(" to ") + " cfm")),
  ],
  ...[
    ["tape", "card"].join(", "),
    ["card", "foam"].join(" or "),
    ["costs", "little"].join(" "),
    ["takes", "minutes"].join(" "),
    ["takes a", "few minutes"].join(" "),
    ["the", "commonest", "slip"].join(" "),
  ].map((words) => [`the words "${words}"`, (text: string) => text.toLowerCase().includes(words)] as const),
];

describe("examples are our own", () => {
  test("all kinds of text are looked at, this file among them", () => {
    const paths = texts.map(({ path }) => path);
    expect(paths).toEqual(
      expect.arrayContaining([
        "README.md",
        join("src", "sheets", "demo", "shed.ts"),
        join("test", "reference", "ownExamples.test.ts"),
        join("docs", "mutation.md"),
      ]),
    );
    expect(numbersIn("3,490 or 0.1364, not 5/12").has(3490)).toBe(true);
  });

  test.each(FORBIDDEN)("nowhere: %s", (_, found) => {
    expect(texts.filter(({ text }) => found(text)).map(({ path }) => path)).toEqual([]);
  });
});
