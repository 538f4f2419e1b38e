import { spawn } from "node:child_process";
import { createRequire } from "node:module";
import path from "node:path";
import type { Browser, Page } from "playwright-core";
import { writeBook } from "../../src/hosts/file/writeBook";
import { RUNS_FIRST, runCell } from "../../src/sheets/book/layout";
import { fortyRuns } from "../../test/support/fortyRuns";
import { launchBrowser } from "../browser";
import { serve } from "../serve";
import { type Measured, measuredOf } from "./measure";
import { type Row, seconds } from "./row";
import { aCellShowsANumber, theSheetIsDrawn, until } from "./until";

const TIMES = 5;
const LENGTH = runCell("Length", RUNS_FIRST + 2);

/** What a person waits for, in a browser that is open already: of several times the middle one. */
export async function pages(root: string): Promise<Row[]> {
  const browser = await launchBrowser();
  try {
    const start = await middle(() => firstNumber(root, browser));
    const opened = await middle(() => numberInPage(root, browser));
    const tabs = await middle(() => paneTabs(root, browser));
    const edited = await demoEdited(root, browser);
    const { painted, seen, kept } = await fortyRunsOpen(root, browser);
    const checked = await check(root, browser);
    return [
      seconds("npm start -- --no-build, from its start to the first number in the page", start),
      seconds("the local page, from its address to the first number", opened, { atMost: 1.5 }),
      seconds("pane, from its address to its tabs", tabs, { atMost: 1 }),
      seconds("the example: from a length that is changed to the painted sheet", edited, { atMost: 0.1 }),
      seconds("a budget of 40 runs: from a length that is changed to the painted sheet", painted, { atMost: 0.05 }),
      seconds("a budget of 40 runs: from a length that is changed to the sheet Flow, opened at once and painted", seen),
      seconds("a budget of 40 runs: from an entry that nothing rests on until the browser keeps it", kept, {
        atMost: 0.025,
      }),
      seconds("Check of the example, from its button to its list", checked, { atMost: 0.06 }),
    ];
  } finally {
    await browser.close();
  }
}

async function middle(measure: () => Promise<number>): Promise<Measured> {
  const all: number[] = [];
  for (let time = 0; time < TIMES; time++) all.push(await measure());
  return measuredOf(all);
}

async function firstNumber(root: string, browser: Browser): Promise<number> {
  const { resolve } = createRequire(path.join(root, "package.json"));
  const began = performance.now();
  const env = { ...process.env, DISPLAY: undefined, WAYLAND_DISPLAY: undefined }; // it must not open a window of its own
  const command = [resolve("tsx/cli"), path.join(root, "scripts/start.ts"), "--no-build"];
  const child = spawn(process.execPath, command, { cwd: root, env, stdio: ["ignore", "pipe", "inherit"] });
  try {
    const address = await new Promise<string>((found, failed) => {
      let said = "";
      child.stdout.on("data", (text: Buffer) => {
        said += text.toString();
        const match = /http:\/\/\S+/.exec(said);
        if (match !== null) found(match[0]);
      });
      child.on("exit", () => failed(new Error("npm start ended before it said its address")));
    });
    return await inPage(browser, async (page) => {
      await firstNumberAt(page, address);
      return (performance.now() - began) / 1000;
    });
  } finally {
    child.kill("SIGTERM");
  }
}

async function numberInPage(root: string, browser: Browser): Promise<number> {
  const serving = await serve(path.join(root, "dist"), 0);
  try {
    return await inPage(browser, async (page) => {
      const began = performance.now();
      return ((await firstNumberAt(page, serving.address)) - began) / 1000;
    });
  } finally {
    await serving.stop();
  }
}

/** When it came. That it is a number is looked at afterwards, since to look takes longer than to draw. */
async function firstNumberAt(page: Page, address: string): Promise<number> {
  await page.goto(address, { waitUntil: "commit" });
  await until(page, theSheetIsDrawn);
  const drawn = performance.now();
  if (!(await page.evaluate(aCellShowsANumber))) throw new Error("the sheet was drawn before it had a number");
  return drawn;
}

/** Its first paint would be the line that says that it is loading. */
async function paneTabs(root: string, browser: Browser): Promise<number> {
  const serving = await serve(path.join(root, "dist"), 0);
  try {
    return await inPage(browser, async (page) => {
      const began = performance.now();
      await page.goto(`${serving.address}/pane.html`, { waitUntil: "commit" });
      await page.getByRole("tab", { name: "Start" }).waitFor();
      return (performance.now() - began) / 1000;
    });
  } finally {
    await serving.stop();
  }
}

