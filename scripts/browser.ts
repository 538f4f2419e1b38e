import { execFileSync } from "node:child_process";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import zlib from "node:zlib";
import { type Browser, chromium as playwright } from "playwright-core";

const ARGUMENTS = [
  "--no-sandbox",
  "--disable-gpu",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--disable-quic",
];

/**
 * Starts a Chromium for tests: the one that CHROMIUM_PATH names, else the one that ships as an npm package.
 *
 * @param more arguments of its own
 */
export async function launchBrowser(more: readonly string[] = []): Promise<Browser> {
  const own = process.env.CHROMIUM_PATH;
  const started = { headless: true, args: [...ARGUMENTS, ...more], timeout: 0 }; // however busy the machine is
  if (own !== undefined && own !== "") return playwright.launch({ ...started, executablePath: own });
  const { executablePath, libraries } = await unpackShipped();
  return playwright.launch({
    ...started,
    executablePath,
    // without FONTCONFIG_PATH no text is drawn on a machine without fonts
    env: {
      ...process.env,
      LD_LIBRARY_PATH: path.join(libraries, "lib"),
      FONTCONFIG_PATH: path.join(os.tmpdir(), "fonts"),
    },
  });
}

/**
 * The package unpacks its browser by itself, but the libraries that a bare machine lacks only on a cloud host, so that
 * is done here. Its own list of arguments is not used: one of them ends the browser with its first context.
 */
async function unpackShipped(): Promise<{ executablePath: string; libraries: string }> {
  const { default: chromium } = await import("@sparticuz/chromium");
  chromium.setGraphicsMode = false;
  const executablePath = await chromium.executablePath();
  const archive = path.join(path.dirname(require.resolve("@sparticuz/chromium")), "../../bin/al2023.tar.br");
  const libraries = path.join(os.tmpdir(), `chromium-libraries-${os.userInfo().uid}`);
  if (!fs.existsSync(path.join(libraries, "lib"))) {
    // unpacked beside and then moved, so that two test files that start together never see half of it
    const fresh = fs.mkdtempSync(`${libraries}-`);
    const tar = path.join(fresh, "libraries.tar");
    fs.writeFileSync(tar, zlib.brotliDecompressSync(fs.readFileSync(archive)));
    execFileSync("tar", ["-xf", tar, "-C", fresh]);
    fs.rmSync(tar);
    try {
      fs.renameSync(fresh, libraries);
    } catch {
      fs.rmSync(fresh, { recursive: true }); // another process was first
    }
  }
  return { executablePath, libraries };
}
