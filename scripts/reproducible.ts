// npm run check:reproducible: two copies of the tree, in other folders and other time zones, must build the same bytes.
import { execFileSync } from "node:child_process";
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { createRequire } from "node:module";
import os from "node:os";
import path from "node:path";
import { filesOf } from "./package/files";

const root = path.join(__dirname, "..");
const { resolve } = createRequire(path.join(root, "package.json"));
const ADDRESS = "https://example.org/duct";

/** What the build and the packaging tool write in a copy of the tree, by path. */
function written(folder: string, zone: string): Map<string, Uint8Array> {
  const listed = execFileSync("git", ["ls-files", "-z", "--cached", "--others", "--exclude-standard"], { cwd: root });
  for (const name of listed.toString().split("\0").filter(Boolean)) {
    const from = path.join(root, name);
    if (existsSync(from) && name !== "node_modules") cpSync(from, path.join(folder, name));
  }
  symlinkSync(path.join(root, "node_modules"), path.join(folder, "node_modules"), "junction");
  const run = (...command: string[]): void =>
    void execFileSync(process.execPath, [resolve("tsx/cli"), ...command], {
      cwd: folder,
      env: { ...process.env, TZ: zone },
      stdio: ["ignore", "ignore", "inherit"],
    });
  run("scripts/build.ts");
  run("scripts/package.ts", "--url", ADDRESS);
  const files = ["dist", "package"].flatMap((name) =>
    filesOf(path.join(folder, name)).map((file) => [`${name}/${file.path}`, file.bytes] as const),
  );
  return new Map([...files, ["package.zip", readFileSync(path.join(folder, "package.zip"))]]);
}

function main(): void {
  const folder = mkdtempSync(path.join(os.tmpdir(), "reproducible-"));
  try {
    const one = written(path.join(folder, "one"), "Pacific/Kiritimati");
    const other = written(path.join(folder, "the other"), "America/New_York");
    const names = new Set([...one.keys(), ...other.keys()]);
    const different = [...names].filter((name) => {
      const [here, there] = [one.get(name), other.get(name)];
      return here === undefined || there === undefined || Buffer.compare(here, there) !== 0;
    });
    for (const name of different) console.error(`${name} differs`);
    console.log(`${names.size} files, ${different.length} differ between two builds`);
    process.exitCode = different.length === 0 ? 0 : 1;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

main();
