import { spawn } from "node:child_process";
import { createRequire } from "node:module";
import path from "node:path";
import type { Browser, Page } from "playwright-core";
import { RUNS_FIRST, runCell } from "../../src/sheets/book/layout";
import { serve } from "../serve";
import type { Checkout } from "./ofCheckout";
import { aCellShowsANumber, theSheetIsDrawn, until } from "./until";

/* How long a person waits, each once. [s] */

const LENGTH = runCell("Length", RUNS_FIRST + 2);

/** From `npm start -- --no-build` to the first number in the page. */
export async function firstNumber({ root }: Checkout, browser: Browser): Promise<number> {
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

/** From the page's address to its first number. */
export const numberInPage = ({ dist }: Checkout, browser: Browser): Promise<number> =>
  served(dist, browser, async (page, address) => {
    const began = performance.now();
    return ((await firstNumberAt(page, address)) - began) / 1000;
  });

/** When it came. That it is a number is looked at afterwards, since to look takes longer than to draw. */
export async function firstNumberAt(page: Page, address: string): Promise<number> {
  await page.goto(address, { waitUntil: "commit" });
  await until(page, theSheetIsDrawn);
  const drawn = performance.now();
  if (!(await page.evaluate(aCellShowsANumber))) throw new Error("the sheet was drawn before it had a number");
  return drawn;
}

/** From the pane's address to its tabs. Its first paint would be the line that says that it is loading. */
export const paneTabs = ({ dist }: Checkout, browser: Browser): Promise<number> =>
  served(dist, browser, async (page, address) => {
    const began = performance.now();
    await page.goto(`${address}/pane.html`, { waitUntil: "commit" });
    await page.getByRole("tab", { name: "Start" }).waitFor();
    return (performance.now() - began) / 1000;
  });

/**
 * Until the frame after the next one begins: the next one has then been drawn.
 *
 * @param opened the sheet that is opened right after the change; else Runs stays
 */
export const lengthPainted = (page: Page, opened = "Runs"): Promise<number> =>
  page.evaluate(
    async ([opened, at]) => {
      await window.ductLedgerHost!.goTo("Runs", at);
      await new Promise((drawn) => requestAnimationFrame(drawn));
      const began = performance.now();
      await window.ductLedgerHost!.insert({ value: 10 + (began % 10) }, `Runs!${at}`);
      if (opened !== "Runs") await window.ductLedgerHost!.goTo(opened, "A1");
      await new Promise((next) => requestAnimationFrame(() => requestAnimationFrame(next)));
      return (performance.now() - began) / 1000;
    },
    [opened, LENGTH] as const,
  );

/** Of a pane in which Check has been asked before. */
export const checkedAgain = (page: Page): Promise<number> =>
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
export const entryKept = (page: Page): Promise<number> =>
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
    await window.ductLedgerHost!.insert({ value: began }, await window.ductLedgerHost!.selectionAddress());
    return kept;
  });

async function served<Value>(
  dist: string,
  browser: Browser,
  use: (page: Page, address: string) => Promise<Value>,
): Promise<Value> {
  const serving = await serve(dist, 0);
  try {
    return await inPage(browser, (page) => use(page, serving.address));
  } finally {
    await serving.stop();
  }
}

/** In a window of its own, which has nothing kept from the time before. */
export async function inPage<Value>(browser: Browser, use: (page: Page) => Promise<Value>): Promise<Value> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  try {
    return await use(await context.newPage());
  } finally {
    await context.close();
  }
}
