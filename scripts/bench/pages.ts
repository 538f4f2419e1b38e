import type { Browser, Page } from "playwright-core";
import { launchBrowser } from "../browser";
import { serve } from "../serve";
import { inTurn, type Measured } from "./measure";
import { type Checkout, saidBy } from "./ofCheckout";
import { type Row, seconds } from "./row";
import { checkedAgain, entryKept, firstNumber, firstNumberAt, inPage, lengthPainted, numberInPage, paneTabs } from "./waits"; // prettier-ignore

/** What a person waits for, in a browser that is open already; an older build's pages in turn with them. */
export async function pages(builds: readonly Checkout[]): Promise<Row[]> {
  const browser = await launchBrowser();
  const each = (wait: (build: Checkout, browser: Browser) => Promise<number>): Promise<Measured[]> =>
    inTurn(builds.map((build) => () => wait(build, browser)));
  try {
    return [
      row("npm start -- --no-build, from its start to the first number in the page", await each(firstNumber)),
      row("the local page, from its address to the first number", await each(numberInPage), 1.5),
      row("pane, from its address to its tabs", await each(paneTabs), 1),
      row(
        "the example: from a length that is changed to the painted sheet",
        await allOpen(browser, builds, (open) => eachWarm(open, lengthPainted)),
        0.1,
      ),
      ...(await allOpen(browser, builds, (open) => fortyRuns(open, builds))),
      row("Check of the example, from its button to its list", await allOpen(browser, builds, check), 0.06),
    ];
  } finally {
    await browser.close();
  }
}

function row(what: string, [now, before]: readonly Measured[], atMost?: number): Row {
  return { ...seconds(what, now!, atMost === undefined ? null : { atMost }), before: before ?? null };
}

/** The first time is left out. */
async function eachWarm(open: readonly Page[], wait: (page: Page) => Promise<number>): Promise<Measured[]> {
  for (const page of open) await wait(page);
  return inTurn(open.map((page) => () => wait(page)));
}

async function fortyRuns(open: readonly Page[], builds: readonly Checkout[]): Promise<Row[]> {
  for (const [which, page] of open.entries()) {
    const buffer = Buffer.from(await saidBy("fortyRunsFile", builds[which]!), "base64");
    await page.locator("#chooser").setInputFiles({ name: "forty.xlsx", mimeType: "", buffer });
    await page.locator("#kept[data-state=kept]").waitFor({ timeout: 60_000 });
    await page.evaluate(() => window.ductLedgerHost!.goTo("Runs", "B60"));
  }
  const kept = await eachWarm(open, entryKept); // the first entry writes every sheet
  const painted = await eachWarm(open, (page) => lengthPainted(page));
  const seen = await inTurn(open.map((page) => () => lengthPainted(page, "Flow")));
  const budget = "a budget of 40 runs: from";
  return [
    row(`${budget} a length that is changed to the painted sheet`, painted, 0.05),
    row(`${budget} a length that is changed to the sheet Flow, opened at once and painted`, seen),
    row(`${budget} an entry that nothing rests on until the browser keeps it`, kept, 0.025),
  ];
}

async function check(open: readonly Page[]): Promise<Measured[]> {
  for (const page of open) {
    const pane = page.frameLocator("#pane-frame");
    await pane.getByRole("tab", { name: "Check" }).click();
    await pane.getByRole("button", { name: "Check the open book" }).click();
    await pane.getByText("to look at").first().waitFor();
  }
  return inTurn(open.map((page) => () => checkedAgain(page)));
}

/** The page of every build, each in a window of its own and with its first number. */
async function allOpen<Value>(
  browser: Browser,
  builds: readonly Checkout[],
  use: (open: readonly Page[]) => Promise<Value>,
  open: readonly Page[] = [],
): Promise<Value> {
  const [next, ...rest] = builds;
  if (next === undefined) return use(open);
  const serving = await serve(next.dist, 0);
  try {
    return await inPage(browser, async (page) => {
      await firstNumberAt(page, serving.address);
      return allOpen(browser, rest, use, [...open, page]);
    });
  } finally {
    await serving.stop();
  }
}
