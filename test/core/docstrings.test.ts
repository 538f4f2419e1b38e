import fs from "node:fs";
import path from "node:path";
import { sources } from "../../src/reference/sources";

const CORE = path.join(__dirname, "../../src/core");

/** What is defined by ourselves or by geometry needs no book. */
const NO_BOOK = ["house", "geometry", "points"];

const files = fs
  .readdirSync(CORE, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !file.endsWith(".d.ts"))
  .map((file) => ({ file, text: fs.readFileSync(path.join(CORE, file), "utf8") }));

/** Docstrings that describe a computation: those with @returns. */
const computations = files.flatMap(({ file, text }) =>
  [
    ...text.matchAll(
      /\/\*\*(?:(?!\*\/)[\s\S])*?@returns(?:(?!\*\/)[\s\S])*?\*\/\s*(?:export )?(?:const|function) (\w+)/g,
    ),
  ].map((match) => ({
    name: `${file}: ${match[1]!}`,
    doc: match[0],
  })),
);

test("there are computations to look at", () => expect(computations.length).toBeGreaterThan(25));

describe.each(computations)("$name", ({ doc }) => {
  test("names a source that exists", () => {
    const named = [...doc.matchAll(/@source (\w+)/g)].map((match) => match[1]!);
    expect(named.length).toBeGreaterThan(0);
    for (const source of named) expect([...Object.keys(sources), ...NO_BOOK]).toContain(source);
  });
});
