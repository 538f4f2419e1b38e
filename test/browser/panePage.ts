import type { BrowserContextOptions, Locator, Page } from "playwright-core";
import { readMetadata } from "../built/loadBundle";
import { servedFolder, testBrowser } from "../support/servedSite";

interface OpenedPane {
  readonly page: Page;
  readonly requested: string[];
  readonly complaints: string[]; // what the console and uncaught errors said
}

export interface ServedPane {
  readonly address: () => string;
  /** A narrow pane in a browser of its own; `prepare` runs before the page is asked for. */
  readonly open: (
    options?: BrowserContextOptions,
    file?: string,
    prepare?: (page: Page) => Promise<unknown>,
  ) => Promise<OpenedPane>;
  /** The same, as soon as its tabs are there: the views behind the first come later. */
  readonly openAtTabs: ServedPane["open"];
}

/** Serves the built pane to the tests of one file, and closes what they opened. */
export function servedPane(): ServedPane {
  const browser = testBrowser();
  const serving = servedFolder();
  const pages: Page[] = [];
  afterEach(async () => {
    for (const page of pages.splice(0)) await page.context().close();
  });
  const openAtTabs: ServedPane["open"] = async (
    options = {},
    file = "pane.html",
    prepare = () => Promise.resolve(),
  ) => {
    const context = await browser.newContext({ viewport: { width: 320, height: 700 }, ...options });
    const page = await context.newPage();
    pages.push(page);
    const requested: string[] = [];
    const complaints: string[] = [];
    page.on("request", (request) => requested.push(request.url()));
    page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
    page.on("pageerror", (error) => complaints.push(error.message));
    await prepare(page);
    await page.goto(`${serving.address}/${file}`, { waitUntil: "commit" });
    await tab(page, "Start").waitFor();
    return { page, requested, complaints };
  };
  const open: ServedPane["open"] = async (...how) => {
    const opened = await openAtTabs(...how);
    await opened.page.getByText(/^From \d+ tables with \d+ rows/).waitFor();
    return opened;
  };
  return { address: () => serving.address, open, openAtTabs };
}

/** The pane's own page, or its frame beside the local sheet. */
type Pane = Pick<Page, "getByRole">;

export const tab = (pane: Pane, name: string): Locator => pane.getByRole("tab", { name });
export const view = (pane: Pane, name: string): Locator => pane.getByRole("tabpanel", { name });
export const button = (pane: Pane, name: string | RegExp): Locator => pane.getByRole("button", { name });
export const says = (pane: Pane, words: string | RegExp): Promise<void> =>
  pane.getByRole("status").filter({ hasText: words }).first().waitFor();
export const hasFocus = (element: Locator): Promise<boolean> =>
  element.evaluate((node) => node === document.activeElement);

/** Waits until no colour is on its way to another. */
export const settle = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => document.getAnimations().every(({ playState }) => playState !== "running"));

/** The heading over all functions, with their number as the build tells it. */
export const allFunctions = (): string => `${readMetadata().functions.length} functions`;
