/** Texts that look like links: nothing asks another host for anything, and nothing opens. */
import type { Page } from "playwright-core";
import { writeBook } from "../../src/hosts/file/writeBook";
import type { SheetCell } from "../../src/sheets/workbook";
import { sheetOf } from "../support/sheetOf";
import { goTo, KEPT, keptSays, type LocalPage, read, reload, sheetNames, localSite } from "./localPage";

const site = localSite();
let local: LocalPage; // the tests go on from one another

/** What the page tried and its content policy stopped; such a request is never sent, so nobody else sees it. */
const stopped = (page: Page): Promise<string[]> => page.evaluate(() => window.stoppedByPolicy!);

declare global {
  interface Window {
    stoppedByPolicy?: string[];
  }
}

const TEXTS = [
  "https://example.org/a",
  "http://www.example.org/b",
  "[label](https://example.org/c)",
  "[5](javascript:alert(1))",
  "[sheet](o-spreadsheet://sheet1)",
];
const cells: SheetCell[] = [
  ...TEXTS.map((value, index) => ({ at: `A${index + 1}`, value })),
  { at: "A6", formula: '=HYPERLINK("https://example.org/d","label")' },
  { at: "A7", formula: '=DUCT.AREA("no size")' },
];
const SHOWN = [...TEXTS, "label", "#VALUE!"];

/** The file open on a page whose clock can be put on: nothing waits in vain for what must not come. */
beforeAll(async () => {
  const listen = (): void => {
    window.stoppedByPolicy = [];
    document.addEventListener("securitypolicyviolation", ({ blockedURI }) => window.stoppedByPolicy!.push(blockedURI));
  };
  local = await site.open(undefined, listen, true);
  const workbook = { name: "Links", sheets: [sheetOf("Links", cells, { columns: [60] })], names: [] };
  const bytes = await writeBook({ workbook, shown: new Map() }, { title: "Links" });
  await local.page
    .locator("#chooser")
    .setInputFiles({ name: "links.xlsx", mimeType: "application/octet-stream", buffer: Buffer.from(bytes) });
  await keptSays(local.page, KEPT);
  expect(await sheetNames(local.page)).toEqual(["Links"]);
});
afterAll(() => local.close());

/** The middle of a cell of column A on the screen, by the box that the grid draws around the selected cell. */
async function middleOf(page: Page, row: number): Promise<{ x: number; y: number }> {
  await goTo(page, `A${row}`);
  const overlay = await page.locator(".o-grid-overlay").boundingBox();
  return { x: overlay!.x + 100, y: overlay!.y + 23 * (row - 0.5) }; // rows of 23 pixels, scrolled to the top
}

/** Longer than the grid waits before it shows what belongs to the cell under the pointer. The page's clock is put on by it. */
const REST = 600; // ms

async function tryEverything(page: Page): Promise<void> {
  for (let row = 1; row <= 6; row++) {
    const { x, y } = await middleOf(page, row);
    await page.mouse.move(x + 1, y);
    await page.clock.runFor(REST);
    expect(await page.locator(".o-link-tool").count()).toBe(0);
    await page.mouse.click(x, y);
    await page.keyboard.down("Control");
    await page.mouse.click(x, y);
    await page.keyboard.up("Control");
    await page.keyboard.press("Alt+Enter");
    await page.keyboard.press("Control+k");
    expect(await page.locator(".o-link-editor").count()).toBe(0);
  }
  const { x, y } = await middleOf(page, 7); // an error has words that come with the pointer, so the pointer was over cells
  await page.mouse.move(x + 1, y);
  await page.locator(".o-error-tooltip").waitFor();
}

const expectNothingLeft = async ({ page, outside, complaints }: LocalPage): Promise<void> => {
  expect(await stopped(page)).toEqual([]);
  expect(outside).toEqual([]);
  expect(complaints).toEqual([]);
  expect(page.context().pages()).toHaveLength(1);
};

test("of a file and of what is kept: pointer, clicks and keys open nothing and ask no host", async () => {
  const { page } = local;
  expect((await read(page, "A1:A7")).flat()).toEqual(SHOWN);
  await tryEverything(page);
  expect(await stopped(page)).toEqual([]); // a reload forgets them
  await reload(page);
  await tryEverything(page);
  expect((await read(page, "A1:A7")).flat()).toEqual(SHOWN);
  await expectNothingLeft(local);
});

test("of the clipboard, as text and as cells", async () => {
  const { page } = local;
  await goTo(page, "A1:A5");
  await page.keyboard.press("Delete");
  expect((await read(page, "A1:A5")).flat().join("")).toBe("");
  await page.evaluate((text) => navigator.clipboard.writeText(text), TEXTS.join("\n"));
  await goTo(page, "A1");
  await page.keyboard.press("Control+V");
  await tryEverything(page);
  await goTo(page, "A1:A6");
  await page.keyboard.press("Control+C");
  await goTo(page, "A1");
  await page.keyboard.press("Control+V");
  await tryEverything(page);
  expect((await read(page, "A1:A6")).flat().slice(0, 5)).toEqual(TEXTS);
  await expectNothingLeft(local);
});
