/** The page has of foreign stylesheets what its words ask for; here the grid's templates are read as markup, and lack nothing of the whole ones. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { SaxesParser } from "saxes";
import { STYLES } from "../../scripts/usedStyles";
import { dist } from "./loadBundle";

const packages = path.join(__dirname, "../../node_modules");
/** Classes that have a rule by themselves. */
const classesIn = (css: string): Set<string> =>
  new Set([...css.matchAll(/(?<=[{},]|\*\/\n?)\.([A-Za-z][\w-]*)(?=[{,:])/g)].map(([, name]) => name!));

/** What stands as a class of an element, or as a word in what computes one. */
function classesOfTemplates(): Set<string> {
  const found = new Set<string>();
  const parser = new SaxesParser();
  parser.on("opentag", ({ attributes }) => {
    for (const name of ["class", "t-att-class", "t-attf-class"])
      for (const word of attributes[name]?.match(/[A-Za-z][\w-]*/g) ?? []) found.add(word);
  });
  parser.write(readFileSync(path.join(packages, "@odoo/o-spreadsheet/dist/o_spreadsheet.xml"), "utf8")).close();
  return found;
}

test.each(STYLES)("$to has every class of the grid's templates that $from has", ({ from, to }) => {
  const whole = classesIn(readFileSync(path.join(packages, from), "utf8"));
  const used = classesIn(readFileSync(path.join(dist, to), "utf8"));
  const asked = [...classesOfTemplates()].filter((name) => whole.has(name));
  expect(asked.length).toBeGreaterThan(30);
  expect(asked.filter((name) => !used.has(name))).toEqual([]);
});

test.each(STYLES)("$to keeps the notice of its licence", ({ to }) => {
  expect(readFileSync(path.join(dist, to), "utf8")).toMatch(/^\/\*![^]*?MIT[^]*?\*\//);
});

test("the font of the signs lies where its stylesheet looks for it", () => {
  const css = readFileSync(path.join(dist, "font-awesome.used.css"), "utf8");
  const [, font] = /url\('([^'?]*\.woff2)/.exec(css)!;
  expect(readFileSync(path.join(dist, font!)).subarray(0, 4).toString()).toBe("wOF2");
});
