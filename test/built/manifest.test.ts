import { cpSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { version } from "../../package.json";
import { manifestFaults } from "../../scripts/checkManifest";
import { dist } from "./loadBundle";

const manifest = readFileSync(path.join(__dirname, "../../manifest.xml"), "utf8");
const built = readFileSync(path.join(dist, "manifest.xml"), "utf8");
const HOME = "https://localhost:3000";

/** The manifest with one passage changed; fails if the passage is not there, so that no breakage is a mere belief. */
function broken(passage: string, instead: string): string {
  expect(manifest).toContain(passage);
  return manifest.replace(passage, instead);
}

const VERSION = `<Version>${version}.0</Version>`;

describe("the manifest", () => {
  test("has the version of the package", () => {
    expect(readFileSync(path.join(__dirname, "../../manifest.xml"), "utf8")).toContain(
      `<Version>${version}.0</Version>`,
    );
  });

  test("has no fault as it stands in the tree", () => {
    expect(manifestFaults(manifest, dist)).toEqual([]);
  });

  test("has no fault as it was built", () => {
    expect(manifestFaults(built, dist)).toEqual([]);
  });

  test("is built as it stands in the tree", () => {
    expect(built).toBe(manifest);
  });

  test("names the functions' script and metadata that the build writes", () => {
    expect(manifest).toContain(`<bt:Url id="Functions.Script.Url" DefaultValue="${HOME}/functions.js"/>`);
    expect(manifest).toContain(`<bt:Url id="Functions.Metadata.Url" DefaultValue="${HOME}/functions.json"/>`);
  });
});

/** What is changed, into what, and the sentence that must come; § is the line on which the change ends. */
const breakages: readonly [string, string, string | RegExp][] = [
  ["</Resources>", "", /^the manifest is not well-formed XML: .*unexpected close tag/],
  [VERSION, "<Version>1</Version>", 'Version must be four numbers; got "1"'],
  ["61a3d3ca-", "61A3D3CA-", 'Id must be a GUID in small letters; got "61A3D3CA-a16c-48db-8f49-fcede8c5a216"'],
  [
    "<Permissions>ReadWriteDocument",
    "<Permissions>Restricted",
    "Permissions must be ReadWriteDocument: the pane writes formulas",
  ],
  ['Name="SharedRuntime"', 'Name="ExcelApi"', "Requirements must name the set SharedRuntime"],
  [
    '<Label resid="Group.Label"/>',
    '<Label resid="Nowhere"/>',
    'Label (line §) points to "Nowhere", which is not among the resources',
  ],
  [
    '<Label resid="Group.Label"/>',
    '<Label resid="OpenPane.Description"/>',
    'Label (line §) points to "OpenPane.Description", which is not one of ShortStrings',
  ],
  ['<Label resid="Group.Label"/>', '<Label resid="OpenPane.Label"/>', '"Group.Label" in ShortStrings is never used'],
  ['<bt:String id="Group.Label"', '<bt:String id="OpenPane.Label"', 'the id "OpenPane.Label" stands twice'],
  [
    `${HOME}/functions.json`,
    `http://localhost:3000/functions.json`,
    "http://localhost:3000/functions.json must begin with https://",
  ],
  [
    `${HOME}/functions.json`,
    "https://example.org/functions.json",
    `https://example.org/functions.json must lie under ${HOME}/`,
  ],
  [`${HOME}/functions.json`, `${HOME}/missing.json`, `${HOME}/missing.json names a file that is not there`],
  [`${HOME}/assets/icon-64.png`, `${HOME}/functions.js`, "HighResolutionIconUrl must be a .png picture"],
  [
    '<Icon>\n                  <bt:Image size="16"',
    '<Icon><bt:Image size="17"',
    "Icon (line §) needs a picture of 16 px",
  ],
  [
    '<IconUrl DefaultValue="https://localhost:3000/assets/icon-32.png"/>',
    '<IconUrl DefaultValue="https://localhost:3000/assets/icon-48.png"/>',
    "IconUrl must be 32 px square; its picture is 48 x 48",
  ],
  [
    '<bt:Image size="80" resid="Icon.80"',
    '<bt:Image size="80" resid="Icon.96"',
    "Icon.96 must be 80 px square; its picture is 96 x 96",
  ],
  [
    '<Runtime resid="Taskpane.Url" lifetime="long"/>',
    '<Runtime resid="Taskpane.Url" lifetime="long"/><Runtime resid="Taskpane.Url" lifetime="long"/>',
    "there must be one Runtime; there are 2",
  ],
  ['lifetime="long"', 'lifetime="short"', 'Runtime must have lifetime="long"'],
  [
    '<Page>\n              <SourceLocation resid="Taskpane.Url"/>',
    '<Page>\n              <SourceLocation resid="LearnMore.Url"/>',
    'SourceLocation (line §) must point to "Taskpane.Url" like the Runtime',
  ],
  [
    'id="Taskpane.Url" DefaultValue="https://localhost:3000/taskpane.html"',
    'id="Taskpane.Url" DefaultValue="https://localhost:3000/functions.js"',
    "the Runtime's page must be the one of DefaultSettings",
  ],
  [
    'DefaultValue="DUCT"',
    'DefaultValue="4DUCT"',
    'the namespace must be a letter, then up to 31 of A-Z 0-9 . _; got "4DUCT"',
  ],
  [
    '<Action xsi:type="ShowTaskpane">',
    '<Action xsi:type="ShowTaskpane"><TaskpaneId>Pane</TaskpaneId>',
    "TaskpaneId (line §) must not stand beside a shared runtime",
  ],
];

describe("the checker of the manifest", () => {
  test.each(breakages)("sees %j changed to %j", (passage, instead, sentence) => {
    const xml = broken(passage, instead);
    const line = xml.slice(0, xml.indexOf(instead) + instead.length).split("\n").length;
    const expected =
      typeof sentence === "string" ? sentence.replace("§", String(line)) : expect.stringMatching(sentence);
    expect(manifestFaults(xml, dist)).toContainEqual(expected);
  });

  test("sees an icon that is missing from the served folder", () => {
    const site = mkdtempSync(path.join(tmpdir(), "manifest-"));
    try {
      const isServed = (file: string): boolean => !file.endsWith("icon-80.png");
      cpSync(path.join(dist, "assets"), path.join(site, "assets"), { recursive: true, filter: isServed });
      for (const name of ["taskpane.html", "functions.js", "functions.json"])
        cpSync(path.join(dist, name), path.join(site, name));
      expect(manifestFaults(manifest, site)).toEqual([`${HOME}/assets/icon-80.png names a file that is not there`]);
    } finally {
      rmSync(site, { recursive: true });
    }
  });
});
