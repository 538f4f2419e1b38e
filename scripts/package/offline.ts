import { createHash } from "node:crypto";
import type { PackagedFile } from "./files";

/** What the local sheet needs when there is no network: all but samples, licences and source maps. */
const isNeededOffline = ({ path }: PackagedFile): boolean =>
  !/^(samples|offline)|\.(map|xml|txt|zip)$/.test(path) || path === "vendor/o_spreadsheet.xml";

/**
 * A service worker that keeps the local sheet's files after the first visit. It takes all files of a version or none: they
 * come past the browser's own cache, and one of another version, from whatever cache on the way, is refused by its hash.
 * While a tab is open its version stays in charge, so that no page loads a part of another one.
 */
export function offlineWorker(files: readonly PackagedFile[]): string {
  const needed = files.filter(isNeededOffline);
  const page = needed.find(({ path }) => path === "index.html");
  if (page === undefined) throw new Error("there is no index.html to keep for offline use");
  const hashes = [{ ...page, path: "./" }, ...needed].map(({ path, bytes }): [string, string] => [path, sha256(bytes)]);
  const listed = JSON.stringify(Object.fromEntries(hashes.sort(([one], [other]) => (one < other ? -1 : 1))), null, 2);
  const version = createHash("sha256").update(listed).digest("hex").slice(0, 16);
  return `// Keeps the files of this folder in the browser, so that the local sheet opens without a network.
const FILES = ${listed};
const FOLDER = new URL("./", self.location.href);
const STORES = "duct-ledger " + FOLDER.pathname + " "; // of this folder: others of this address have their own
const STORE = STORES + ${JSON.stringify(version)};

self.addEventListener("install", (event) => {
  event.waitUntil(keepAll());
});

async function keepAll() {
  const store = await caches.open(STORE);
  await Promise.all(
    Object.entries(FILES).map(async ([path, hash]) => {
      const address = new URL(path, FOLDER).href;
      const answer = await fetch(address, { cache: "reload", integrity: "sha256-" + hash });
      if (!answer.ok) throw new Error(address + " answered " + answer.status);
      await store.put(address, answer);
    }),
  );
}

self.addEventListener("activate", (event) => {
  event.waitUntil(clearOlder());
});

async function clearOlder() {
  for (const name of await caches.keys()) {
    const older = name.startsWith(STORES) ? name !== STORE : name.startsWith("duct-ledger-") && (await isOurs(name));
    if (older) await caches.delete(name);
  }
}

// Version 1.0.0 named its stores alike in all folders.
async function isOurs(name) {
  return (await (await caches.open(name)).match(FOLDER.href)) !== undefined;
}

self.addEventListener("fetch", (event) => {
  if (event.request.method !== "GET" || new URL(event.request.url).origin !== self.location.origin) return;
  event.respondWith(
    caches
      .open(STORE)
      .then((store) => store.match(event.request, { ignoreSearch: true }))
      .then((kept) => kept ?? fetch(event.request)),
  );
});
`;
}

const sha256 = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("base64");

/** Runs on the local page of a package and starts the worker; where a browser has none, the page works as it is. */
export const OFFLINE_START = `const tellOfNewer = () => {
  if (document.getElementById("newer") !== null) return;
  const line = document.createElement("p");
  line.id = "newer";
  line.setAttribute("role", "status");
  (document.querySelector("footer") ?? document.body).prepend(line);
  line.textContent = "A newer version is here. It opens once every tab with this page is closed.";
};

const follow = (registration) => {
  const look = () => {
    if (registration.waiting !== null && registration.active !== null) tellOfNewer();
  };
  registration.addEventListener("updatefound", () => registration.installing?.addEventListener("statechange", look));
  registration.installing?.addEventListener("statechange", look);
  look();
};

if ("serviceWorker" in navigator)
  navigator.serviceWorker
    .register("offline.js", { updateViaCache: "none" })
    .then(follow)
    .catch((error) => console.warn("not kept for offline use:", error));
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
