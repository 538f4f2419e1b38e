import type { BrowserContext, Page } from "playwright-core";
import { testBrowser } from "../support/servedSite";
import { type OfflineSite, offlineSite, partsOf, workerSettled } from "./offlineSite";

const browser = testBrowser();
let context: BrowserContext;
let site: OfflineSite;

beforeEach(async () => {
  context = await browser.newContext();
});
afterEach(async () => {
  await context.close();
  await site.stop();
});

async function tabAt(folder: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(site.address + folder);
  return page;
}

/** A first visit, after which the worker has its files. */
async function visit(folder: string): Promise<Page> {
  const page = await tabAt(folder);
  expect(await workerSettled(page)).toBe("active");
  return page;
}

/** Opens the folder until it is of this version, and looks that no tab on the way is of two. */
async function comesToBe(version: string, folder: string): Promise<void> {
  for (;;) {
    const page = await tabAt(folder);
    const parts = await partsOf(page);
    await page.close();
    expect(new Set(parts).size).toBe(1);
    if (parts[0] === version) return;
  }
}

describe.each([["max-age=600"], [null], ["no-store"]])("where the server says of caching: %s", (caching) => {
  beforeEach(async () => {
    site = await offlineSite(caching);
    site.publish("/club/", "one");
  });

  test("a new version comes whole, past the browser's own cache, when the tabs are closed", async () => {
    const page = await visit("/club/");
    expect(await partsOf(page)).toEqual(["one", "one", "one"]); // the browser's own cache has them now
    site.publish("/club/", "two");
    expect(await workerSettled(page)).toBe("waiting");
    await page.close();
    await comesToBe("two", "/club/");
    await site.stop();
    const offline = await tabAt("/club/");
    expect(await partsOf(offline)).toEqual(["two", "two", "two"]);
  });

  test("an open tab stays of its version, and so does another that is opened beside it; both say that a newer one is here", async () => {
    const open = await visit("/club/");
    const controlled = await tabAt("/club/");
    site.publish("/club/", "two");
    expect(await workerSettled(controlled)).toBe("waiting");
    expect(await partsOf(controlled)).toEqual(["one", "one", "one"]);
    await controlled.reload();
    expect(await partsOf(controlled)).toEqual(["one", "one", "one"]);
    await controlled.getByText("A newer version is here. It opens once every tab with this page is closed.").waitFor();
    await open.close();
    await controlled.close();
    await comesToBe("two", "/club/");
    const after = await tabAt("/club/");
    expect(await after.locator("#newer").count()).toBe(0);
  });
});

describe("two folders of one address", () => {
  beforeEach(async () => {
    site = await offlineSite("max-age=600");
    site.publish("/", "root");
    site.publish("/one/", "one");
    site.publish("/other/", "other");
  });

  test("each keep their own files, and a new version of one takes nothing from the other", async () => {
    for (const folder of ["/", "/one/", "/other/"]) await (await visit(folder)).close();
    site.publish("/one/", "one, newer");
    const page = await tabAt("/one/");
    await workerSettled(page);
    await page.close();
    await comesToBe("one, newer", "/one/");
    await site.stop();
    for (const [folder, version] of [
      ["/", "root"],
      ["/one/", "one, newer"],
      ["/other/", "other"],
    ] as const)
      expect(await partsOf(await tabAt(folder))).toEqual([version, version, version]);
  });

  test("of the stores that version 1.0.0 left, a folder clears its own", async () => {
    const page = await tabAt("/one/offline-start.js"); // a file of the address that starts nothing
    await page.evaluate(async () => {
      for (const [name, folder] of [
        ["duct-ledger-0123456789abcdef", "/one/"],
        ["duct-ledger-fedcba9876543210", "/other/"],
      ] as const)
        await (await caches.open(name)).put(folder, new Response("an old page"));
    });
    await (await visit("/one/")).close();
    const names = await page.evaluate(() => caches.keys());
    expect(names).toContain("duct-ledger-fedcba9876543210");
    expect(names).not.toContain("duct-ledger-0123456789abcdef");
  });
});

test("a file of another version, from a cache on the way, is refused: the version that is there stays, whole", async () => {
  site = await offlineSite(null);
  site.publish("/club/", "one");
  const page = await visit("/club/");
  site.publish("/club/", "two", { "later.js": `document.body.dataset.later = "one";` });
  expect(await workerSettled(page)).toBe("refused");
  await page.close();
  await site.stop();
  const offline = await tabAt("/club/");
  expect(await partsOf(offline)).toEqual(["one", "one", "one"]);
});
