import { spawnSync } from "node:child_process";
import path from "node:path";

const schema = path.join(__dirname, "manifestSchema", "OfficeAppManifestV1_1.xsd");

/** Whether there is an engine for XML schemas; the tests that need it show as skipped where there is not. */
export const hasXmllint = spawnSync("xmllint", ["--version"], { stdio: "ignore" }).status === 0;

/** What the published schemas object to in a manifest, each with its line; none means that its structure is theirs. */
export function schemaFaults(xml: string): string[] {
  const { status, stderr, error } = spawnSync("xmllint", ["--noout", "--schema", schema, "-"], {
    input: xml,
    encoding: "utf8",
  });
  if (error !== undefined) throw error;
  if (status === 0) return [];
  if (status !== 3 && status !== 1) throw new Error(`xmllint failed: ${stderr}`); // 1: not well-formed, 3: not valid
  return stderr
    .split("\n")
    .filter((line) => /^-:\d+: .*error/.test(line))
    .map((line) => line.replace(/\{[^}]*\}/g, ""));
}
