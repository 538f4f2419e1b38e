import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { findNamed, nearestNames, plain, requireNamed, unknownName } from "../../../src/core/naming/findNamed";
import { expectRefusal } from "../../support/coreRefusal";

const rows = [
  { key: "elbow smooth", aliases: ["smooth elbow"] },
  { key: "branch", aliases: ["wye", "Y-branch"] },
  { key: "mitre", aliases: ["miter"] },
  { key: "weather cap" },
];

describe("plain", () => {
  test.each([
    ["  Elbow   SMOOTH ", "elbow smooth"],
    ["elbow-smooth", "elbow smooth"],
    ["elbow_smooth", "elbow smooth"],
    ["elbow - smooth", "elbow smooth"],
    ["", ""],
  ])("reads %p as %p", (text, name) => {
    expect(plain(text)).toBe(name);
  });

  test("of any text is the three rules, one after another", () => {
    const text = fc.string({ unit: fc.constantFrom(..."az09AZ -_\t\u00a0.é"), maxLength: 8 });
    const byRules = (name: string) => name.trim().toLowerCase().replace(/[\s_-]+/g, " "); // prettier-ignore
    fc.assert(fc.property(text, (name) => expect(plain(name)).toBe(byRules(name))));
  });

  test("of a plain name is the name itself", () => {
    fc.assert(fc.property(fc.string(), (text) => plain(plain(text).trim()) === plain(text).trim()));
  });
});

describe("findNamed", () => {
  test.each([
    ["branch", "branch"],
    [" BRANCH ", "branch"],
    ["y branch", "branch"],
    ["Miter", "mitre"],
    ["Elbow-Smooth", "elbow smooth"],
    ["weather  cap", "weather cap"],
  ])("finds %p as %p", (name, key) => {
    expect(findNamed(rows, name)?.key).toBe(key);
  });

  test.each(["branches", "elbow", "", "smooth"])("does not guess %p", (name) => {
    expect(findNamed(rows, name)).toBeUndefined();
  });

  test("takes the first of two rows that share a name", () => {
    expect(findNamed([{ key: "fan" }, { key: "blower", aliases: ["FAN"] }], "fan")?.key).toBe("fan");
  });
});

describe("nearestNames", () => {
  test.each([
    ["brnch", "branch"], // one letter missing
    ["mitter", "mitre"], // one letter from the alias "miter"
    ["smooth", "elbow smooth"], // a shared word
    ["weath", "weather cap"], // its beginning
    ["why", "branch"], // one letter from the alias "wye"
  ])("puts the right one first for %p: %p", (name, key) => {
    expect(nearestNames(rows, name)[0]).toBe(key);
  });

  // Letters changed, put in or left out, counted by hand. A name of several words counts as its nearest word, one letter farther; each
  // word of three letters or more that both have counts for it by two; a beginning counts as the name itself.
  test.each<[string, string, string[]]>([
    ["a beginning before 2 letters", "stra", ["strut", "straight pipe"]],
    ["nothing typed: the shortest", "", ["main", "fan"]],
    ["1 of a word and one more, before 3", "abcdeg", ["abcxyz", "abcdef other"]],
    ["1 before 1 of a word and one more", "abcdeg", ["abcdef other", "abcdxg"]],
    ["5 of a word and one more, less 2, before 5", "elbow left", ["elvvvvveft", "round elbow"]],
    ["1 before 2: a word of two letters is no help", "ab of", ["zz of", "abxof"]],
  ])("puts the last one first: %s", (_, name, keys) => {
    const table = keys.map((key) => ({ key }));
    expect(nearestNames(table, name)).toEqual([...keys].reverse());
  });

  test("gives three names at most, each a key, and copes with any text", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        const near = nearestNames(rows, text);
        expect(near).toHaveLength(3);
        expect(new Set(near).size).toBe(3);
        expect(rows.map(({ key }) => key)).toEqual(expect.arrayContaining(near));
      }),
    );
    expect(nearestNames(rows.slice(0, 2), "x")).toHaveLength(2);
    expect(nearestNames([], "x")).toEqual([]);
  });
});

describe("requireNamed", () => {
  test("returns the row", () => {
    expect(requireNamed("fitting", rows, "MITER", "a fitting").key).toBe("mitre");
  });

  test("refuses with the nearest names and what came", () => {
    const two = [{ key: "fan" }, { key: "main" }];
    expectRefusal(
      () => requireNamed("To", two, " mai ", "a run"),
      DomainError,
      'To must be a run (nearest: "main", "fan"); got "mai"',
    );
    expectRefusal(
      () => requireNamed("To", two, "", "a run"),
      DomainError,
      'To must be a run (nearest: "fan", "main"); got a blank cell',
    );
  });

  test("says the same through unknownName", () => {
    expect(unknownName("To", [{ key: "main" }], "mian", "a run").message).toBe(
      'To must be a run (nearest: "main"); got "mian"',
    );
  });
});