async function demoEdited(root: string, browser: Browser): Promise<Measured> {
  const serving = await serve(path.join(root, "dist"), 0);
  try {
    return await inPage(browser, async (page) => {
      await firstNumberAt(page, serving.address);
      return changedLength(page);
    });
  } finally {
    await serving.stop();
  }
}

/** The first change is left out. */
async function changedLength(page: Page): Promise<Measured> {
  await lengthPainted(page);
  return middle(() => lengthPainted(page));
}

/** The first entry writes every sheet and is left out. */
async function fortyRunsOpen(
  root: string,
  browser: Browser,
): Promise<{ painted: Measured; seen: Measured; kept: Measured }> {
  const serving = await serve(path.join(root, "dist"), 0);
  try {
    return await inPage(browser, async (page) => {
      await firstNumberAt(page, serving.address);
      const bytes = await writeBook({ workbook: fortyRuns(), shown: new Map() }, { title: "forty runs" });
      await page.locator("#chooser").setInputFiles({ name: "forty.xlsx", mimeType: "", buffer: Buffer.from(bytes) });
      await page.locator("#kept[data-state=kept]").waitFor({ timeout: 60_000 });
      await page.evaluate(() => window.ductLedgerHost!.goTo("Runs", "B60"));
      await entryKept(page);
      const kept = await middle(() => entryKept(page));
      const painted = await changedLength(page);
      const seen = await middle(() => lengthPainted(page, "Flow"));
      return { kept, painted, seen };
    });
  } finally {
    await serving.stop();
  }
}

/**
 * Until the frame after the next one begins: the next one has then been drawn.
 *
 * @param opened the sheet that is opened right after the change; else Runs stays
 */
const lengthPainted = (page: Page, opened = "Runs"): Promise<number> =>
  page.evaluate(
    async ([opened, at]) => {
      await window.ductLedgerHost!.goTo("Runs", at);
      await new Promise((drawn) => requestAnimationFrame(drawn));
      const began = performance.now();
      await window.ductLedgerHost!.insert({ value: 10 + (began % 10) }, true);
      if (opened !== "Runs") await window.ductLedgerHost!.goTo(opened, "A1");
      await new Promise((next) => requestAnimationFrame(() => requestAnimationFrame(next)));
      return (performance.now() - began) / 1000;
    },
    [opened, LENGTH] as const,
  );

async function check(root: string, browser: Browser): Promise<Measured> {
  const serving = await serve(path.join(root, "dist"), 0);
  try {
    return await inPage(browser, async (page) => {
      await firstNumberAt(page, serving.address);
      const pane = page.frameLocator("#pane-frame");
      await pane.getByRole("tab", { name: "Check" }).click();
      await pane.getByRole("button", { name: "Check the open book" }).click();
      await pane.getByText("to look at").first().waitFor();
      return middle(() => checkedAgain(page));
    });
  } finally {
    await serving.stop();
  }
}

const checkedAgain = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const { contentDocument: pane } = document.querySelector<HTMLIFrameElement>("#pane-frame")!;
    const status = [...pane!.querySelectorAll("[role=status]")].find(({ textContent }) =>
      textContent.includes("to look at"),
    )!;
    const button = [...pane!.querySelectorAll("button")].find(({ textContent }) => textContent === "Check again")!;
    const began = performance.now();
    let read = false;
    const listed = new Promise<number>((done) => {
      new MutationObserver((_, observer) => {
        if (status.textContent.includes("Reading")) read = true;
        if (!read || !status.textContent.includes("to look at")) return;
        observer.disconnect();
        done((performance.now() - began) / 1000);
      }).observe(status, { childList: true, characterData: true, subtree: true });
    });
    button.click();
    return listed;
  });

/** The words of the line are what a person waits for. */
const entryKept = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const line = document.getElementById("kept")!;
    const began = performance.now();
    const kept = new Promise<number>((done) => {
      new MutationObserver((_, observer) => {
        if (line.dataset.state !== "kept") return;
        observer.disconnect();
        done((performance.now() - began) / 1000);
      }).observe(line, { attributeFilter: ["data-state"] });
    });
    await window.ductLedgerHost!.insert({ value: began }, true);
    return kept;
  });

/** In a window of its own, which has nothing kept from the time before. */
async function inPage<Value>(browser: Browser, use: (page: Page) => Promise<Value>): Promise<Value> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  try {
    return await use(await context.newPage());
  } finally {
    await context.close();
  }
}
