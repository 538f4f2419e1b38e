import { mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { exists, type Owned, targetFolder, zipBeside } from "./target";

/**
 * Puts a package in its place: made in a folder of its own beside it, and renamed when it is whole. What stands there
 * is looked at once more before that, since making takes a while, and stays if anything fails.
 *
 * @param folder what `targetFolder` allowed
 */
export async function replaceFolder<T>(folder: string, owned: Owned, make: (aside: string) => Promise<T>): Promise<T> {
  const [aside, before] = [`${folder}.making-${process.pid}`, `${folder}.before-${process.pid}`];
  mkdirSync(path.dirname(folder), { recursive: true });
  mkdirSync(aside); // fails where somebody has a folder of that name
  try {
    const made = await make(aside);
    targetFolder(folder, owned);
    if (!exists(folder)) {
      renameSync(aside, folder);
      return made;
    }
    renameSync(folder, before);
    try {
      renameSync(aside, folder);
    } catch (error) {
      renameSync(before, folder);
      throw error;
    }
    rmSync(before, { recursive: true });
    return made;
  } finally {
    rmSync(aside, { recursive: true, force: true });
  }
}

/** Writes the zip beside a package, whole or not at all. */
export function replaceZip(folder: string, bytes: Uint8Array): void {
  const aside = `${zipBeside(folder)}.making-${process.pid}`;
  writeFileSync(aside, bytes);
  renameSync(aside, zipBeside(folder));
}
