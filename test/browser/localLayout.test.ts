import type { Page } from "playwright-core";
import { demoBook } from "../../src/sheets/demo";
import { localSite } from "./localPage";

const demo = demoBook();

// The grid beside the pane: whatever is selected, and however wide the window and the pane are, neither covers the other.

const local = localSite().openForAll();

/** The cell of each sheet that holds its longest formula. */
const longest = demo.sheets.flatMap(({ name, cells }) => {
  const formulas = cells.flatMap((cell) => ("formula" in cell ? [{ at: cell.at, length: cell.formula.length }] : []));
  const [first] = [...formulas].sort((one, other) => other.length - one.length);
  return first === undefined ? [] : [{ name, at: first.at }];
});

interface Edges {
  readonly pane: number; // where it begins
  readonly grid: number; // where the farthest of its parts ends
  readonly bar: readonly [number, number] | null; // the formula bar's left and right; none where the grid has its narrow form
}

const edgesOf = (page: Page): Promise<Edges> =>
  page.evaluate(() => {
    const box = (selector: string) => document.querySelector(selector)?.getBoundingClientRect();
    const ends = [
      ".o-grid canvas:not(.o-figure-canvas)",
      ".o-spreadsheet-topbar",
      ".more-tools",
      ".o-spreadsheet-bottombar-wrapper",
      ".o-scrollbar",
    ]
      .flatMap((selector) => [...document.querySelectorAll(`#sheet ${selector}`)])
      .map((element) => element.getBoundingClientRect().right);
    const bar = box("#sheet .o-spreadsheet-topbar .o-topbar-composer");
    return {
      pane: box("#pane")!.left,
      grid: Math.max(...ends),
      bar: bar === undefined ? null : [Math.round(bar.left), Math.round(bar.right)],
    };
  });

/** Waits until the grid has drawn itself in its place, that is, until its canvas ends where its place does. */
const settled = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => {
    const right = (selector: string) => document.querySelector(selector)!.getBoundingClientRect().right;
    return Math.abs(right("#sheet .o-grid canvas:not(.o-figure-canvas)") - right("#sheet")) < 20; // a scroll bar is between them
  });

/** The same after a change of size, of which the grid is told once more two drawings later: then its bars have their place, too. */
async function refitted(page: Page): Promise<void> {
  await settled(page);
  await page.evaluate(
    () =>
      new Promise<void>((drawn) => {
        let left = 5;
        const next = (): void => void (left-- === 0 ? drawn() : requestAnimationFrame(next));
        next();
      }),
  );
}

describe.each([320, 480])("beside a pane of %d px", (paneWidth) => {
  test.each([1024, 1280, 1440, 1920])("in a window of %d px the grid keeps to its place", async (width) => {
    const { page } = local;
    await page.evaluate((pixels) => (document.getElementById("pane")!.style.width = `${pixels}px`), paneWidth);
    await page.setViewportSize({ width, height: 800 });
    await refitted(page);
    for (const { name, at } of longest) {
      await page.evaluate(([sheet, cell]) => window.ductLedgerHost!.goTo(sheet!, cell!), [name, at]);
      await settled(page);
      const { pane, grid, bar } = await edgesOf(page);
      expect({ name, at, beyond: Math.max(0, grid - pane) }).toEqual({ name, at, beyond: 0 });
      if (bar !== null) expect(bar).toEqual([0, Math.round(pane)]);
      else expect(pane).toBeLessThan(770); // the grid's own narrow form, which shows the formula below
    }
  });
});

test("after the pane was hidden and shown, and the window made narrow, wide and narrow again", async () => {
  const { page } = local;
  await page.evaluate(() => (document.getElementById("pane")!.style.width = ""));
  await page.setViewportSize({ width: 1440, height: 800 });
  await page.getByRole("button", { name: "Hide the pane" }).click();
  await refitted(page);
  await page.getByRole("button", { name: "Show the pane" }).click();
  for (const width of [1280, 1024, 1440, 1280]) {
    await page.setViewportSize({ width, height: 800 });
    await refitted(page);
    const { pane, grid } = await edgesOf(page);
    expect({ width, beyond: Math.max(0, grid - pane) }).toEqual({ width, beyond: 0 });
  }
  expect(local.complaints).toEqual([]);
});
