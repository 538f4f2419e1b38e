import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { FUNCTION_SCRIPTS } from "../../src/hosts/functionsFile";
import { kilobytes, type Row } from "./row";

const KILO = 1024;

/** What a file weighs on its way to a browser. [kB] */
export const packed = (dist: string, file: string): number =>
  gzipSync(readFileSync(path.join(dist, file)), { level: 9 }).length / KILO;

/** The scripts of our own that a page names. */
export const scriptsOf = (dist: string, page: string): string[] =>
  [...readFileSync(path.join(dist, page), "utf8").matchAll(/<script[^>]* src="([^":]+)"/g)].map((match) => match[1]!);

const sheetsOf = (dist: string, page: string): string[] =>
  [...readFileSync(path.join(dist, page), "utf8").matchAll(/<link[^>]* href="([^":]+)"/g)].map((match) => match[1]!);

/** What the page of the sheet loads before its first number, each file once: some it names to the browser and asks for later. */
export const localFiles = (dist: string): string[] => [
  ...new Set([
    "index.html",
    ...scriptsOf(dist, "index.html"),
    ...sheetsOf(dist, "index.html"),
    ...FUNCTION_SCRIPTS.filter((file) => existsSync(path.join(dist, file))), // an older build has one
    "functions.json",
    "vendor/o_spreadsheet.xml",
  ]),
];

export function sizes(dist: string): Row[] {
  const sum = (files: readonly string[]): number => files.reduce((total, file) => total + packed(dist, file), 0);
  const [first, ...later] = FUNCTION_SCRIPTS.filter((file) => existsSync(path.join(dist, file)));
  return [
    kilobytes("functions.js, packed", packed(dist, first!), { atMost: 50 }),
    ...later.map((file) => kilobytes(`${file}, packed`, packed(dist, file))),
    kilobytes("scripts of the pane that load at first, packed", sum(scriptsOf(dist, "pane.html")), { atMost: 140 }),
    kilobytes(
      "local page until its first number, with the grid and its pictures of signs, packed",
      sum(localFiles(dist)),
      { atMost: 450 },
    ),
  ];
}
