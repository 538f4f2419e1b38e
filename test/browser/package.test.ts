import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { makePackage } from "../../scripts/package";
import { readAddress } from "../../scripts/package/address";
import type { PackagedFile } from "../../scripts/package/files";
import { openBudget } from "../../src/hosts/file/readBook";
import { servedFolder, testBrowser } from "../support/servedSite";

const ADDRESS = "https://example.org/club/duct";

let root: string;
let files: readonly PackagedFile[];
const browser = testBrowser();
const serving = servedFolder(async () => {
  root = mkdtempSync(path.join(tmpdir(), "package-"));
  files = await makePackage(ADDRESS, path.join(root, "club", "duct")); // served as a folder within the host's root
  return root;
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

const textOf = (name: string): string => readFileSync(path.join(root, "club", "duct", name), "utf8");

test("the manifest and the help links name the address, and nothing names the address of the build", () => {
  expect(textOf("manifest.xml")).toContain(`${ADDRESS}/taskpane.html`);
  expect(textOf("functions.json")).toContain(`${ADDRESS}/help/duct-area.html`);
  expect(textOf("help/install.html")).toContain(`live.com&quot; ${ADDRESS}/functions.json</code>`);
  for (const name of ["manifest.xml", "functions.json", "help/install.html"])
    expect(textOf(name)).not.toContain("localhost");
  expect(textOf("_headers")).toContain("\n/club/duct/functions.js\n  Access-Control-Allow-Origin: *\n");
});

test("licences, help and every sample are there, and the samples open as budgets", async () => {
  const names = files.map((file) => file.path);
  expect(names).toEqual(expect.arrayContaining(["licences.txt", "help/index.html", "help/install.html", "index.html"]));
  const samples = files.filter((file) => file.path.startsWith("samples/"));
  expect(samples.map((file) => file.path.slice("samples/".length))).toEqual(
    ["IP", "SI"]
      .flatMap((units) => [`budget-${units}-empty.xlsx`, `budget-${units}-example.xlsx`])
      .concat(["club-copy-IP.xlsx", "club-copy-SI.xlsx"]),
  );
  for (const { path: name, bytes } of samples)
    if (name.includes("budget")) expect((await openBudget(bytes)).workbook.sheets.length).toBeGreaterThan(11);
});

test("the sheet opens under a folder of a static server, and without a network after that", async () => {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(`${serving.address}/club/duct/index.html`);
  await page.waitForSelector(".o-spreadsheet");
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await serving.stop(); // the network is gone
  await page.reload();
  await page.waitForSelector(".o-spreadsheet");
  await page.frameLocator("#pane-frame").getByRole("tab").first().waitFor();
  await context.close();
});

test.each([
  [undefined, "Say where the files will stand: npm run package -- --url https://example.org/duct"],
  ["example", "“example” is no address; it must look like https://example.org/duct"],
  ["http://example.org", "Excel loads add-ins from https only; “http://example.org” begins otherwise"],
  ["https://example.org/?a", "The address may hold a host and a folder only: no user, no question mark, no #"],
])("an address such as %s is refused", (text, why) => {
  expect(readAddress(text)).toEqual({ why });
});

test("a slash at the end of an address does not double", () => {
  expect(readAddress("https://example.org/duct/")).toEqual({ address: "https://example.org/duct" });
  expect(existsSync(path.join(root, "club", "duct", "offline.js"))).toBe(true);
});
