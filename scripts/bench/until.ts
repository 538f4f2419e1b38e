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

/** Asked in the page: whether a cell of the local sheet shows a number. */
export async function aCellShowsANumber(): Promise<boolean> {
  const book = await window.ductLedgerHost?.readBook();
  const cells = [...(book?.shown.values() ?? [])].flatMap((shown) => [...shown.values()]);
  return cells.some(({ value }) => typeof value === "number");
}
