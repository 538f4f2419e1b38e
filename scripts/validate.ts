// npm run validate: asks the online check of Excel's maker about a manifest, for whoever has the internet. The rules that need none are tests.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { command } from "./command";

const USAGE = "npm run validate -- [dist/manifest.xml]";

/** What the check said, and how it ended; a sentence of ours in front where there was none. */
export function verdict(said: string, status: number | null): { readonly text: string; readonly isGood: boolean } {
  if (said.includes("Unable to contact the manifest validation service"))
    return {
      text: "The online check could not be reached, so it has said nothing about this manifest. Our own rules need no internet: npm run check:manifest",
      isGood: false,
    };
  return {
    text: said.trim() === "" ? `the check ended with ${status} and said nothing` : said.trim(),
    isGood: status === 0,
  };
}

async function validate([file = "dist/manifest.xml"]: string[]): Promise<void> {
  if (!existsSync(file))
    throw new Error(`there is no ${file}: npm run build writes dist/manifest.xml, npm run package another`);
  const home = path.dirname(createRequire(__filename).resolve("office-addin-manifest/package.json"));
  console.log(`Sending ${file} to the online check of Excel's maker.`);
  const { stdout, stderr, status } = spawnSync(process.execPath, [path.join(home, "cli.js"), "validate", file], {
    encoding: "utf8",
  });
  const { text, isGood } = verdict(`${stdout}\n${stderr}`, status);
  if (!isGood) throw new Error(text);
  console.log(text);
}

if (require.main === module) command(USAGE, validate);
