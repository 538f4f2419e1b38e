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

test.each([
  ["functions.js", 50],
  ["functionsLater.js", 40],
  ["functionsTables.js", 45],
])("of the cell functions %s is at most %d kB packed", (file, most) => {
  expect(packed(file)).toBeLessThanOrEqual(most);
});

test("the page of the sheet loads at most 784 kB packed before its first number", () => {
  expect(localFiles(dist).reduce((sum, file) => sum + packed(file), 0)).toBeLessThanOrEqual(784);
});

test("the chart and what writes workbooks are in no file that the pane loads at first", () => {
  const first = readFileSync(path.join(dist, "taskpane.js"), "utf8");
  expect(first).not.toContain("maintainAspectRatio");
  expect(first).not.toContain("xl/worksheets");
});
