import fc from "fast-check";
import { referenceTables } from "../../../src/reference";
import { entriesOf, find } from "../../../src/taskpane/tables/search";
import { bluePipe, inventedTable, redPipe } from "./inventedTable";

const invented = entriesOf([inventedTable([redPipe, bluePipe])]);
const keysFound = (search: string): unknown[] => find(invented, search).map(({ row }) => row[0]);

describe("find, over invented pipes", () => {
  test.each([
    ["", ["red", "blue 15"]],
    ["  ?! ", ["red", "blue 15"]],
    ["rouge", ["red"]],
    ["ROHRCHEN", ["blue 15"]],
    ["röhrchen blaues", ["blue 15"]],
    ["pipe bore", ["red", "blue 15"]],
    ["red", ["red", "blue 15"]],
    ["book", ["red", "blue 15"]],
    ["memory", ["blue 15"]],
    ["weak", ["blue 15"]],
    ["1.5", ["blue 15"]],
    ["1,5", ["blue 15"]],
    ["15", ["blue 15"]],
    ["5", []],
    ["4.76251", ["red"]],
    ["4.763", ["red"]],
    ["red rouge brass", []],
    ["<b>rouge</b>", []],
  ])("%p finds %p", (search, keys) => expect(keysFound(search)).toEqual(keys));

  test("a row that has the words in its name comes before one that only mentions them", () => {
    const mentioning = entriesOf([inventedTable([bluePipe, redPipe])]);
    expect(find(mentioning, "red").map(({ row }) => row[0])).toEqual(["red", "blue 15"]);
  });
});

const entries = entriesOf(referenceTables);
const anyEntry = fc.constantFrom(...entries);
const anyWord = fc.oneof(
  fc.string({ unit: "grapheme" }),
  fc.double({ min: 0, max: 5000, noNaN: true }).map(String),
  anyEntry.chain(({ text }) => fc.constantFrom(...text.split(/\s+/))),
);

describe("find, over the reference tables", () => {
  test("every row stands once among the entries", () => {
    expect(entries).toHaveLength(referenceTables.reduce((sum, { rows }) => sum + rows.length, 0));
    expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
    const all = find(entries, "");
    expect(entries.every((entry, i) => all[i] === entry)).toBe(true);
  });

  test("every row is found by its own label, and by its key", () => {
    for (const entry of entries) {
      expect(find(entries, String(entry.row[1])).includes(entry)).toBe(true);
      expect(find(entries, String(entry.row[0])).includes(entry)).toBe(true);
    }
  });

  test("every row is found by each of its numbers", () => {
    fc.assert(
      fc.property(anyEntry, (entry) => {
        const plain = entry.row.filter((cell) => typeof cell === "number" && /^[\d.]+$/.test(String(cell)));
        for (const number of plain) expect(find(entries, String(number)).includes(entry)).toBe(true);
      }),
    );
  });

  test("adding a word never adds a row", () => {
    fc.assert(
      fc.property(fc.array(anyWord, { maxLength: 3 }), anyWord, (words, another) => {
        const before = new Set(find(entries, words.join(" ")));
        for (const entry of find(entries, [...words, another].join(" "))) expect(before.has(entry)).toBe(true);
      }),
    );
  });

  test.each([
    ["galvanized steel", "galvanised steel"],
    ["Galvanised STEEL", "galvanised steel"],
    ["aluminum duct", "aluminium"],
    ["flex hose", "hose"],
  ])("%p finds the material %p", (search, key) => {
    expect(find(entries, search).map(({ row }) => row[0])).toContain(key);
  });
});
