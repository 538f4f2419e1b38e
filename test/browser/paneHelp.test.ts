import type { Page } from "playwright-core";
import { referenceTables } from "../../src/reference";
import { servedPane, tab, view } from "./panePage";

const site = servedPane();

/** The help links in sight: what they are called and where they lead. */
const links = (page: Page): Promise<{ name: string; href: string; target: string; rel: string }[]> =>
  page.locator("main a:visible").evaluateAll((all) =>
    (all as HTMLAnchorElement[]).map(({ ariaLabel, textContent, href, target, rel }) => ({
      name: ariaLabel ?? textContent,
      href,
      target,
      rel,
    })),
  );

test("every function and every table has its help page a link away, outside the pane, and the page is served", async () => {
  const { page } = await site.open();
  await tab(page, "Functions").click();
  const heads = view(page, "Functions").locator("[data-row]");
  await heads.first().waitFor();
  const seen: Awaited<ReturnType<typeof links>> = [];
  for (const head of await heads.all()) {
    await head.click();
    seen.push(...(await links(page)).filter(({ name }) => name.startsWith("Help page of "))); // one has a page on its method, too
  }
  expect(seen).toHaveLength(await heads.count());
  await tab(page, "Tables").click();
  for (const { name } of referenceTables) {
    await page.getByRole("combobox", { name: "Table" }).selectOption(name);
    seen.push(...(await links(page)));
  }
  for (const name of ["Start", "Cautions"]) {
    await tab(page, name).click();
    seen.push(...(await links(page)));
  }
  expect(new Set(seen.map(({ href }) => href)).size).toBe(seen.length); // no two lead to the same page
  expect(new Set(seen.map(({ name }) => name)).size).toBe(seen.length); // nor sound alike
  expect(seen.filter(({ target, rel }) => target !== "_blank" || rel !== "noopener noreferrer")).toEqual([]);
  const statuses = await page.evaluate(
    (all) => Promise.all(all.map(async (href) => [href, (await fetch(href)).status])),
    seen.map(({ href }) => href),
  );
  expect(statuses.filter(([, status]) => status !== 200)).toEqual([]);
});

test("an open row links to the page of its own table", async () => {
  const { page } = await site.open();
  await tab(page, "Tables").click();
  await page.getByRole("searchbox", { name: "Search", exact: true }).fill("stock diameter 100");
  await view(page, "Tables").locator("[data-row]").first().click();
  expect((await links(page)).map(({ href }) => new URL(href).pathname)).toEqual(["/help/table-trade%20sizes.html"]);
});
