import { existsSync } from "node:fs";
import path from "node:path";
import { referenceTables } from "../../src/reference";
import {
  cautionsFile,
  checksFile,
  functionFile,
  helpAddress,
  indexFile,
  sizesFile,
  tableFile,
} from "../../src/taskpane/help/files";
import { dist, readMetadata } from "./loadBundle";

/** The place that a link beside pane.html leads to, as a server would look for it. */
const placeOf = (file: string): string => path.join(dist, decodeURIComponent(helpAddress(file)));

test.each([
  ...readMetadata().functions.map(({ name }) => functionFile(name)),
  ...referenceTables.map(({ name }) => tableFile(name)),
  indexFile,
  cautionsFile,
  checksFile,
  sizesFile,
])("the pane's link to %s leads to a file of the build", (file) => {
  expect(existsSync(placeOf(file))).toBe(true);
});

test("a link to a page that nobody wrote leads to none", () => {
  expect(existsSync(placeOf(functionFile("NOSUCHFUNCTION")))).toBe(false);
});
