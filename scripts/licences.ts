import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import vendorFiles from "../src/hosts/local/vendorFiles.json";
import { STYLES } from "./usedStyles";

const root = path.join(__dirname, "..");
const dist = path.join(root, "dist");

// Licences under which a package may be built into our own MIT-licensed files ...
const BUILT_IN = ["MIT", "ISC", "0BSD", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0", "BlueOak-1.0.0"];
// ... and those under which it may ship beside them as files of its own, which anybody can exchange.
const BESIDE = [...BUILT_IN, "LGPL-3.0-only", "LGPL-3.0-or-later", "(OFL-1.1 AND MIT)"];

// Packages that name their licence but carry no text of it. This list may only shrink.
const WITHOUT_TEXT = ["@fluentui/react-icons", "saxes"];

export interface Shipped {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
  readonly builtIn: boolean;
}

/** Licences that forbid how a package is shipped, and packages whose licence text is missing. */
export function licenceFaults(packages: readonly Shipped[]): string[] {
  return packages.flatMap(({ name, licence, text, builtIn }) => {
    const allowed = builtIn ? BUILT_IN : BESIDE;
    const how = builtIn ? "built into our files" : "shipped beside our files";
    return [
      ...(allowed.includes(licence) ? [] : [`${name} is ${how}, which its licence (${licence}) does not allow here`]),
      ...(text === "" && !WITHOUT_TEXT.includes(name) ? [`${name} comes without a licence text`] : []),
    ];
  });
}

/** The notices that the licences ask for, one package after the other. */
export const notices = (packages: readonly Shipped[]): string =>
  packages
    .map(({ name, version, licence, text, builtIn }) =>
      [
        `${name} ${version} (${licence}), ${builtIn ? "built in" : "in vendor/"}`,
        "",
        text.trim() || "The package carries no text of it.",
        "",
      ].join("\n"),
    )
    .join(`\n${"-".repeat(80)}\n\n`);

/** Packages that the build took something from, by its own source maps and by the lists of files it copies, whole or in part. */
export function shippedPackages(): Shipped[] {
  const maps = readdirSync(dist).filter((name) => name.endsWith(".js.map"));
  const sources = maps.flatMap((name) => {
    return (JSON.parse(readFileSync(path.join(dist, name), "utf8")) as { sources: string[] }).sources;
  });
  const foldersOf = (files: readonly { readonly from: string }[]): string[] =>
    files.flatMap(({ from }) => folderOf(`node_modules/${from}`) ?? []);
  const beside = new Set(foldersOf(vendorFiles));
  // a stylesheet of a package that has files of its own here comes under what is said of those
  const styles = foldersOf(STYLES).filter((folder) => !beside.has(folder));
  const builtIn = new Set([...sources.flatMap((source) => folderOf(source) ?? []), ...styles]);
  return [
    ...[...builtIn].sort().map((folder) => describe(folder, true)),
    ...[...beside].sort().map((folder) => describe(folder, false)),
  ];
}

/** "node_modules/react" of "webpack://x/./node_modules/react/index.js"; null for a file of our own. */
const folderOf = (source: string): string | null =>
  /node_modules\/(.*node_modules\/)?(@[^/.]+\/)?[^/.@][^/]*/.exec(source)?.[0] ?? null;

function describe(folder: string, builtIn: boolean): Shipped {
  const at = path.join(root, folder);
  const { name, version, license } = JSON.parse(readFileSync(path.join(at, "package.json"), "utf8")) as {
    name: string;
    version: string;
    license?: string;
  };
  // one package states its terms in its readme only
  const file = readdirSync(at).find((entry) => /^(licen[cs]e|copying)/i.test(entry)) ?? "README.md";
  const text = existsSync(path.join(at, file)) ? readFileSync(path.join(at, file), "utf8") : "";
  return {
    name,
    version,
    licence: license ?? "none stated",
    text: /licen[cs]e|copyright/i.test(text) ? text : "",
    builtIn,
  };
}

if (require.main === module) {
  const packages = shippedPackages();
  const faults = licenceFaults(packages);
  if (faults.length === 0) writeFileSync(path.join(dist, "licences.txt"), notices(packages)); // without it no build is whole
  for (const fault of faults) console.error(fault);
  console.log(`dist/licences.txt: ${packages.length} packages, ${faults.length} faults`);
  process.exitCode = faults.length === 0 ? 0 : 1;
}
