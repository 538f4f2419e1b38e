/** What comes after the first number: what draws charts, and most of the pane. */
import path from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import { localFiles } from "../../scripts/bench/sizes";
import { CHART_MISSING } from "../../src/hosts/local/drawWhenHere";
import { DIST, servedFolder, testBrowser } from "../support/servedSite";
import { chartIsDrawn, isReady, KEPT, keptSays, openSheet, paneFrame, readOne, reload, typeInto } from "./localPage";
import { button, view } from "./panePage";

const browser = testBrowser();
const serving = servedFolder();
const LIBRARY = "**/vendor/chart.umd.min.js";

let context: BrowserContext;
let page: Page;
let complaints: string[];
let asked: string[]; // files, in order

beforeEach(async () => {
  [complaints, asked] = [[], []];
  context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  page = await context.newPage();
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("request", (request) =>
    asked.push(path.posix.relative("/", new URL(request.url()).pathname) || "index.html"),
  );
});
afterEach(async () => {
  await context.close();
  expect(complaints).toEqual([]);
});

async function opened(): Promise<void> {
  await page.goto(`${serving.address}/`);
  await isReady(page);
}

const missing = () => page.getByText(CHART_MISSING);

test("before its first number the page asks for just the files that count as its size", async () => {
  await opened();
  await page.waitForFunction(() => "Chart" in window);
  const before = asked.slice(0, asked.indexOf("pane.html")).filter((file) => !file.endsWith(".woff2")); // of signs, when they are drawn
  expect([...new Set(before)].sort()).toEqual(localFiles(DIST).sort());
  expect(asked.indexOf("vendor/chart.umd.min.js")).toBeGreaterThan(asked.indexOf("pane.html"));
});

test("a chart that is looked at before it can be drawn is drawn when it can, as the numbers are then", async () => {
  let release = (): void => undefined;
  const released = new Promise<void>((done) => (release = done));
  await page.route(LIBRARY, (route) => released.then(() => route.continue()));
  await opened();
  await openSheet(page, "Fan");
  const canvas = page.locator(".o-figure canvas").first();
  await canvas.waitFor();
  const point = Number(await readOne(page, "B10"));
  await typeInto(page, "B10", String(point + 1)); // of the fan's curve, which the chart shows
  release();
  await chartIsDrawn(page);
  expect(await missing().count()).toBe(0);
  const heights = await canvas.evaluate((drawn) => {
    const { Chart } = window as unknown as {
      Chart: { getChart: (of: Element) => { data: { datasets: { data: unknown[] }[] } } };
    };
    return Chart.getChart(drawn).data.datasets.flatMap(({ data }) => data);
  });
  // in the example's air, 70 °F at sea level: 101325/(287.05 x 294.26) = 1.1996 kg/m3, beside the 1.2014 of a printed curve
  expect(heights).toContainEqual({ x: "400", y: expect.closeTo((point + 1) * (1.1996 / 1.2014), 2) as number });
});

test("where it does not come, its place says so, what is typed counts and is kept, and the next look asks again", async () => {
  let isThere = false;
  await page.route(LIBRARY, (route) => (isThere ? route.continue() : route.abort()));
  await opened();
  await typeInto(page, "A3", "typed before");
  await openSheet(page, "Fan");
  await missing().first().waitFor();
  await openSheet(page, "Start");
  await keptSays(page, KEPT);
  await reload(page);
  expect(await readOne(page, "A3")).toBe("typed before");
  await openSheet(page, "Fan");
  await missing().first().waitFor();
  isThere = true;
  await openSheet(page, "Start");
  await openSheet(page, "Fan");
  await chartIsDrawn(page);
  expect(await missing().count()).toBe(0);
});

test("a sheet with a chart that is open again after a reload has its chart with its first number", async () => {
  await opened();
  await openSheet(page, "Fan");
  await chartIsDrawn(page);
  asked = [];
  await reload(page);
  expect(asked.indexOf("vendor/chart.umd.min.js")).toBeLessThan(asked.indexOf("pane.html"));
  await chartIsDrawn(page);
});

test("where the pane's later parts do not come, its Start says so in the place of the system, and asks again when told to", async () => {
  let isThere = false;
  await page.route(/\/\d+\.[0-9a-f]+\.js$/, (route) => (isThere ? route.continue() : route.abort()));
  await opened();
  const start = view(paneFrame(page), "Start");
  await start.getByRole("alert").filter({ hasText: "This part of the pane could not be loaded." }).waitFor();
  expect(await start.getByRole("heading").first().innerText()).toBe("Duct Ledger");
  expect(await start.getByRole("heading").nth(1).innerText()).toBe("Your system");
  isThere = true;
  await button(paneFrame(page), "Try again").click();
  await start.getByRole("table", { name: "Each machine alone" }).waitFor();
});
