import { sources } from "../../src/reference/sources";
import { tasks } from "../../src/functions/tasks";
import { cellFunctions } from "../support/cellFunctions";

test("the pane and the help show every function once, with the guide of its own file", () => {
  const shown = tasks.flatMap(({ functions }) => functions);
  const declared = cellFunctions.map(({ name, guide }) => ({ name, ...guide }));
  const byName = (a: { name: string }, b: { name: string }): number => (a.name < b.name ? -1 : 1);
  expect([...shown].sort(byName)).toEqual([...declared].sort(byName));
});

test.each(cellFunctions)("the file of $name is named for it and says all of it", ({ call, guide }) => {
  expect(call).toBeInstanceOf(Function);
  expect(guide.example.asks).not.toBe("");
});

describe("the source of each formula", () => {
  const guides = tasks.flatMap(({ functions }) => functions);
  const named = guides.flatMap(({ name, source, basis }) =>
    source === "geometry" || source === "tables" ? [] : [{ name, basis, title: sources[source].title }],
  );

  test("says how it is known, where there is one", () => {
    expect(named.length).toBeGreaterThan(20);
    expect(named.filter(({ basis }) => basis === "")).toEqual([]);
    const bare = guides.filter(({ source }) => source === "geometry" || source === "tables");
    expect(bare.filter(({ basis }) => basis !== "")).toEqual([]);
  });

  test("does not claim more than its title: what is from memory, a practice, or read in a copy is not called read", () => {
    const is = (words: RegExp) => named.filter(({ title }) => words.test(title)).map(({ basis }) => basis);
    expect(new Set(is(/from memory/))).toEqual(new Set(["from memory"]));
    expect(new Set(is(/no source/))).toEqual(new Set(["common practice"]));
    expect(is(/read in (a copy|companion)|as tabulated|quoted/)).not.toContain("read");
  });

  test("of LEAK is the practice that a crack counts as a sharp-edged hole, not the standard of orifice plates", () => {
    expect(guides.filter(({ name }) => /^LEAK(AREA)?$/.test(name)).map(({ source }) => source)).toEqual([
      "commonPractice",
      "commonPractice",
    ]);
  });
});
