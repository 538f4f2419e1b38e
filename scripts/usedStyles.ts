import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

/** Foreign stylesheets of which the page gets what it uses, as files of its own. */
export const STYLES = [
  { from: "bootstrap/dist/css/bootstrap.min.css", to: "bootstrap.used.css" },
  { from: "font-awesome/css/font-awesome.min.css", to: "font-awesome.used.css" },
] as const;

const root = path.join(__dirname, "..");
const GRID = "node_modules/@odoo/o-spreadsheet/dist/";
const OURS = "src/hosts/local";

/** Every word of the grid's library and of our page: whatever is none of them is no class, attribute or animation there. */
export function wordsOfPage(): ReadonlySet<string> {
  const files = [`${GRID}o_spreadsheet.xml`, `${GRID}o_spreadsheet.min.iife.js`, `${GRID}o_spreadsheet.css`];
  const ours = readdirSync(path.join(root, OURS), { recursive: true, encoding: "utf8" })
    .filter((file) => /\.(html|ts)$/.test(file))
    .map((file) => path.join(OURS, file));
  const texts = [...files, ...ours].map((file) => readFileSync(path.join(root, file), "utf8"));
  return new Set(texts.flatMap((text) => text.match(/[A-Za-z][\w-]*/g) ?? []));
}

/**
 * Of a minified stylesheet what a page with these words can use, in its order: a selector goes where it asks for a class or an
 * attribute that the page has no word for, a rule where no selector is left. Notices of licences stay.
 */
export function usedStyles(css: string, words: ReadonlySet<string>): string {
  let used = "";
  for (const { head, body } of rulesOf(css)) {
    const notice = /\/\*![^]*?\*\//.exec(head)?.[0] ?? "";
    const before = head.replace(/\/\*[^]*?\*\//g, "").trim();
    used += notice && `${notice}\n`;
    if (/^@(media|supports)/.test(before)) {
      const rules = usedStyles(body, words);
      if (rules !== "") used += `${before}{${rules}}`;
    } else if (before.startsWith("@")) {
      const animation = /^@(?:-webkit-)?keyframes (.*)/.exec(before)?.[1];
      if (animation === undefined || words.has(animation)) used += `${before}{${body}}`;
    } else {
      const selectors = selectorsOf(before).filter((selector) => asksFor(selector).every((name) => words.has(name)));
      if (selectors.length > 0) used += `${selectors.join(",")}{${body}}`;
    }
  }
  return used;
}

/** A statement without a body (a charset) belongs to no rule and is left out. */
function* rulesOf(css: string): Generator<{ readonly head: string; readonly body: string }> {
  let depth = 0;
  let [start, opened] = [0, 0];
  for (const { 0: mark, index } of css.matchAll(/"[^"]*"|\/\*[^]*?\*\/|[{};]/g)) {
    if (mark === "{" && depth++ === 0) opened = index;
    else if (mark === ";" && depth === 0) start = index + 1;
    else if (mark === "}" && --depth === 0) {
      yield { head: css.slice(start, opened), body: css.slice(opened + 1, index) };
      start = index + 1;
    }
  }
}

/** The list of a rule, whose commas inside brackets belong to one selector. */
const selectorsOf = (list: string): string[] => list.match(/(?:\([^)]*\)|\[[^\]]*\]|[^,([])+/g) ?? [];

/** Classes and attributes without which a selector meets nothing: what stands in brackets of a pseudo-class may be missing. */
const asksFor = (selector: string): string[] =>
  [...selector.replace(/\([^)]*\)/g, "").matchAll(/[.[]([A-Za-z][\w-]*)/g)].map((match) => match[1]!);
