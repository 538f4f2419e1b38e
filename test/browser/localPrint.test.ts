import type { Page } from "playwright-core";
import { chartIsDrawn, localSite, openSheet, typeInto } from "./localPage";

// What comes out of the printer when the page is printed: the sheet in front, on the paper of its units, and nothing around it.

const local = localSite().openForAll();

/** Pages of the print, and their size in points. */
async function printed(page: Page): Promise<{ pages: number; size: string }> {
  const file = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
  const sizes = new Set([...file.matchAll(/\/MediaBox \[([^\]]*)\]/g)].map(([, size]) => size!));
  return { pages: file.match(/\/Type \/Page\b/g)!.length, size: [...sizes].join(" and ") };
}

/** Runs `look` in the page while it is printing. */
async function whilePrinting<Found>(page: Page, look: () => Found): Promise<Found> {
  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  const found = await page.evaluate(look);
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await page.emulateMedia({ media: null });
  return found;
}

// US Letter is 8.5 x 11 in, 72 points to the inch: 612 x 792.
test("Summary is one page of US Letter, upright; Readings lies", async () => {
  const { page } = local;
  await openSheet(page, "Summary");
  expect(await printed(page)).toEqual({ pages: 1, size: "0 0 612 792" });
  await openSheet(page, "Readings");
  expect((await printed(page)).size).toBe("0 0 792 612");
  await openSheet(page, "Runs"); // nine runs of forty rows: its columns take two papers, and blank rows no further one
  expect((await printed(page)).pages).toBe(2);
  await openSheet(page, "Flow"); // what flows, its notes, what sealing gives: each whole on a paper
  expect((await printed(page)).pages).toBe(3);
  await openSheet(page, "Fan"); // the owner's own fan, with its picture, has a paper of its own
  await chartIsDrawn(page);
  expect((await printed(page)).pages).toBe(2);
  // three parts each, none longer than a paper: the blank rows below what each has make no paper with nothing on it
  for (const name of ["Leaks", "Sizes"]) {
    await openSheet(page, name);
    expect([name, (await printed(page)).pages]).toEqual([name, 3]);
  }
});

test("of the page only the sheet is printed, its chart too, and the page is as before afterwards", async () => {
  const { page } = local;
  await openSheet(page, "Fan");
  await chartIsDrawn(page);
  const seen = await whilePrinting(page, () => ({
    parts: [...document.body.children].filter((part) => part.getClientRects().length > 0).map(({ id }) => id),
    title: document.title,
    charts: [...document.querySelectorAll("#print img")].filter((chart) => chart.clientWidth > 100).length,
  }));
  expect(seen).toEqual({ parts: ["print"], title: "Demo, Fan", charts: 2 });
  expect(await page.title()).toBe("Duct Ledger");
  expect(await page.locator("#print > *").count()).toBe(0);
  expect(await page.locator("#top").isVisible()).toBe(true);
  expect(local.complaints).toEqual([]);
});

test("what a cell says is printed as text, and the header of a table is one that comes back", async () => {
  const { page } = local;
  await openSheet(page, "Runs");
  await typeInto(page, "A11", "<b onclick=x>saw</b>");
  const seen = await whilePrinting(page, () => ({
    markup: document.querySelectorAll("#print b").length,
    said: document.querySelector("#print")!.textContent.includes("<b onclick=x>saw</b>"),
    heads: [...document.querySelectorAll("#print thead")].map((head) => head.querySelector("td")!.textContent),
  }));
  expect(seen).toMatchObject({ markup: 0, said: true });
  expect(new Set(seen.heads)).toEqual(new Set(["Check"]));
});

test("Ctrl+P is left to the browser, from a cell as from the page; the grid's own print does not open", async () => {
  const { page } = local;
  await page.keyboard.press("Control+p");
  await page.keyboard.press("Escape"); // the grid has drawn itself anew by then
  expect(await page.locator(".o-spreadsheet-print").count()).toBe(0);
  expect(await page.locator(".o-grid").isVisible()).toBe(true);
});
