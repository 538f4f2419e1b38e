/** What Excel's page on the web, of another origin than ours, may do with what `npm start` serves, and what no other page may. */
import type { BrowserContext, Page } from "playwright-core";
import { servedFolder, testBrowser } from "../support/servedSite";

const EXCEL = "https://excel.officeapps.live.com/x/book";
const NEW_EXCEL = "https://excel.cloud.microsoft/book";
const SHAREPOINT = "https://club.sharepoint.com/book";
const OTHER = "https://other.example/page";

const browser = testBrowser();
const serving = servedFolder();
let context: BrowserContext;

afterEach(() => context.close());

/** From 142 on, Chromium asks its user before a page of the web may reach this machine. */
const asks = (): boolean => Number(browser.version().split(".")[0]) >= 142;

/** Opens a page of the web; what stands at its address and at others is said here, so that nothing leaves this machine. */
async function open(address: string, bodies: Readonly<Record<string, string>>, allowed = true): Promise<Page> {
  context = await browser.newContext(allowed && asks() ? { permissions: ["local-network-access"] } : {});
  await context.route(
    (url) => url.origin !== serving.address,
    (route) => route.fulfill({ contentType: "text/html", body: bodies[route.request().url()] ?? "" }),
  );
  const page = await context.newPage();
  await page.goto(address, { waitUntil: "commit" });
  return page;
}

const read = (page: Page, file: string): Promise<string> =>
  page.evaluate(
    (url) =>
      fetch(url).then(
        (response) => response.headers.get("content-type") ?? "no type",
        () => "refused",
      ),
    `${serving.address}/${file}`,
  );

const JSON_TYPE = "application/json; charset=utf-8";

test("Excel's page reads the functions, their descriptions and the manifest, and none of the pages", async () => {
  const page = await open(EXCEL, {});
  expect(await read(page, "functions.json")).toBe(JSON_TYPE);
  expect(await read(page, "functions.js")).toBe("text/javascript; charset=utf-8");
  expect(await read(page, "manifest.xml")).toBe("text/xml; charset=utf-8");
  for (const file of ["index.html", "taskpane.html", "pane.html"]) expect(await read(page, file)).toBe("refused");
});

test("a browser that asks first lets nothing through until its user allows it", async () => {
  const page = await open(EXCEL, {}, false);
  expect(await read(page, "functions.json")).toBe(asks() ? "refused" : JSON_TYPE);
});

/** Frames within frames, the innermost being ours, and whether the browser shows it. */
async function shows(file: string, ...above: readonly string[]): Promise<boolean> {
  const inner = [...above.slice(1), `${serving.address}/${file}`];
  const bodies = Object.fromEntries(
    above.map((address, at) => [address, `<iframe allow="local-network-access" src="${inner[at]!}"></iframe>`]),
  );
  const page = await open("about:blank", bodies);
  const refused = page.waitForEvent("console", (message) => message.text().includes("frame-ancestors"));
  await page.goto(above[0]!, { waitUntil: "commit" });
  let ours = page.frameLocator("iframe");
  for (let depth = 1; depth < above.length; depth++) ours = ours.frameLocator("iframe");
  const shown = ours.locator("main, header").first().waitFor();
  return Promise.race([shown.then(() => true), refused.then(() => false)]);
}

test.each([
  ["Excel's page", [EXCEL]],
  ["Excel's page in SharePoint", [SHAREPOINT, EXCEL]],
  ["Excel's newer page", [NEW_EXCEL]],
])("the pane stands in a frame of %s", async (_, above) => {
  expect(await shows("taskpane.html", ...above)).toBe(true);
});

test.each([
  ["taskpane.html", "another page", [OTHER]],
  ["taskpane.html", "Excel's page within another page", [OTHER, EXCEL]],
  ["index.html", "Excel's page", [EXCEL]],
  ["pane.html", "another page", [OTHER]],
])("%s stands in no frame of %s", async (file, _, above) => {
  expect(await shows(file, ...above)).toBe(false);
});
