import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { SaxesParser } from "saxes";
import { referenceTables } from "../../src/reference";
import { formulaOf } from "../../scripts/functionFiles";
import { publishedGroups } from "../published/data";
import { dist, readMetadata } from "./loadBundle";

const folder = path.join(dist, "help");
const files = readdirSync(folder).filter((name) => name.endsWith(".html"));
const page = (file: string): string => readFileSync(path.join(folder, file), "utf8");

interface Parsed {
  readonly text: string;
  readonly links: readonly string[];
  readonly ids: readonly string[];
}

/** The pages are written so that they are XML too, which makes every unclosed or unescaped mark an error here. */
function parsed(file: string): Parsed {
  const parser = new SaxesParser();
  const [links, ids, texts]: [string[], string[], string[]] = [[], [], []];
  parser.on("opentag", ({ attributes: { href, id } }) => {
    if (href !== undefined) links.push(String(href));
    if (id !== undefined) ids.push(String(id));
  });
  parser.on("text", (text) => texts.push(text));
  parser.on("error", (error) => {
    throw error;
  });
  parser.write(page(file).replace("<!doctype html>", "")).close();
  return { text: texts.join(" ").replace(/\s+/g, " "), links, ids };
}

describe("the help pages", () => {
  test("are one for each function, each table, and six more", () => {
    const functions = readMetadata().functions.map(({ name }) => `duct-${name.toLowerCase()}.html`);
    const tables = referenceTables.map(({ name }) => `table-${name}.html`);
    expect([...files].sort()).toEqual(
      [
        ...functions,
        ...tables,
        "cautions.html",
        "checks.html",
        "first-in-excel.html",
        "index.html",
        "install.html",
        "sizes.html",
      ].sort(),
    );
  });

  test.each(files)("%s is well formed, and its links lead somewhere in the folder", (file) => {
    const broken = parsed(file).links.filter((target) => {
      if (target.startsWith("data:")) return false;
      const [name, anchor] = target.split("#") as [string, string?];
      if (!existsSync(path.join(folder, name === "" ? file : name))) return true;
      return anchor !== undefined && !parsed(name === "" ? file : name).ids.includes(anchor);
    });
    expect(broken).toEqual([]);
  });

  test("are named by the functions themselves", () => {
    const { functions } = readMetadata();
    expect(
      functions.filter(({ helpUrl = "" }) => !helpUrl.startsWith("https:") || !files.includes(path.basename(helpUrl))),
    ).toEqual([]);
  });

  test.each(readMetadata().functions)(
    "$name: arguments, example, limits, errors and source are there",
    ({ name, parameters }) => {
      const { text } = parsed(`duct-${name.toLowerCase()}.html`);
      for (const heading of ["Arguments", "Example", "Limits", "Errors", "Source"])
        expect(text).toContain(` ${heading} `);
      for (const parameter of parameters) expect(text).toContain(parameter.description);
      expect(text).toContain(`=DUCT.${name}(`);
      expect(text).not.toMatch(/shows #(VALUE|N\/A|NAME)[^ ]*: *Limits/);
    },
  );

  test("set a formula as mathematics wherever there is one", () => {
    const names = readMetadata().functions.map(({ name }) => name);
    const without = names.filter((name) => formulaOf(name) === undefined);
    expect(without.sort()).toEqual(["ABOUT", "CAUTIONS", "REFERENCE"]); // they look up or list
    for (const name of names.filter((one) => !without.includes(one)))
      expect(page(`duct-${name.toLowerCase()}.html`)).toContain("<math");
  });

  // worked by hand: 350 cfm through pi/4 (4/12)^2 = 0.0872665 ft2 is 4010.70 fpm; 1 in2 at 3 in.w.g.:
  // 0.6 * 6.4516e-4 m2 * sqrt(2 * 746.52 / 1.2014) = 0.013646 m3/s = 28.91 cfm
  test.each([
    ["duct-velocity.html", /=DUCT\.VELOCITY\(350,4\) .*gives 4010\.7/],
    ["duct-leak.html", /=DUCT\.LEAK\(1,3\) .*gives 28\.9/],
  ])("%s shows an example that is right", (file, expected) => {
    expect(parsed(file).text).toMatch(expected);
  });

  test("list every published number with what was printed, and count apart what was computed and what was copied", () => {
    const { text } = parsed("checks.html");
    const rows = publishedGroups.flatMap((group) => group.rows);
    expect(rows.length).toBeGreaterThan(500);
    const [, computed, copied] = /(\d+) numbers computed by us .* and (\d+) numbers copied as printed/.exec(text)!;
    expect(text.match(/copied exactly(?!”)/g)).toHaveLength(Number(copied));
    expect(Number(computed) + Number(copied)).toBe(rows.length);
    expect(text).not.toMatch(new RegExp(`\\b${rows.length} numbers`));
    expect(
      rows.filter(({ what, printed }) => !text.includes(what.replace(/\s+/g, " ")) || !text.includes(printed)),
    ).toEqual([]);
  });
});
