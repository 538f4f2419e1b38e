/** The built add-in as Excel loads it: from the address in its manifest, with the headers of our own server. */
import { readFileSync, existsSync } from "node:fs";
import path from "node:path";
import type { BrowserContext } from "playwright-core";
import { accessHeaders } from "../../../scripts/site/headers";

/** The page that the manifest names for the pane. */
export function paneAddress(dist: string): string {
  const manifest = readFileSync(path.join(dist, "manifest.xml"), "utf8");
  return /<SourceLocation DefaultValue="([^"]+)"/.exec(manifest)![1]!;
}

export async function serveSite(context: BrowserContext, dist: string, pane: string): Promise<void> {
  const folder = new URL(".", pane).href;
  await context.route(`${folder}**`, (route) => {
    const name = decodeURIComponent(new URL(route.request().url()).pathname.slice(new URL(folder).pathname.length));
    const file = path.join(dist, name);
    if (!file.startsWith(dist + path.sep) || !existsSync(file)) return route.fulfill({ status: 404, body: "" });
    return route.fulfill({ path: file, headers: accessHeaders(name) });
  });
}
