import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Page } from "playwright-core";
import { DIST, servedFolder, testBrowser } from "../support/servedSite";
import { isReady, keptSays, readOne, typeInto } from "./localPage";

let root: string;
const browser = testBrowser();
const serving = servedFolder(() => {
  root = mkdtempSync(path.join(tmpdir(), "folders-"));
  const filter = (file: string): boolean => !file.endsWith(".map");
  for (const folder of ["one", "other"]) cpSync(DIST, path.join(root, folder), { recursive: true, filter });
  return root;
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

test("two folders of one address keep a budget each", async () => {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  const open = async (folder: string): Promise<Page> => {
    const page = await context.newPage();
    await page.goto(`${serving.address}/${folder}/`);
    await isReady(page);
    return page;
  };
  const one = await open("one");
  await typeInto(one, "A40", "of one");
  await keptSays(one, /^Kept in this browser, for 127\.0\.0\.1:\d+\/one only\.$/);
  const other = await open("other");
  expect(await other.locator("#kept").innerText()).toBe("What you change will be kept in this browser.");
  await typeInto(other, "A40", "of the other");
  await keptSays(other, /^Kept in this browser, for 127\.0\.0\.1:\d+\/other only\.$/);
  await typeInto(one, "A41", "more"); // no tab of the other folder stands in its way
  await keptSays(one, /^Kept/);
  expect(await readOne(await open("one"), "A40")).toBe("of one");
  expect(await readOne(await open("other"), "A40")).toBe("of the other");
  await context.close();
});
