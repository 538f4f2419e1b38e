import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";
import { build, type Plugin } from "esbuild";

/** A checkout whose speed is measured: this one, or an older one, built. */
export interface Checkout {
  readonly root: string;
  readonly dist: string;
}

const OWN = path.join(__dirname, "../..");

/** @throws Error where nothing is built there */
export function checkoutIn(folder: string): Checkout {
  const root = path.resolve(folder);
  const dist = path.join(root, "dist");
  if (!existsSync(path.join(dist, "functions.js"))) throw new Error(`${folder} has no dist: build it first`);
  return { root, dist };
}

/**
 * What one of the scripts beside this one prints, run by itself with the sources of a checkout: it measures both in the same way.
 * It is bundled first, so that nothing stands between its loops and the engine.
 *
 * @param script the name of the file
 * @param args its own
 */
export async function saidBy(script: string, { root }: Checkout, ...args: readonly string[]): Promise<string> {
  const outfile = path.join(root, `coverage/bench-${script}.js`); // there, so that it finds the packages of that checkout
  await build({
    entryPoints: [path.join(__dirname, `${script}.ts`)],
    ...{ bundle: true, platform: "node", packages: "external", outfile, logLevel: "silent" },
    plugins: root === OWN ? [] : [sourcesOf(root)],
  });
  return execFileSync(process.execPath, [outfile, ...args], {
    encoding: "utf8",
    maxBuffer: 1e8,
    stdio: ["ignore", "pipe", "inherit"],
  });
}

/** What is imported from outside this folder comes from the other checkout. */
const sourcesOf = (root: string): Plugin => ({
  name: "sources of another checkout",
  setup: (building) => {
    building.onResolve({ filter: /^\.\.\// }, ({ path: asked, importer, kind }) => {
      if (path.dirname(importer) !== __dirname) return undefined;
      const there = path.join(root, path.relative(OWN, path.join(__dirname, asked)));
      return building.resolve(`./${path.basename(there)}`, { kind, resolveDir: path.dirname(there) });
    });
  },
});
