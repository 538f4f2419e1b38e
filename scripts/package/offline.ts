import { createHash } from "node:crypto";
import type { PackagedFile } from "./files";

/** What the local sheet needs when there is no network: all but samples, licences and source maps. */
const isNeededOffline = ({ path }: PackagedFile): boolean =>
  !/^(samples|offline)|\.(map|xml|txt|zip)$/.test(path) || path === "vendor/o_spreadsheet.xml";

/**
 * A service worker that keeps the local sheet's files after the first visit. Its store is named after the files' own
 * bytes, so that another version of them never mixes with this one.
 */
export function offlineWorker(files: readonly PackagedFile[]): string {
  const kept = files.filter(isNeededOffline);
  const hash = createHash("sha256");
  for (const { path, bytes } of kept) hash.update(path).update("\0").update(bytes);
  const store = `duct-ledger-${hash.digest("hex").slice(0, 16)}`;
  const paths = kept.map(({ path }) => path).sort();
  return `// Keeps the files of this folder in the browser, so that the local sheet opens without a network.
const STORE = ${JSON.stringify(store)};
const FILES = ${JSON.stringify(["./", ...paths], null, 2)};

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(STORE).then((store) => store.addAll(FILES)).then(() => self.skipWaiting()));
});

self.addEventListener("activate", (event) => {
  const others = (names) => names.filter((name) => name.startsWith("duct-ledger-") && name !== STORE);
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(others(names).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

self.addEventListener("fetch", (event) => {
  if (event.request.method !== "GET" || new URL(event.request.url).origin !== self.location.origin) return;
  event.respondWith(
    caches.open(STORE).then((store) =>
      store.match(event.request, { ignoreSearch: true }).then((kept) => kept ?? fetch(event.request)),
    ),
  );
});
`;
}

/** Runs on the local page of a package and starts the worker; where a browser has none, the page works as it is. */
export const OFFLINE_START = `if ("serviceWorker" in navigator) {
  navigator.serviceWorker.register("offline.js").catch((error) => console.warn("not kept for offline use:", error));
}
`;

/** The local page with the worker's start in it. */
export function withOffline(page: string): string {
  const policy = "default-src 'none';";
  if (!page.includes(policy) || !page.includes("</head>"))
    throw new Error("the local page has no policy or no head to add the offline worker to");
  return page
    .replace(policy, `${policy} worker-src 'self';`)
    .replace("</head>", '<script defer src="offline-start.js"></script></head>');
}
