import { readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { dist } from "./loadBundle";

const KILO = 1024;
const packed = (file: string): number => gzipSync(readFileSync(path.join(dist, file)), { level: 9 }).length / KILO;
const scriptsOf = (page: string): string[] =>
  [...readFileSync(path.join(dist, page), "utf8").matchAll(/<script[^>]* src="([^":]+)"/g)].map((match) => match[1]!);

test.each(["pane.html", "taskpane.html"])("what %s loads at first is at most 250 kB packed", (page) => {
  const scripts = scriptsOf(page).filter((file) => file !== "functions.js");
  expect(scripts).toContain("taskpane.js");
  expect(scripts.reduce((sum, file) => sum + packed(file), 0)).toBeLessThanOrEqual(250);
});

test("the cell functions are at most 60 kB packed", () => {
  expect(packed("functions.js")).toBeLessThanOrEqual(60);
});

test("the chart and what writes workbooks are in no file that the pane loads at first", () => {
  const first = readFileSync(path.join(dist, "taskpane.js"), "utf8");
  expect(first).not.toContain("maintainAspectRatio");
  expect(first).not.toContain("xl/worksheets");
});
