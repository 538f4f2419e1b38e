import { readFileSync } from "node:fs";
import path from "node:path";
import { addressFaults, iconFaults, paneUrl } from "./manifest/addresses";
import { resourceFaults, valueOf } from "./manifest/resources";
import { child, every, parseXml, type XmlElement } from "./manifest/xml";

const GUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-5][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
const NAMESPACE = /^[A-Za-z][A-Za-z0-9._]{0,31}$/;
const NEEDED_SETS = ["SharedRuntime", "CustomFunctionsRuntime"];

/**
 * What is wrong with an add-in's XML manifest, each fault in one sentence; none means that it obeys every rule we know beside
 * those of the published schemas, which a test checks (test/built/manifestSchema.test.ts): order, types and lengths.
 * `site` is the folder that will be served at the manifest's address.
 */
export function manifestFaults(xml: string, site: string): string[] {
  let manifest: XmlElement;
  try {
    manifest = parseXml(xml);
  } catch (error) {
    return [`the manifest is not well-formed XML: ${(error as Error).message}`];
  }
  return [
    ...identityFaults(manifest),
    ...resourceFaults(manifest),
    ...addressFaults(manifest, site),
    ...iconFaults(manifest, site),
    ...runtimeFaults(manifest),
  ];
}

function identityFaults(manifest: XmlElement): string[] {
  const text = (name: string): string => child(manifest, name)?.text ?? "";
  const sets = every(child(manifest, "Requirements") ?? manifest, "Set").map(({ attributes }) => attributes.Name);
  return [
    ...unless(GUID.test(text("Id")), `Id must be a GUID in small letters; got "${text("Id")}"`),
    ...unless(/^\d+(\.\d+){3}$/.test(text("Version")), `Version must be four numbers; got "${text("Version")}"`),
    ...unless(
      text("Permissions") === "ReadWriteDocument",
      "Permissions must be ReadWriteDocument: the pane writes formulas",
    ),
    ...NEEDED_SETS.flatMap((name) => unless(sets.includes(name), `Requirements must name the set ${name}`)),
  ];
}

/** Functions and pane share one runtime only if all of them point to the same resource. */
function runtimeFaults(manifest: XmlElement): string[] {
  const runtimes = every(manifest, "Runtime");
  const shared = runtimes[0]?.attributes.resid;
  const inRuntime = [...every(manifest, "Page"), ...every(manifest, "Action")].map((holder) =>
    child(holder, "SourceLocation"),
  );
  const pointers = [...inRuntime, ...every(manifest, "FunctionFile")].filter((element) => element !== undefined);
  const namespace = valueOf(manifest, every(manifest, "Namespace")[0]?.attributes.resid) ?? "";
  return [
    ...unless(runtimes.length === 1, `there must be one Runtime; there are ${runtimes.length}`),
    ...unless(runtimes[0]?.attributes.lifetime === "long", 'Runtime must have lifetime="long"'),
    ...pointers
      .filter(({ attributes }) => attributes.resid !== shared)
      .map(({ name, line }) => `${name} (line ${line}) must point to "${shared}" like the Runtime`),
    ...unless(valueOf(manifest, shared) === paneUrl(manifest), "the Runtime's page must be the one of DefaultSettings"),
    ...unless(
      NAMESPACE.test(namespace),
      `the namespace must be a letter, then up to 31 of A-Z 0-9 . _; got "${namespace}"`,
    ),
    ...every(manifest, "TaskpaneId").map(
      ({ line }) => `TaskpaneId (line ${line}) must not stand beside a shared runtime`,
    ),
  ];
}

const unless = (holds: boolean, fault: string): string[] => (holds ? [] : [fault]);

if (require.main === module) {
  const site = path.join(__dirname, "../dist");
  const faults = manifestFaults(readFileSync(path.join(site, "manifest.xml"), "utf8"), site);
  for (const fault of faults) console.error(fault);
  console.log(faults.length === 0 ? "dist/manifest.xml: no fault found" : `dist/manifest.xml: ${faults.length} faults`);
  process.exitCode = faults.length === 0 ? 0 : 1;
}
