import { cpSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { homedir } from "node:os";
import path from "node:path";
import { buildIfNeeded } from "./buildIfNeeded";
import { command, readOptions } from "./command";
import { readAddress } from "./package/address";
import { filesOf, type PackagedFile, zipOf } from "./package/files";
import { MARKER, markerOf } from "./package/marker";
import { OFFLINE_START, offlineWorker, withOffline } from "./package/offline";
import { replaceFolder, replaceZip } from "./package/replace";
import { samples } from "./package/samples";
import { serverFiles } from "./package/serverFiles";
import { targetFolder } from "./package/target";
import { BUILT_FOR } from "./site/builtFor";

const root = path.join(__dirname, "..");
const USAGE = "npm run package -- --url https://example.org/ducts [--out package]";
const NAMES_ADDRESS = ["manifest.xml", "functions.json", "help/install.html"];

/** Fills an empty folder with what a static web server offers to a club, for one address. */
export async function makePackage(address: string, folder: string): Promise<readonly PackagedFile[]> {
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
  for (const { name, text } of serverFiles(address)) writeFileSync(path.join(folder, name), text);
  writeFileSync(path.join(folder, MARKER), markerOf(filesOf(folder)));
  return filesOf(folder);
}

async function main(args: string[]): Promise<void> {
  const options = { url: { type: "string" }, out: { type: "string", default: "package" } } as const;
  const { values } = readOptions({ args, options }, USAGE);
  const read = readAddress(values.url);
  if ("why" in read) throw new Error(read.why);
  const owned = { project: root, home: homedir() };
  const folder = targetFolder(values.out, owned);
  await buildIfNeeded(root, true);
  const files = await replaceFolder(folder, owned, (aside) => makePackage(read.address, aside));
  replaceZip(folder, zipOf(files));
  console.log(`${values.out}: ${files.length} files for ${read.address}; the same in ${values.out}.zip`);
}

if (require.main === module) command(USAGE, main);
