import { lstatSync, readdirSync, readFileSync, realpathSync } from "node:fs";
import path from "node:path";
import { unzipSync } from "fflate";
import { filesOf } from "./files";
import { strangerAmong } from "./marker";

/** Folders that a package must never replace: the project that packages, and the home of whoever runs it. */
export interface Owned {
  readonly project: string;
  readonly home: string;
}

const ELSEWHERE = "name another folder with --out";

/** Where a package may be written: the folder itself, links followed. Throws one sentence where it may not. */
export function targetFolder(named: string, owned: Owned): string {
  const folder = followed(path.resolve(named));
  const [project, home] = [followed(owned.project), followed(owned.home)];
  if (isWithin(folder, project)) throw new Error(`${named} is or holds the project itself; ${ELSEWHERE}`);
  if (isWithin(folder, home)) throw new Error(`${named} is or holds your home folder; ${ELSEWHERE}`);
  if (path.dirname(folder) === folder) throw new Error(`${named} is a whole drive; ${ELSEWHERE}`);
  if (isWithin(path.join(project, "dist"), folder)) throw new Error(`${named} is where the build writes; ${ELSEWHERE}`);
  refuseWhatIsNotOurs(folder, named);
  return folder;
}

/** An earlier package as this command wrote it may be replaced, and nothing else. */
function refuseWhatIsNotOurs(folder: string, named: string): void {
  if (exists(folder)) {
    if (!lstatSync(folder).isDirectory()) throw new Error(`${named} is no folder; ${ELSEWHERE}`);
    const stranger = strangerIn(folder);
    if (stranger !== null)
      throw new Error(`${named} holds ${stranger}. Nothing in it was touched: empty it yourself, or ${ELSEWHERE}`);
  }
  const zip = zipBeside(folder);
  if (exists(zip) && !isOurZip(zip))
    throw new Error(`${zip} is no package of ours. It was not touched: move it, or ${ELSEWHERE}`);
}

export const zipBeside = (folder: string): string => `${folder}.zip`;

/** What in a folder no package of ours put there. A link, or a folder without a file, is such a thing as well. */
function strangerIn(folder: string): string | null {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true });
  if (entries.length === 0) return null;
  const files = filesOf(folder);
  const folders = new Set(files.flatMap((file) => foldersAbove(file.path)));
  const odd = entries
    .filter((entry) => !entry.isFile())
    .map((entry) => ({ entry, at: path.relative(folder, path.join(entry.parentPath, entry.name)) }))
    .find(({ entry, at }) => !entry.isDirectory() || !folders.has(at.split(path.sep).join("/")));
  return strangerAmong(files) ?? (odd === undefined ? null : `${odd.at}, which no package put there`);
}

const foldersAbove = (file: string): string[] =>
  file
    .split("/")
    .slice(0, -1)
    .map((_, at, parts) => parts.slice(0, at + 1).join("/"));

function isOurZip(zip: string): boolean {
  try {
    const entries = Object.entries(unzipSync(readFileSync(zip)));
    return strangerAmong(entries.map(([name, bytes]) => ({ path: name, bytes }))) === null;
  } catch {
    return false;
  }
}

/** Whether a place is the folder or lies in it. */
function isWithin(folder: string, place: string): boolean {
  const way = path.relative(folder, place);
  return way.split(path.sep)[0] !== ".." && !path.isAbsolute(way);
}

export const exists = (place: string): boolean => lstatSync(place, { throwIfNoEntry: false }) !== undefined;

/** The place that a path means when its links are followed; what does not exist yet keeps its name. */
function followed(place: string): string {
  if (!exists(place)) return path.join(followed(path.dirname(place)), path.basename(place));
  try {
    return realpathSync.native(place); // native also gives a folder's name in its own small and capital letters
  } catch {
    throw new Error(`${place} is a link that leads nowhere; ${ELSEWHERE}`);
  }
}
