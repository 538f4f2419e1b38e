/** The first budget of the README, typed into the empty template with the keyboard: an invented toymaker's cellar, in SI. */
import type { Page } from "playwright-core";
import {
  type BuiltSite,
  keptSays,
  type LocalPage,
  numberOf,
  read,
  reload,
  startSite,
  typeHere,
  walkTo,
} from "./localPage";

jest.setTimeout(240_000);

let site: BuiltSite;
let local: LocalPage;

beforeAll(async () => {
  site = await startSite();
  local = await site.open();
});
afterAll(async () => {
  await local.close();
  await site.stop();
});

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

async function budget(page: Page): Promise<Record<string, number[]>> {
  await sheet(page, "Budget");
  const rows = await read(page, "B9:D11");
  return Object.fromEntries(rows.map(([run, airflow, velocity]) => [run!, [numberOf(airflow), numberOf(velocity)]]));
}

function expectByHand(shown: Record<string, number[]>): void {
  expect(Object.keys(shown)).toEqual(Object.keys(BY_HAND));
  for (const [run, [airflow, velocity]] of Object.entries(BY_HAND)) {
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
  await keptSays(page, /^Kept in this browser\.$/);
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

  await keptSays(page, /^Kept in this browser\.$/);
  await reload(page);
  expectByHand(await budget(page));
  expect(local.complaints).toEqual([]);
});
