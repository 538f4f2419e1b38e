import { spawn } from "node:child_process";
import { createRequire } from "node:module";
import path from "node:path";
import type { Browser, Page } from "playwright-core";
import { writeBook } from "../../src/hosts/file/writeBook";
import { fortyRuns } from "../../test/support/fortyRuns";
import { launchBrowser } from "../browser";
import { serve } from "../serve";
import { type Row, seconds } from "./row";
import { aCellShowsANumber, theSheetIsDrawn, until } from "./until";

const TIMES = 5;

/** What a person waits for, in a browser that is open already: of several times the middle one. */
export async function pages(root: string): Promise<Row[]> {
  const browser = await launchBrowser();
  try {
    const start = await middle(() => firstNumber(root, browser));
    const tabs = await middle(() => paneTabs(root, browser));
    const kept = await keeping(root, browser);
    return [
      seconds("npm start -- --no-build, from its start to the first number in the page", start),
      seconds("pane, from its address to its tabs", tabs, { atMost: 1 }),
      seconds("a budget of 40 runs: from an entry that nothing rests on until the browser keeps it", kept, {
        atMost: 0.025,
      }),
    ];
  } finally {
    await browser.close();
  }
}

async function middle(measure: () => Promise<number>): Promise<number> {
  const all: number[] = [];
  for (let time = 0; time < TIMES; time++) all.push(await measure());
  return all.sort((one, other) => one - other)[Math.floor(TIMES / 2)]!;
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
      await page.goto(address, { waitUntil: "commit" });
      await until(page, theSheetIsDrawn);
      const drawn = (performance.now() - began) / 1000;
      if (!(await page.evaluate(aCellShowsANumber))) throw new Error("the sheet was drawn before it had a number");
      return drawn;
    });
  } finally {
    child.kill("SIGTERM");
  }
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

/** The words of the line are what a person waits for; the first entry writes every sheet and is left out. */
async function keeping(root: string, browser: Browser): Promise<number> {
  const serving = await serve(path.join(root, "dist"), 0);
  try {
    return await inPage(browser, async (page) => {
      await page.goto(serving.address);
      await until(page, aCellShowsANumber);
      const bytes = await writeBook({ workbook: fortyRuns(), shown: new Map() }, { title: "forty runs" });
      await page.locator("#chooser").setInputFiles({ name: "forty.xlsx", mimeType: "", buffer: Buffer.from(bytes) });
      await page.locator("#kept[data-state=kept]").waitFor({ timeout: 60_000 });
      await page.evaluate(() => window.ductLedgerHost!.goTo("Runs", "B60"));
      await entryKept(page);
      return middle(() => entryKept(page));
    });
  } finally {
    await serving.stop();
  }
}

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
