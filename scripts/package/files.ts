import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { zipSync } from "fflate";

export interface PackagedFile {
  readonly path: string; // within the package, with slashes
  readonly bytes: Uint8Array;
}

/** Every file of a folder, in the order of their paths. */
export function filesOf(folder: string): PackagedFile[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.join(entry.parentPath, entry.name))
    .map((file) => ({
      path: path.relative(folder, file).split(path.sep).join("/"),
      bytes: readFileSync(file),
    }))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
}

const ALWAYS_THE_SAME = new Date("2000-01-01T00:00:00"); // of every entry, so that two runs give the same bytes

export const zipOf = (files: readonly PackagedFile[]): Uint8Array =>
  zipSync(Object.fromEntries(files.map(({ path: name, bytes }) => [name, [bytes, { mtime: ALWAYS_THE_SAME }]])), {
    level: 9,
  });
