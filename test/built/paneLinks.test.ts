import { existsSync } from "node:fs";
import path from "node:path";
import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { referenceTables } from "../../src/reference";
import { cautionsFile, checksFile, functionFile, indexFile, tableFile } from "../../src/taskpane/help/files";
import { HelpLink } from "../../src/taskpane/help/HelpLink";
import { dist, readMetadata } from "./loadBundle";

/** The place that a link beside pane.html leads to, as a server would look for it. */
function placeOf(file: string): string {
  const markup = renderToStaticMarkup(createElement(HelpLink, { file }));
  return path.join(dist, decodeURIComponent(/href="([^"]+)"/.exec(markup)![1]!));
}

test.each([
  ...readMetadata().functions.map(({ name }) => functionFile(name)),
  ...referenceTables.map(({ name }) => tableFile(name)),
  indexFile,
  cautionsFile,
  checksFile,
])("the pane's link to %s leads to a file of the build", (file) => {
  expect(existsSync(placeOf(file))).toBe(true);
});

test("a link to a page that nobody wrote leads to none", () => {
  expect(existsSync(placeOf(functionFile("NOSUCHFUNCTION")))).toBe(false);
});
