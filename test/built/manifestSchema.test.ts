/** The structure of the manifest by the schemas of its maker; what they cannot say, scripts/checkManifest.ts checks. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { hasXmllint, schemaFaults } from "../support/manifestSchema";
import { dist } from "./loadBundle";

const manifest = readFileSync(path.join(__dirname, "../../manifest.xml"), "utf8");
const long = (length: number): string => "x".repeat(length);

/** A fault, what is changed into what for it, and what the schemas say. */
const faults: readonly [string, string, string, RegExp][] = [
  ["an end tag that is missing", "</Resources>", "", /parser error : Opening and ending tag mismatch: Resources/],
  [
    "an element that is missing",
    / {2}<Version>.*\n/.exec(manifest)![0],
    "",
    /'ProviderName': This element is not expected.*Version/,
  ],
  ["an element that there is not", "<DefaultLocale>", "<Rule/><DefaultLocale>", /'Rule': This element is not expected/],
  [
    "an element that stands twice",
    "<Permissions>",
    "<Permissions>Restricted</Permissions><Permissions>",
    /'Permissions': This element is not expected/,
  ],
  [
    "an add-in of another type",
    'xsi:type="TaskPaneApp"',
    'xsi:type="ContentApp"',
    /'VersionOverrides': This element is not expected/,
  ],
  [
    "a version of its commands that there is not",
    '"VersionOverridesV1_0"',
    '"VersionOverridesV1_1"',
    /'VersionOverridesV1_1' of the xsi:type attribute does not resolve/,
  ],
  [
    "too long a name",
    '<DisplayName DefaultValue="',
    `<DisplayName DefaultValue="${long(126)}`,
    /'DisplayName'.*\[facet 'maxLength'\]/,
  ],
  [
    "too long a description",
    '<Description DefaultValue="',
    `<Description DefaultValue="${long(251)}`,
    /'Description'.*\[facet 'maxLength'\]/,
  ],
  [
    "too long an id of a group",
    '<Group id="',
    `<Group id="${long(126)}`,
    /'Group', attribute 'id'.*\[facet 'maxLength'\]/,
  ],
  [
    "too long an id of a text",
    '<bt:String id="Group.Label"',
    `<bt:String id="${long(33)}"`,
    /'String', attribute 'id'.*\[facet 'maxLength'\]/,
  ],
  [
    "an empty text",
    'id="Group.Label" DefaultValue="Duct Ledger"',
    'id="Group.Label" DefaultValue=""',
    /'String'.*\[facet 'minLength'\]/,
  ],
  [
    "too long a label",
    'id="Group.Label" DefaultValue="',
    `id="Group.Label" DefaultValue="${long(126)}`,
    /'String'.*\[facet 'maxLength'\]/,
  ],
  [
    "too long an explanation",
    'id="OpenPane.Description" DefaultValue="',
    `id="OpenPane.Description" DefaultValue="${long(251)}`,
    /'String'.*\[facet 'maxLength'\]/,
  ],
  [
    "too long an address",
    "https://localhost:3000/functions.json",
    `https://localhost:3000/${long(2048)}`,
    /'Url', attribute 'DefaultValue'.*\[facet 'maxLength'\]/,
  ],
  [
    "an element in the midst of the functions",
    "<Metadata>",
    "<Nothing/><Metadata>",
    /'Nothing': This element is not expected/,
  ],
];

if (!hasXmllint) console.warn("xmllint is not installed, so the manifest is not checked by its schemas here");
const check = hasXmllint ? describe : describe.skip;

check("the published schemas", () => {
  test("find no fault in the manifest, as it stands in the tree and as it was built", () => {
    expect(schemaFaults(manifest)).toEqual([]);
    expect(schemaFaults(readFileSync(path.join(dist, "manifest.xml"), "utf8"))).toEqual([]);
  });

  test.each(faults)("find %s", (_, passage, instead, why) => {
    expect(manifest).toContain(passage);
    const found = schemaFaults(manifest.replace(passage, instead));
    expect(found).toContainEqual(expect.stringMatching(why));
  });
});
