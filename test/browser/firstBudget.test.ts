/** The first budget of the README, typed into the empty template with the keyboard: an invented toymaker's cellar, in SI. */
import fs from "node:fs";
import type { FrameLocator, Page } from "playwright-core";
import { KEPT, keptSays, numberOf, paneFrame, read, reload, localSite, typeHere, walkTo } from "./localPage";
import { button, hasFocus, says, tab, view } from "./panePage";

const local = localSite().openForAll();

/** Goes to a sheet by the grid's own keys, and waits for each step to show. */
async function sheet(page: Page, name: string): Promise<void> {
  const names = await page.locator(".o-sheet-name").allInnerTexts();
  const active = (): Promise<string> => page.locator(".o-sheet.active .o-sheet-name").innerText();
  const [from, to] = [names.indexOf(await active()), names.indexOf(name)];
  expect(Math.min(from, to)).toBeGreaterThanOrEqual(0);
  for (let at = from; at !== to; at += Math.sign(to - from)) {
    await page.keyboard.press(to > from ? "Shift+PageDown" : "Shift+PageUp");
    const next = names[at + Math.sign(to - from)]!;
    await page.locator(".o-sheet.active .o-sheet-name", { hasText: new RegExp(`^${next}$`) }).waitFor();
  }
}

/** Types a column downwards; Enter goes to the next cell. */
async function column(page: Page, from: string, cells: readonly string[]): Promise<void> {
  await walkTo(page, from);
  for (const cell of cells) await typeHere(page, cell);
}

const RUNS: readonly (readonly [string, readonly string[]])[] = [
  ["B9", ["lathe", "jigsaw", "main"]],
  ["C9", ["main", "main", "fan"]],
  ["D9", ["500", "700"]],
  ["E9", ["90", "125", "140"]],
  ["F9", ["3", "4", "6"]],
  ["H9", ["flanged end", "flanged end"]],
  ["I9", ["branch 30", "branch 30", "elbow 1.5"]],
];

// by hand: 500 + 700 = 1200 m3/h; in 140 mm, pi/4 0.14^2 = 0.0153938 m2, that is 21.65 m/s; 500 in 90 mm 21.83, 700 in 125 mm 15.85
const BY_HAND = { lathe: [500, 21.83], jigsaw: [700, 15.85], main: [1200, 21.65] } as const;

async function budget(page: Page, name = "Budget"): Promise<Record<string, number[]>> {
  await sheet(page, name);
  const rows = await read(page, "B9:D11");
  return Object.fromEntries(rows.map(([run, airflow, velocity]) => [run!, [numberOf(airflow), numberOf(velocity)]]));
}

function expectByHand(
  shown: Record<string, number[]>,
  byHand: Record<string, readonly [number, number]> = BY_HAND,
): void {
  expect(Object.keys(shown)).toEqual(Object.keys(byHand));
  for (const [run, [airflow, velocity]] of Object.entries(byHand)) {
    expect(shown[run]![0]).toBe(airflow);
    expect(Math.abs(shown[run]![1]! - velocity)).toBeLessThanOrEqual(0.05 + 0.005); // shown with one decimal at least
  }
}

test("a budget typed by keyboard says what was worked by hand, and survives a reload", async () => {
  const { page } = local;
  await page.keyboard.press("Shift+F6"); // to New
  await page.keyboard.press("Enter");
  await page.keyboard.press("ArrowRight"); // SI
  await page.keyboard.press("Enter");
  await keptSays(page, KEPT);
  await sheet(page, "Runs");
  for (const [from, cells] of RUNS) await column(page, from, cells);
  await sheet(page, "Fan");
  await column(page, "A9", ["0", "1000", "2000"]);
  await column(page, "B9", ["2500", "2000", "500"]);
  expectByHand(await budget(page));
  await sheet(page, "Runs"); // wood dust wants 20 m/s
  expect((await read(page, "A9:A11")).flat().map((check) => check.split(":")[0])).toEqual(["ok", "settles", "ok"]);
  await sheet(page, "Flow");
  const flow = await read(page, "B11:C14");
  expect(flow.map(([run]) => run)).toEqual(["lathe", "jigsaw", "main", "Fan"]);
  const [lathe, jigsaw, main, fan] = flow.map(([, airflow]) => numberOf(airflow));
  expect(Math.abs(lathe! + jigsaw! - main!)).toBeLessThanOrEqual(1); // whole numbers are shown, and nothing leaks
  expect(fan).toBe(main);

  await keptSays(page, KEPT);
  await reload(page);
  expectByHand(await budget(page));
  expect(local.complaints).toEqual([]);
});

