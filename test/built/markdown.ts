import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

export const root = path.join(__dirname, "../..");

/** Our own documents: those at the top of the tree and those in docs/. */
export function documents(): { name: string; text: string }[] {
  const folder = (name: string): string[] => readdirSync(path.join(root, name)).map((entry) => path.join(name, entry));
  return [...folder("."), ...folder("docs")]
    .filter((name) => name.endsWith(".md"))
    .map((name) => ({ name, text: readFileSync(path.join(root, name), "utf8") }));
}

const FENCED = /^```.*?^```$/gms;

/** Where links and pictures lead. */
export const targets = (text: string): string[] =>
  [...text.replace(FENCED, "").matchAll(/\]\(([^)\s]+)\)/g)].map((found) => found[1]!);

/** The anchors of a document's headings, as the usual viewers make them. */
export const anchors = (text: string): string[] =>
  [...text.replace(FENCED, "").matchAll(/^#+ (.+)$/gm)].map((found) =>
    found[1]!
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\s-]/gu, "")
      .replace(/ /g, "-"),
  );

/** What follows the words in code of a document, such as the names after "npm run". */
export const wordsAfter = (text: string, words: string): string[] =>
  [...text.matchAll(new RegExp(`${words} ([\\w:./-]*[\\w])`, "g"))].map((found) => found[1]!);

/** The cells of the table between two marks, without the rule under its header. */
export function tableBetween(text: string, start: string, end: string): string[][] {
  const from = text.indexOf(start);
  const to = text.indexOf(end);
  if (from < 0 || to < from) throw new Error(`no table between ${start} and ${end}`);
  return text
    .slice(from + start.length, to)
    .trim()
    .split("\n")
    .filter((line) => !/^\|[\s|-]+\|$/.test(line))
    .map((line) =>
      line
        .split("|")
        .slice(1, -1)
        .map((cell) => cell.trim()),
    );
}
