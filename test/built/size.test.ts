import { readFileSync } from "node:fs";
import path from "node:path";
import { localFiles, packed as packedIn, scriptsOf } from "../../scripts/bench/sizes";
import { dist } from "./loadBundle";

const packed = (file: string): number => packedIn(dist, file);

test.each(["pane.html", "taskpane.html"])("what %s loads at first is at most 120 kB packed", (page) => {
  const scripts = scriptsOf(dist, page).filter((file) => file !== "functions.js");
  expect(scripts).toContain("taskpane.js");
  expect(scripts.reduce((sum, file) => sum + packed(file), 0)).toBeLessThanOrEqual(120);
});

test("the cell functions are at most 65 kB packed, and those that come later at most 60 kB", () => {
  expect(packed("functions.js")).toBeLessThanOrEqual(65);
  expect(packed("functionsLater.js")).toBeLessThanOrEqual(60);
});

test("the page of the sheet loads at most 775 kB packed before its first number", () => {
  expect(localFiles(dist).reduce((sum, file) => sum + packed(file), 0)).toBeLessThanOrEqual(775);
});

test("the chart and what writes workbooks are in no file that the pane loads at first", () => {
  const first = readFileSync(path.join(dist, "taskpane.js"), "utf8");
  expect(first).not.toContain("maintainAspectRatio");
  expect(first).not.toContain("xl/worksheets");
});