/** Goes on with Tab in the pane until this has the focus. */
async function tabTo(page: Page, wanted: ReturnType<FrameLocator["locator"]>): Promise<void> {
  await wanted.waitFor();
  for (let steps = 0; steps < 40 && !(await hasFocus(wanted)); steps++) await page.keyboard.press("Tab");
  expect(await hasFocus(wanted)).toBe(true);
}

/** Goes to a view of the pane from the tab that has the focus. */
async function turnTo(page: Page, pane: FrameLocator, name: string): Promise<void> {
  for (let steps = 0; steps < 7 && !(await hasFocus(tab(pane, name))); steps++) await page.keyboard.press("ArrowRight");
  expect(await hasFocus(tab(pane, name))).toBe(true);
  await view(pane, name).waitFor();
}

test("the same beside the demo with the pane, never a mouse: build, type, check, mend, and share", async () => {
  const { page } = local;
  const pane = paneFrame(page);
  await tab(pane, "Start").waitFor();
  await page.evaluate(() => {
    for (const inside of [document, document.querySelector("iframe")!.contentDocument!])
      inside.addEventListener("pointerdown", () => document.body.setAttribute("data-mouse", ""), true);
  });
  await page.keyboard.press("F6");
  await turnTo(page, pane, "Build");
  await tabTo(page, pane.getByRole("radio", { name: /^Inch-pound/ }));
  await page.keyboard.press("ArrowDown");
  expect(await pane.getByRole("radio", { name: /^SI/ }).isChecked()).toBe(true);
  await tabTo(page, button(pane, "Add 7 sheets"));
  await page.keyboard.press("Enter");
  await says(pane, "Added 7 sheets: Start 2, Runs 2, Fan 2, Budget 2, Flow 2, Cautions 2 and About 2.");
  expect(await hasFocus(button(pane, "Add 7 sheets"))).toBe(true);

  await page.keyboard.press("Shift+F6"); // to the grid
  await sheet(page, "Runs 2");
  for (const [from, cells] of RUNS) await column(page, from, cells);
  await sheet(page, "Fan 2");
  await column(page, "A9", ["0", "1000", "2000"]);
  await column(page, "B9", ["2500", "2000", "500"]);

  await page.keyboard.press("F6"); // back to the very button
  expect(await hasFocus(button(pane, "Add 7 sheets"))).toBe(true);
  for (let steps = 0; steps < 40 && !(await hasFocus(tab(pane, "Build"))); steps++)
    await page.keyboard.press("Shift+Tab");
  await turnTo(page, pane, "Check");
  const check = view(pane, "Check").getByRole("button", { name: /^Check (the open book|again)$/ });
  await tabTo(page, check);
  await page.keyboard.press("Enter");
  await says(pane, /to look at/);
  // 700 m3/h in 125 mm: 15.85 m/s, by hand above
  const settles = pane.getByText(
    'jigsaw: air would flow at 15.8 m/s; "wood dust" needs 20 m/s. This much air would carry it in 100 mm, at 24.8 m/s.',
    { exact: true },
  );
  await settles.waitFor();
  await tabTo(page, button(pane, "Go to Runs 2, E10"));
  await page.keyboard.press("Enter");
  await says(pane, "Selected E10 on the sheet Runs 2.");
  await page.keyboard.press("Shift+F6");
  await page.locator(".o-sheet.active .o-sheet-name", { hasText: /^Runs 2$/ }).waitFor(); // drawn after the pane has said so
  await column(page, "E10", ["110"]);
  await page.keyboard.press("F6");
  for (let steps = 0; steps < 40 && !(await hasFocus(check)); steps++) await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("Enter");
  await settles.waitFor({ state: "detached" });

  for (let steps = 0; steps < 3 && !(await hasFocus(tab(pane, "Check"))); steps++)
    await page.keyboard.press("Shift+Tab");
  await turnTo(page, pane, "Share");
  await tabTo(page, button(pane, "Make a copy of values")); // a club copy of two budgets in one book takes its time, and is made elsewhere
  const [copy] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
  await says(pane, `Made ${copy.suggestedFilename()}.`);
  expect(fs.statSync(await copy.path()).size).toBeGreaterThan(0);
  await page.keyboard.press("F6"); // to the top and on to the grid: nothing holds the focus
  await page.keyboard.press("F6");
  expect(await page.evaluate(() => document.activeElement?.closest("#sheet") !== null)).toBe(true);
  expect(await page.locator("[data-mouse]").count()).toBe(0);
  // 700 m3/h in 110 mm, pi/4 0.11^2 = 0.0095033 m2: 20.46 m/s
  expectByHand(await budget(page, "Budget 2"), { ...BY_HAND, jigsaw: [700, 20.46] });
  expect(local.complaints).toEqual([]);
});
