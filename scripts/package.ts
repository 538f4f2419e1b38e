import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { buildIfNeeded } from "./buildIfNeeded";
import { command, readOptions } from "./command";
import { readAddress } from "./package/address";
import { filesOf, type PackagedFile, zipOf } from "./package/files";
import { OFFLINE_START, offlineWorker, withOffline } from "./package/offline";
import { samples } from "./package/samples";

const root = path.join(__dirname, "..");
const BUILT_FOR = "https://localhost:3000"; // as the build has it
const USAGE = "npm run package -- --url https://example.org/ducts [--out package]";
const NAMES_ADDRESS = ["manifest.xml", "functions.json"];

/** Makes the folder that a static web server offers to a club, for one address. */
export async function makePackage(address: string, folder: string): Promise<readonly PackagedFile[]> {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  cpSync(path.join(root, "dist"), folder, { recursive: true, filter: (source) => !source.endsWith(".map") });
  for (const name of NAMES_ADDRESS) {
    const file = path.join(folder, name);
    writeFileSync(file, readFileSync(file, "utf8").replaceAll(BUILT_FOR, address));
  }
  mkdirSync(path.join(folder, "samples"));
  for (const { name, bytes } of await samples()) writeFileSync(path.join(folder, "samples", name), bytes);
  const page = path.join(folder, "index.html");
  writeFileSync(page, withOffline(readFileSync(page, "utf8")));
  writeFileSync(path.join(folder, "offline-start.js"), OFFLINE_START);
  writeFileSync(path.join(folder, "offline.js"), offlineWorker(filesOf(folder)));
  return filesOf(folder);
}

async function main(args: string[]): Promise<void> {
  const options = { url: { type: "string" }, out: { type: "string", default: "package" } } as const;
  const { values } = readOptions({ args, options }, USAGE);
  const read = readAddress(values.url);
  if ("why" in read) throw new Error(read.why);
  const folder = path.resolve(values.out);
  if (existsSync(folder) && !existsSync(path.join(folder, "manifest.xml")) && readdirSync(folder).length > 0)
    throw new Error(`${values.out} holds something else; name an empty folder with --out`);
  await buildIfNeeded(root, true);
  const files = await makePackage(read.address, folder);
  writeFileSync(`${folder}.zip`, zipOf(files));
  console.log(`${values.out}: ${files.length} files for ${read.address}; the same in ${values.out}.zip`);
}

if (require.main === module) command(USAGE, main);
