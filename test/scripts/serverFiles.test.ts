/** The three files for web servers must say of every file what `npm start` says of it. Each is read here as its server reads it. */
import { serverFiles } from "../../scripts/package/serverFiles";
import { every, parseXml } from "../../scripts/manifest/xml";
import { accessHeaders } from "../../scripts/site/headers";

const ADDRESS = "https://example.org/club/duct";
const textOf = (name: string): string => serverFiles(ADDRESS).find((file) => file.name === name)!.text;

const FILES = [
  "functions.json",
  "functions.js",
  "manifest.xml",
  "taskpane.html",
  "taskpane.js",
  "index.html",
  "pane.html",
  "help/index.html",
  "help/duct-area.html",
  "assets/icon-16.png",
  "vendor/o_spreadsheet.xml",
  "samples/budget-SI-empty.xlsx",
];

/** A path, then its headers, each on an indented line; a * at the end stands for anything. All rules that match hold. */
function fromHeaders(file: string): [string, string][] {
  const rules = textOf("_headers")
    .trim()
    .split(/\n(?=\S)/);
  return rules.flatMap((rule) => {
    const [path, ...headers] = rule.split("\n") as [string, ...string[]];
    const asked = `/club/duct/${file}`;
    const matches = path.endsWith("*") ? asked.startsWith(path.slice(0, -1)) : asked === path;
    return matches ? headers.map((line) => line.trim().split(": ") as [string, string]) : [];
  });
}

/** Sections go by a file's name without its folder, and a later one sets over an earlier. */
function fromHtaccess(file: string): [string, string][] {
  const name = file.split("/").at(-1)!;
  const headers = new Map<string, string>();
  for (const [, kind, pattern, body] of textOf(".htaccess").matchAll(/<(Files(?:Match)?) "(.*)">([^]*?)<[/]Files/g)) {
    if (kind === "Files" ? pattern !== name : !new RegExp(pattern!).test(name)) continue;
    for (const [, header, value] of body!.matchAll(/Header set (\S+) "(.*)"/g)) headers.set(header!, value!);
  }
  return [...headers];
}

/** A location is a file or a folder with all in it. */
function fromWebConfig(file: string): [string, string][] {
  return every(parseXml(textOf("web.config")), "location")
    .filter(({ attributes: { path } }) => file === path || file.startsWith(`${path}/`))
    .flatMap((location) => every(location, "add"))
    .map(({ attributes }) => [attributes.name!, attributes.value!]);
}

describe.each([
  ["_headers", fromHeaders],
  [".htaccess", fromHtaccess],
  ["web.config", fromWebConfig],
])("%s", (_, headersOf) => {
  test.each(FILES)("sends %s with the headers of npm start, each once", (file) => {
    expect(headersOf(file)).toEqual(Object.entries(accessHeaders(file)));
  });
});

test("the folder's own address, and the pane's without its ending, have the policies of their pages", () => {
  const policy = (file: string): [string, string][] => Object.entries(accessHeaders(file));
  expect(fromHeaders("")).toEqual(policy("index.html"));
  expect(fromHeaders("taskpane")).toEqual(policy("taskpane.html"));
});

test("descriptions of functions are JSON by each server's own rule, and the pane is not forbidden frames elsewhere", () => {
  expect(textOf(".htaccess")).toContain("AddType application/json .json\n");
  const config = every(parseXml(textOf("web.config")), "mimeMap").map(({ attributes }) => attributes);
  expect(config).toContainEqual({ fileExtension: ".json", mimeType: "application/json" });
  expect(textOf(".htaccess")).toContain("Header always unset X-Frame-Options\n");
  expect(textOf("web.config")).toContain('<remove name="X-Frame-Options" />');
});
