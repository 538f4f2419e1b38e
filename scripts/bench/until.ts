import type { Page } from "playwright-core";

/**
 * Waits until a condition that takes its time holds in the page. The browser library's own wait looks at what the
 * condition returns, and a promise is never false; here its answer counts.
 *
 * @param limit [ms] after which it is given up
 */
export async function until(
  page: Pick<Page, "evaluate">,
  condition: () => Promise<boolean>,
  limit = 60_000,
): Promise<void> {
  const end = performance.now() + limit;
  while (!(await page.evaluate(condition))) {
    if (performance.now() > end) throw new Error(`what was waited for did not come within ${limit} ms`);
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(drawn)));
  }
}

/** Asked in the page: whether the grid is drawn, which it is only when the cells of the shown sheet are computed. To ask costs next to nothing. */
export async function theSheetIsDrawn(): Promise<boolean> {
  await new Promise((drawn) => requestAnimationFrame(drawn));
  const picture = document.querySelector<HTMLCanvasElement>("#sheet canvas");
  return window.ductLedgerHost !== undefined && picture !== null && picture.width > 0;
}

/** Asked in the page: whether a cell of the local sheet shows a number. It reads the whole book, which takes a third of a second. */
export async function aCellShowsANumber(): Promise<boolean> {
  const book = await window.ductLedgerHost?.readBook();
  const cells = [...(book?.shown.values() ?? [])].flatMap((shown) => [...shown.values()]);
  return cells.some(({ value }) => typeof value === "number");
}
