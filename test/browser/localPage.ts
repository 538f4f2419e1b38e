import type { BrowserContext, FrameLocator, Page } from "playwright-core";
import { placeOf } from "../../src/sheets/address";
import { servedFolder, testBrowser } from "../support/servedSite";

/** The built page in a browser, and what it did that it should not. */
export interface LocalPage {
  readonly page: Page;
  readonly complaints: string[]; // errors and warnings of the page
  readonly outside: string[]; // requests that left this machine's own server
  /** The same page once more in another tab of the same browser. */
  readonly sameBrowser: () => Promise<Page>;
  readonly close: () => Promise<void>;
}

export interface LocalSite {
  /**
   * @param before runs in the page before its own scripts
   * @param clock whether the page's clock can be put on
   */
  readonly open: (size?: { width: number; height: number }, before?: () => void, clock?: boolean) => Promise<LocalPage>;
  /**
   * One page for all tests of the file, on which each finds the example as it opened, on its first sheet: the parts of what this
   * gives are those of the page when it is open.
   */
  readonly openForAll: () => OpenPage;
}

type OpenPage = Omit<LocalPage, "close">;

const WIDE = { width: 1280, height: 800 };

/** Serves dist/ to the tests of one file. */
export function localSite(): LocalSite {
  const browser = testBrowser();
  const serving = servedFolder();
  const open: LocalSite["open"] = async (viewport = WIDE, before, clock = false) => {
    const context = await browser.newContext({ viewport });
    if (clock) await context.clock.install();
    return openPage(context, serving.address, before);
  };
  return {
    open,
    openForAll: () => {
      let local: LocalPage;
      beforeAll(async () => {
        local = await open();
      });
      let used = false;
      beforeEach(async () => {
        if (used) await exampleAgain(local.page);
        used = true;
      });
      afterAll(() => local.close());
      return {
        get page() {
          return local.page;
        },
        get complaints() {
          return local.complaints;
        },
        get outside() {
          return local.outside;
        },
        sameBrowser: () => local.sameBrowser(),
      };
    },
  };
}

/** After each test of a file its page has complained of nothing and asked no other machine. */
export const staysQuiet = (local: OpenPage): void =>
  afterEach(() => {
    expect(local.complaints).toEqual([]);
    expect(local.outside).toEqual([]);
  });

/** By the page's own way back, which takes a third of the time that a new page needs. */
export async function exampleAgain(page: Page): Promise<void> {
  await page.locator("#kept:not([data-state=waiting])").waitFor();
  const forget = page.locator("#forget");
  if (await forget.isVisible()) {
    await forget.click();
    const sure = page.locator("#notice").getByRole("button", { name: "Forget it" }); // asked where no file has it
    await sure.or(page.locator("#kept", { hasText: /^Forgotten\./ })).waitFor();
    if (await sure.isVisible()) await sure.click();
    await keptSays(page, /^Forgotten\./);
  }
  await page.locator(".o-sheet").first().click();
  await goTo(page, "A1");
}

async function openPage(context: BrowserContext, address: string, before?: () => void): Promise<LocalPage> {
  if (before !== undefined) await context.addInitScript(before);
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  const page = await context.newPage();
  const complaints: string[] = [];
  const outside: string[] = [];
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("dialog", (dialog) => {
    complaints.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  context.on("request", (request) => {
    const { protocol, origin } = new URL(request.url());
    if (protocol !== "data:" && origin !== address) outside.push(request.url());
  });
  await page.goto(`${address}/`);
  await isReady(page);
  const sameBrowser = async (): Promise<Page> => {
    const other = await context.newPage();
    await other.goto(`${address}/`);
    await isReady(other);
    return other;
  };
  return { page, complaints, outside, sameBrowser, close: () => context.close() };
}

export async function isReady(page: Page): Promise<void> {
  await page.waitForSelector(".o-grid");
  await page.waitForFunction(() => document.activeElement?.closest("#sheet") !== null);
}

export async function reload(page: Page): Promise<void> {
  await page.reload();
  await isReady(page);
}

export const KEPT = /^Kept in this browser, for 127\.0\.0\.1:\d+ only\.$/;

/** Waits until the line that says where the budget is kept is settled and says this. */
export async function keptSays(page: Page, words: RegExp): Promise<void> {
  await page.locator("#kept:not([data-state=waiting])", { hasText: words }).waitFor();
}

/** The pane beside the sheet. */
export const paneFrame = (page: Page): FrameLocator => page.frameLocator("#pane-frame");

export const sheetNames = (page: Page): Promise<string[]> => page.locator(".o-sheet-name").allInnerTexts();

export const openSheet = (page: Page, name: string): Promise<void> =>
  page.locator(".o-sheet-name").getByText(name, { exact: true }).click();

/** Selects a cell or a range by typing its address into the grid's own address box. */
export async function goTo(page: Page, address: string): Promise<void> {
  const box = page.locator(".o-named-range-selector input");
  await box.click();
  await box.fill(address);
  await box.press("Enter");
  await page.waitForFunction(() => document.activeElement?.closest(".o-grid") !== null);
}

/** Goes to a cell with the arrow keys alone. */
export async function walkTo(page: Page, address: string): Promise<void> {
  const { column, row } = placeOf(address);
  await page.keyboard.press("Control+Home");
  for (let step = 1; step < column; step++) await page.keyboard.press("ArrowRight");
  for (let step = 1; step < row; step++) await page.keyboard.press("ArrowDown");
}

/** Types into the selected cell over what is there. */
export async function typeHere(page: Page, text: string): Promise<void> {
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
}

export async function typeInto(page: Page, address: string, text: string): Promise<void> {
  await goTo(page, address);
  await typeHere(page, text);
}

/** Waits until the first chart of the open sheet is not blank. */
export const chartIsDrawn = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => {
    const canvas = document.querySelector<HTMLCanvasElement>(".o-figure canvas");
    if (canvas === null || canvas.width === 0) return false;
    const { data } = canvas.getContext("2d")!.getImageData(0, 0, canvas.width, canvas.height);
    return data.some((part) => part !== 0);
  });

const NOTHING = "nothing copied yet";
const clipboard = (page: Page): Promise<string> => page.evaluate(() => navigator.clipboard.readText());

/** What a range shows, as a person would copy it: rows of texts. The grid is a picture, so this is the way to read it. */
export async function read(page: Page, range: string): Promise<string[][]> {
  await page.evaluate((text) => navigator.clipboard.writeText(text), NOTHING);
  await goTo(page, range);
  await page.keyboard.press("Control+C");
  let text = await clipboard(page);
  while (text === NOTHING) {
    await page.waitForTimeout(20);
    text = await clipboard(page);
  }
  return text.split("\n").map((line) => line.split("\t"));
}

export const readOne = async (page: Page, address: string): Promise<string> => (await read(page, address))[0]![0]!;

/** What the line under the grid says; waits until it says something that matches. */
export async function lineSays(page: Page, words: RegExp): Promise<string> {
  const line = page.locator("#sheet-words", { hasText: words });
  await line.waitFor();
  return line.innerText();
}
