import { execFileSync } from "node:child_process";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import zlib from "node:zlib";
import { devDependencies } from "../package.json";
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
  const shipped = unpackShipped();
  return playwright.launch({
    ...started,
    executablePath: path.join(shipped, "chromium"),
    // without FONTCONFIG_PATH no text is drawn on a machine without fonts
    env: {
      ...process.env,
      LD_LIBRARY_PATH: path.join(shipped, "al2023", "lib"),
      FONTCONFIG_PATH: path.join(shipped, "fonts"),
    },
  });
}

/**
 * The folder of the browser that ships as a package, with the libraries and fonts that a bare machine lacks. The package's own
 * unpacking writes where other tests already look, who then start half a browser, and it leaves the libraries out. So
 * everything is unpacked beside and moved into its place when it is whole.
 */
function unpackShipped(): string {
  const packed = path.join(path.dirname(require.resolve("@sparticuz/chromium")), "../../bin");
  const folder = path.join(os.tmpdir(), `chromium-${devDependencies["@sparticuz/chromium"]}-${os.userInfo().uid}`);
  if (fs.existsSync(folder)) return folder;
  const fresh = fs.mkdtempSync(`${folder}-`);
  const unpacked = (name: string): Buffer => zlib.brotliDecompressSync(fs.readFileSync(path.join(packed, name)));
  fs.writeFileSync(path.join(fresh, "chromium"), unpacked("chromium.br"), { mode: 0o755 });
  for (const [name, place] of [
    ["swiftshader", "."],
    ["al2023", "al2023"],
    ["fonts", "fonts"],
  ] as const) {
    fs.mkdirSync(path.join(fresh, place), { recursive: true });
    execFileSync("tar", ["-x", "-C", path.join(fresh, place)], { input: unpacked(`${name}.tar.br`) });
  }
  const fonts = path.join(fresh, "fonts", "fonts.conf");
  fs.writeFileSync(fonts, fs.readFileSync(fonts, "utf8").replaceAll("/tmp/fonts", path.join(folder, "fonts")));
  try {
    fs.renameSync(fresh, folder);
  } catch {
    fs.rmSync(fresh, { recursive: true }); // another process was first
  }
  return folder;
}
