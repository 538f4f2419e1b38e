import { cautions } from "../../src/reference/cautions";
import { cautionTopics } from "../../src/reference/cautions/topics";
import { referenceTables } from "../../src/reference";
import { sources } from "../../src/reference/sources";
import { repeated, typed } from "./allRows";

const texts = referenceTables.flatMap((table) => table.rows.flat()).filter((cell) => typeof cell === "string");

describe("the words of the tables", () => {
  test("hold no sign or form of a trading name", () => {
    // A list of brands would itself name them; their marks and company forms are what can be looked for.
    const marks = /[®™©]|\b(Inc|Ltd|LLC|GmbH|Corp|Company|Co\.)\b/;
    expect(texts.length).toBeGreaterThan(1000);
    expect(texts.filter((value) => marks.test(value))).toEqual([]);
  });

  test("hold no address but that of a public authority", () => {
    const addresses = texts.filter((value) => /https?:|www\.|\.(com|net|org|io|gov)\b/.test(value));
    expect(addresses.filter((value) => !/\.gov\b/.test(value))).toEqual([]);
    expect(addresses.length).toBeGreaterThan(0);
  });

  test("are in British spelling where they are ours: American ones stand among the aliases only", () => {
    const ours = referenceTables.flatMap((table) => {
      const places = table.columns.flatMap(({ name }, place) =>
        ["label", "note", "fact", "caution"].includes(name) ? [place] : [],
      );
      return table.rows.flatMap((row) => places.map((place) => String(row[place] ?? "")));
    });
    expect(ours.filter((value) => /galvaniz|aluminum|\bmiter|fiber|\bvapor\b|\bgray\b/i.test(value))).toEqual([]);
  });
});

describe("the sources", () => {
  test("have titles that differ", () => {
    expect(repeated(Object.values(sources).map((source) => source.title))).toEqual([]);
  });

  test("say their year and terms", () => {
    const odd = Object.values(sources).filter(
      ({ title, year, terms }) => title === "" || terms === "" || !/\d{4}|undated|various/.test(year),
    );
    expect(odd).toEqual([]);
  });
});

describe("the cautions", () => {
  test("cover every topic", () => {
    expect([...new Set(cautions.map((row) => row.topic))].sort()).toEqual([
      "air",
      "electrical",
      "explosion",
      "health",
      "law",
      "machines",
      "numbers",
      "work",
    ]);
  });

  test("are found under words that lead to one topic only", () => {
    expect(repeated(cautionTopics.flatMap(({ key, aliases }) => [key, ...aliases]).map(typed))).toEqual([]);
    expect(cautionTopics.map(({ key }) => key)).toEqual([...new Set(cautions.map(({ topic }) => topic))]);
  });

  test("are one to three short sentences each", () => {
    const sentences = (text: string) => text.split(/[.:](?=\s|$)/).filter((part) => part.trim() !== "").length;
    expect(cautions.filter(({ text }) => text.length > 220 || !text.endsWith(".") || sentences(text) > 4)).toEqual([]);
  });

  test("tell to cut the power and let the wheel stop before reaching in", () => {
    expect(cautions[0]!.text).toMatch(/Cut the power.*stop.*before reaching/);
  });
});
