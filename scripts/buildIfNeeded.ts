import { type Dirent, existsSync, readdirSync, statSync } from "node:fs";
import path from "node:path";
import { build } from "./build";

const SOURCES = ["src", "assets", "scripts", "webpack.config.js", "manifest.xml", "package-lock.json"];

/** Builds dist/. With `skip` it is left as it is, unless it is missing or older than the sources. */
export async function buildIfNeeded(root: string, skip: boolean): Promise<void> {
  if (skip && isFresh(root)) return;
  console.log(skip ? "dist/ is missing or older than the sources, so it is built." : "Building; this takes a moment.");
  await build(root);
}

/** The licences are written last, so where they are missing the build did not end; the newest file tells when it ran. */
function isFresh(root: string): boolean {
  const dist = path.join(root, "dist");
  if (!existsSync(path.join(dist, "licences.txt"))) return false;
  const built = newest(dist);
  return SOURCES.map((name) => path.join(root, name)).every((source) => !existsSync(source) || newest(source) <= built);
}

function newest(place: string): number {
  const info = statSync(place);
  if (!info.isDirectory()) return info.mtimeMs;
  const entries: Dirent[] = readdirSync(place, { withFileTypes: true });
  return Math.max(0, ...entries.map((entry) => newest(path.join(place, entry.name))));
}
