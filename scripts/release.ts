// `npm version 1.1.0` runs this between raising the number in package.json and its commit and tag: the manifest, the changelog
// and the README follow, so that what Excel, ABOUT and a reader see is one number.
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { version } from "../package.json";

export const UNRELEASED = "## Unreleased";

/** The changelog with its open part headed by the version and its day; a release of nothing is refused. */
export function headedChangelog(changelog: string, number: string, day: string): string {
  const [before, open] = changelog.split(`${UNRELEASED}\n`);
  if (before === undefined || open === undefined || !/^\s*- /.test(open))
    throw new Error(`CHANGELOG.md has no line under "${UNRELEASED}", so there is nothing to release`);
  if (changelog.includes(`\n## ${number} `)) throw new Error(`CHANGELOG.md has a heading for ${number} already`);
  return `${before}## ${number} (${day})\n${open}`;
}

/** The manifest with the version in Office's four numbers. */
export function versionedManifest(manifest: string, number: string): string {
  if (!/^\d+\.\d+\.\d+$/.test(number)) throw new Error(`a version is three numbers, such as 1.1.0; got ${number}`);
  const changed = manifest.replace(/<Version>[\d.]+<\/Version>/, `<Version>${number}.0</Version>`);
  if (changed === manifest) throw new Error(`manifest.xml has no other version than ${number}`);
  return changed;
}

/** The README with the version in its sentence on what works. */
export function versionedReadme(readme: string, number: string): string {
  const sentence = /This is release [\d.]+\d\./;
  if (!sentence.test(readme)) throw new Error('README.md has no sentence "This is release ..."');
  return readme.replace(sentence, `This is release ${number}.`);
}

function release(root: string, day: string): void {
  const inFile = (name: string, change: (text: string) => string): (() => void) => {
    const file = path.join(root, name);
    const changed = change(readFileSync(file, "utf8"));
    return () => writeFileSync(file, changed);
  };
  const writes = [
    inFile("CHANGELOG.md", (text) => headedChangelog(text, version, day)),
    inFile("manifest.xml", (text) => versionedManifest(text, version)),
    inFile("README.md", (text) => versionedReadme(text, version)),
  ];
  writes.forEach((write) => write()); // only when nothing was refused
}

if (require.main === module) release(path.resolve(__dirname, ".."), new Date().toISOString().slice(0, 10));
