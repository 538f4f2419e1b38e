/** functions.json by others' rules: what the official generator makes of the sources, and a published schema of the same entries. */
import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { finishMetadata } from "../../scripts/finishMetadata";
import { functionFiles } from "../../scripts/functionFiles";
import { BUILT_FOR } from "../../scripts/site/builtFor";
import { readMetadata } from "./loadBundle";

test("is what the generator makes of the sources, completed by us, and the generator finds no fault in them", async () => {
  const generated = await generateCustomFunctionsMetadata([...functionFiles], false);
  expect(generated.errors).toEqual([]);
  expect(finishMetadata(JSON.parse(generated.metadataJson), BUILT_FOR)).toEqual(readMetadata());
});

/**
 * The same entries stand in the JSON manifest, whose schemas come in a package of office-addin-manifest's with the engine for them. The
 * one member that those schemas lack is documented for functions.json only ("Handle and return errors", allowErrorForDataTypeAny).
 */
const VERSION = "v1.30";
const from = (place: string, name: string): string => createRequire(place).resolve(name);
const installed = existsSync(path.join(__dirname, "../../node_modules/office-addin-manifest"));
if (!installed)
  console.warn("office-addin-manifest is not installed, so functions.json is not checked by its schema here");

/** What the schema objects to: where, and what. */
function schemaFaults(metadata: object): string[] {
  const schemas = from(require.resolve("office-addin-manifest"), "@microsoft/app-manifest");
  const { default: Engine } = createRequire(schemas)("ajv-draft-04") as {
    default: new (options: object) => {
      addSchema: (schema: unknown, name: string) => void;
      compile: (schema: unknown) => { (data: unknown): boolean; errors?: { instancePath: string; message: string }[] };
    };
  };
  const engine = new Engine({ strict: false, allErrors: true, validateFormats: false });
  const file = path.join(path.dirname(schemas), "json-schemas/teams", VERSION, "MicrosoftTeams.schema.json");
  engine.addSchema(JSON.parse(readFileSync(file, "utf8")), "manifest");
  const check = engine.compile({ $ref: "manifest#/definitions/extensionCustomFunctions" });
  check(metadata);
  return (check.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}

const checked = (): Record<string, any> => {
  const { allowErrorForDataTypeAny, ...rest } = readMetadata();
  expect(allowErrorForDataTypeAny).toBe(true);
  return JSON.parse(JSON.stringify(rest));
};

(installed ? describe : describe.skip)("the published schema", () => {
  test("finds no fault", () => {
    expect(schemaFaults(checked())).toEqual([]);
  });

  test.each([
    ["an id with a blank", "id", "A B", /^[/]functions[/]0[/]id must match pattern/],
    ["a name that begins with a digit", "name", "4AREA", /^[/]functions[/]0[/]name must match pattern/],
    ["no description", "description", "", /^[/]functions[/]0[/]description must NOT have fewer than 1 characters/],
    ["an address without https", "helpUrl", "http://example.org", /^[/]functions[/]0[/]helpUrl must match pattern/],
    ["parameters that are no list", "parameters", {}, /^[/]functions[/]0[/]parameters must be array/],
    ["a result that is no object", "result", [], /^[/]functions[/]0[/]result must be object/],
  ])("finds %s", (_, member, value, why) => {
    const broken = checked();
    broken.functions[0][member] = value;
    expect(schemaFaults(broken)).toContainEqual(expect.stringMatching(why));
  });
});
