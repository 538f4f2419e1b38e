/** Office.js as its maker's server has it, from its package: a development dependency, whose licence lets add-ins be tested with it. */
import { existsSync } from "node:fs";
import path from "node:path";
import type { BrowserContext, Route } from "playwright-core";

const SERVER = "https://appsforoffice.microsoft.com/lib/1/hosted/";
const folder = path.join(path.dirname(require.resolve("@microsoft/office-js/package.json")), "dist");

/** The server tells capital letters from small ones as little as its own scripts do. */
function fileOf(url: string): string | null {
  const file = path.join(folder, new URL(url).pathname.slice(new URL(SERVER).pathname.length).toLowerCase());
  return file.startsWith(folder + path.sep) && existsSync(file) ? file : null;
}

const send = (route: Route): Promise<void> => {
  const file = fileOf(route.request().url());
  return file === null ? route.fulfill({ status: 404, body: "" }) : route.fulfill({ path: file });
};

export const serveOffice = (context: BrowserContext): Promise<unknown> => context.route(`${SERVER}**`, send);
