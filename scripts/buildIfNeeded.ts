import { spawn } from "node:child_process";
import { type Dirent, existsSync, readdirSync, rmSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";

const SOURCES = ["src", "assets", "scripts", "webpack.config.js", "manifest.xml", "package-lock.json"];

/** Builds dist/. With `skip` it is left as it is, unless it is missing or older than the sources. */
export async function buildIfNeeded(root: string, skip: boolean): Promise<void> {
  if (skip && isFresh(root)) return;
  console.log(skip ? "dist/ is missing or older than the sources, so it is built." : "Building; this takes a moment.");
  rmSync(path.join(root, "dist"), { recursive: true, force: true }); // pieces of an earlier build would stay for ever
  const resolve = createRequire(path.join(root, "package.json")).resolve;
  await run(root, [resolve("webpack/bin/webpack.js"), "--stats", "errors-warnings"]);
  await run(root, [resolve("tsx/cli"), path.join(root, "scripts/help.ts")]);
}

async function run(root: string, command: readonly string[]): Promise<void> {
  const status = await new Promise<number | null>((resolve, reject) => {
    const child = spawn(process.execPath, command, { cwd: root, stdio: ["ignore", "inherit", "inherit"] });
    child.on("error", reject);
    child.on("exit", resolve);
  });
  if (status !== 0) throw new Error("the build failed; its messages stand above");
}

/** The build leaves a file alone whose content did not change, so the newest file tells when it ran. */
function isFresh(root: string): boolean {
  const dist = path.join(root, "dist");
  if (!existsSync(path.join(dist, "index.html"))) return false;
  const built = newest(dist);
  return SOURCES.map((name) => path.join(root, name)).every((source) => !existsSync(source) || newest(source) <= built);
}

function newest(place: string): number {
  const info = statSync(place);
  if (!info.isDirectory()) return info.mtimeMs;
  const entries: Dirent[] = readdirSync(place, { withFileTypes: true });
  return Math.max(0, ...entries.map((entry) => newest(path.join(place, entry.name))));
}
