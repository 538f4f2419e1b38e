import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import type { Page } from "playwright-core";
import { OFFLINE_START, offlineWorker, withOffline } from "../../scripts/package/offline";

/** A site whose every part tells its version, kept for offline use as a package is. */
export interface OfflineSite {
  readonly address: string;
  /** @param instead what the server answers with in place of some files, which the worker knows nothing of */
  readonly publish: (folder: string, version: string, instead?: Readonly<Record<string, string>>) => void;
  readonly asked: () => readonly string[]; // paths
  readonly stop: () => Promise<void>;
}

const TYPES: Readonly<Record<string, string>> = { html: "text/html", js: "text/javascript" };

const PAGE = `<!doctype html><html><head>
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'; connect-src 'self'" />
<script defer src="main.js"></script></head><body data-page="VERSION"><footer></footer></body></html>`;

/** Its second part is loaded when somebody asks for it, under the same name in each version. */
const MAIN = `document.body.dataset.main = "VERSION";
window.loadLater = () => new Promise((loaded, failed) => {
  const part = document.createElement("script");
  part.src = "later.js";
  part.onload = () => loaded(document.body.dataset.later);
  part.onerror = () => failed(new Error("not loaded"));
  document.head.append(part);
});`;

function filesOf(version: string): Record<string, string> {
  const site: Record<string, string> = {
    "index.html": withOffline(PAGE),
    "main.js": MAIN,
    "later.js": `document.body.dataset.later = "VERSION";`,
  };
  const files = Object.fromEntries(
    Object.entries(site).map(([path, text]) => [path, text.replaceAll("VERSION", version)]),
  );
  const bytes = Object.entries(files).map(([path, text]) => ({ path, bytes: Buffer.from(text) }));
  return { ...files, "offline-start.js": OFFLINE_START, "offline.js": offlineWorker(bytes) };
}

/** @param caching what the server says about caching; null where it says nothing */
export async function offlineSite(caching: string | null): Promise<OfflineSite> {
  const served = new Map<string, string>();
  const asked: string[] = [];
  const server: Server = createServer((request, response) => {
    const path = new URL(request.url ?? "/", "http://localhost").pathname;
    const file = path.endsWith("/") ? `${path}index.html` : path;
    const text = served.get(file);
    asked.push(path);
    if (text === undefined) return void response.writeHead(404).end();
    const type = TYPES[file.split(".").at(-1)!]!;
    response.writeHead(200, { "Content-Type": type, ...(caching === null ? {} : { "Cache-Control": caching }) });
    response.end(text);
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    publish: (folder, version, instead = {}) => {
      for (const [path, text] of Object.entries({ ...filesOf(version), ...instead })) served.set(folder + path, text);
    },
    asked: () => asked,
    stop: () =>
      new Promise((stopped) => {
        server.close(() => stopped());
        server.closeAllConnections();
      }),
  };
}

/** The versions of the parts that a page is made of, the one that it loads later included. */
export const partsOf = (page: Page): Promise<(string | undefined)[]> =>
  page.evaluate(async () => {
    const later = await (window as unknown as { loadLater: () => Promise<string> }).loadLater();
    const { page: html, main } = document.body.dataset;
    return [html, main, later];
  });

/** Waits until a worker is in charge of the folder, and until what its browser found newer has been taken in or refused. */
export const workerSettled = (page: Page): Promise<"waiting" | "active" | "refused"> =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    const found = await registration.update().catch(() => undefined);
    const next = (found ?? registration).installing;
    if (next !== null)
      await new Promise<void>((settled) => {
        const look = (): void => {
          if (next.state !== "installing") settled();
        };
        next.addEventListener("statechange", look);
        look();
      });
    if (next?.state === "redundant") return "refused";
    return registration.waiting === null ? "active" : "waiting";
  });
