import type { Page } from "playwright-core";
import { aCellShowsANumber, theSheetIsDrawn, until } from "../../scripts/bench/until";
import { testBrowser } from "../support/servedSite";

const browser = testBrowser();
let page: Page;

beforeEach(async () => {
  page = await (await browser.newContext()).newPage();
});
afterEach(() => page.context().close());

type Asked = Window & { asked?: number; ready?: boolean };

const ready = async (): Promise<boolean> => {
  const here = window as Asked;
  here.asked = (here.asked ?? 0) + 1;
  return here.ready === true;
};

/** A host of the sheet's kind whose only cell shows this. */
const shows = (value: unknown): Promise<void> =>
  page.evaluate((shown) => {
    const book = { shown: new Map([["Runs", new Map([["A1", { value: shown }]])]]) };
    Object.assign(window, { ductLedgerHost: { readBook: async () => book } });
  }, value);

describe("what the bench waits for", () => {
  test("a condition that does not hold yet holds it up, however often it is asked", async () => {
    let over = false;
    const waiting = until(page, ready).then(() => {
      over = true;
    });
    await page.waitForFunction(() => (window as Asked).asked! >= 5);
    expect(over).toBe(false);
    await page.evaluate(() => Object.assign(window, { ready: true }));
    await waiting;
    expect(over).toBe(true);
  });

  test("what never comes is told", async () => {
    await expect(until(page, ready, 50)).rejects.toThrow("what was waited for did not come within 50 ms");
  });

  test("a page without a sheet, and a sheet of words alone, show no number", async () => {
    expect(await page.evaluate(aCellShowsANumber)).toBe(false);
    await shows("loading");
    expect(await page.evaluate(aCellShowsANumber)).toBe(false);
    await shows(0);
    expect(await page.evaluate(aCellShowsANumber)).toBe(true);
  });

  test("a picture without a host beside it, or without a size, is no sheet that is drawn", async () => {
    await page.setContent('<div id="sheet"><canvas width="5"></canvas></div>');
    expect(await page.evaluate(theSheetIsDrawn)).toBe(false);
    await shows(0);
    expect(await page.evaluate(theSheetIsDrawn)).toBe(true);
    await page.setContent('<div id="sheet"><canvas width="0"></canvas></div>');
    await shows(0);
    expect(await page.evaluate(theSheetIsDrawn)).toBe(false);
    await page.setContent('<div id="sheet"></div>');
    await shows(0);
    expect(await page.evaluate(theSheetIsDrawn)).toBe(false);
  });
});
