/** Budgets typed into the empty template with the keyboard, in SI: an invented shop of six machines, and the first budget of the README. */
import fs from "node:fs";
import type { FrameLocator, Page } from "playwright-core";
import "../support/customFunctions";
import { solve } from "../../src/functions/systems/solve";
import { byName, type Row, table } from "../support/tables";
import { type CountedKeys, countedKeys } from "./countedKeys";
import { numberOf } from "../support/numberOf";
import { goTo, KEPT, keptSays, paneFrame, read, reload, localSite, typeHere, walkTo } from "./localPage";
import { button, hasFocus, says, tab, view } from "./panePage";

const local = localSite().openForAll();

/** Goes to a sheet by the grid's own keys, and waits for each step to show. */
async function sheet(page: Page, name: string): Promise<void> {
  await page.locator(".o-sheet-name").getByText(name, { exact: true }).waitFor({ state: "attached" });
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
  ["L11", ["250"]],
  ["M11", ["1200"]],
  ["N11", ["1"]],
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

/** Six invented machines, typed as they come to mind: mains before and after what joins them, and three mistakes. */
interface Typed {
  readonly run: string;
  readonly to: string | { readonly begun: string };
  readonly airflow?: string;
  readonly diameter: string;
  readonly length: string;
  readonly hood?: string | { readonly begun: string };
}
const SHOP: readonly (Typed & { readonly joins: string })[] = [
  { run: "south main", to: "trunk", joins: "trunk", diameter: "160", length: "6" },
  { run: "saw", to: "north main", joins: "north main", airflow: "700", diameter: "110", length: "4", hood: { begun: "fl" } },
  { run: "lathe", to: { begun: "so" }, joins: "south main", airflow: "500", diameter: "9o", length: "3", hood: { begun: "fl" } },
  { run: "trunk", to: "fan", joins: "fan", diameter: "225", length: "3" },
  { run: "planer", to: { begun: "no" }, joins: "north main", airflow: "1000", diameter: "125", length: "5", hood: "flanged ende" },
  { run: "north main", to: { begun: "tr" }, joins: "trunk", diameter: "180", length: "8" },
  { run: "router", to: { begun: "so" }, joins: "south main", airflow: "500", diameter: "90", length: "4", hood: { begun: "fl" } },
  { run: "band saw", to: "nroth main", joins: "north main", airflow: "500", diameter: "90", length: "3", hood: { begun: "fl" } },
  { run: "sander", to: { begun: "so" }, joins: "south main", airflow: "700", diameter: "110", length: "5", hood: { begun: "fl" } },
]; // prettier-ignore

const selected = async (page: Page, address: string): Promise<void> =>
  void (await page.waitForFunction(
    (at) => document.querySelector<HTMLInputElement>(".o-named-range-selector input")?.value === at,
    address,
  ));

/** One row from its name on, by keys alone; then the first cell of the next one. */
async function typeRow(
  { press, type, take }: CountedKeys,
  { run, to, joins, airflow, diameter, length, hood }: (typeof SHOP)[number],
): Promise<void> {
  await type(run);
  await press("Tab");
  if (typeof to === "string") {
    await type(to);
    await press("Tab");
  } else await take(to.begun, joins);
  if (airflow !== undefined) await type(airflow);
  await press("Tab");
  await type(diameter);
  await press("Tab");
  await type(length);
  if (hood !== undefined) {
    await press("Tab", 2); // no hose
    if (typeof hood === "string") {
      await type(hood);
      await press("Tab");
    } else await take(hood.begun, "flanged end");
    await type("branch 30");
  }
  await press("Enter"); // goes where the row began
}

// by hand, v = Q/3600 / (pi/4 d^2): 700 in 110 mm 20.46 m/s, 500 in 90 mm 21.83, 1000 in 125 mm 22.64; the mains carry the sums:
// south 500+500+700 = 1700 in 160 mm 23.49, north 700+1000+500 = 2200 in 180 mm 24.01, trunk 3900 in 225 mm 27.25
const SHOP_BY_HAND: Record<string, readonly [number, number]> = {
  "south main": [1700, 23.49],
  saw: [700, 20.46],
  lathe: [500, 21.83],
  trunk: [3900, 27.25],
  planer: [1000, 22.64],
  "north main": [2200, 24.01],
  router: [500, 21.83],
  "band saw": [500, 21.83],
  sander: [700, 20.46],
};
const FAN = [["0", "2000", "4000", "7000"], ["3000", "2800", "2200", "200"]] as const; // prettier-ignore

/** The same shop as its owner meant it. */
const meant: Row[] = SHOP.map(({ run, joins, airflow, diameter, length, hood }) => ({
  Run: run,
  To: joins,
  Airflow: airflow === undefined ? null : Number(airflow),
  Diameter: Number(diameter.replace("o", "0")),
  Length: Number(length),
  Hood: hood === undefined ? null : "flanged end",
  Fittings: hood === undefined ? null : "branch 30",
}));

test("six machines typed from empty in any order: three mistakes are told beside their rows, the answers are those of the functions, and a reload keeps all", async () => {
  const { page } = local;
  const keys = countedKeys(page);
  const { press, type, take } = keys;
  await press("Shift+F6"); // to New
  await press("Enter");
  await press("ArrowRight"); // SI
  await press("Enter");
  await keptSays(page, KEPT);
  await press("Shift+PageDown");
  await page.locator(".o-sheet.active .o-sheet-name", { hasText: /^Runs$/ }).waitFor();
  await press("Control+ArrowDown"); // to the heading of the table
  await press("ArrowDown");
  await press("ArrowRight");
  for (const [place, row] of SHOP.entries()) {
    await typeRow(keys, row);
    await selected(page, `B${10 + place}`);
  }
  const before = keys.count();
  expect((await read(page, "A9:A17")).flat()).toEqual([
    "waiting for lathe",
    "ok: 20.5 m/s",
    'Diameter must be a number (mm); got "9o"',
    "waiting for lathe",
    'Hood must be a hood entry\'s name or its K (nearest: "flanged end", "flanged end manual", "cone flanged"); got "flanged ende"',
    "waiting for planer",
    "ok: 21.8 m/s",
    "ok: 21.8 m/s; waiting for nroth main, which no row has (nearest: north main)",
    "ok: 20.5 m/s",
  ]);
  await goTo(page, "B18"); // where the last row has ended
  await press("ArrowUp", 2); // the band saw's
  await press("ArrowRight");
  await take("no", "north main");
  await press("ArrowUp", 3); // the planer's
  await press("ArrowRight", 4);
  await take("fl", "flanged end");
  await press("ArrowUp", 2); // the lathe's
  await press("ArrowLeft", 4);
  await type("90");
  await press("Enter");
  await press("Shift+PageDown");
  await page.locator(".o-sheet.active .o-sheet-name", { hasText: /^Fan$/ }).waitFor();
  await press("ArrowDown", 8);
  for (const point of FAN[0]) {
    await type(point);
    await press("Enter");
  }
  await press("ArrowUp", FAN[0].length);
  await press("ArrowRight");
  for (const point of FAN[1]) {
    await type(point);
    await press("Enter");
  }
  expect(before).toBeGreaterThan(9 * 10);
  expect(keys.count()).toBeLessThan(541); // what such a shop took when nothing was offered

  await sheet(page, "Budget");
  const shown = await read(page, "B9:D17");
  expectByHand(
    Object.fromEntries(shown.map(([run, airflow, velocity]) => [run!, [numberOf(airflow), numberOf(velocity)]])),
    SHOP_BY_HAND,
  );
  await sheet(page, "Runs"); // wood dust wants 20 m/s
  expect((await read(page, "A9:A17")).flat().map((check) => check.split(":")[0])).toEqual(SHOP.map(() => "ok"));
  await sheet(page, "Flow");
  const flow = await read(page, "B11:C20");
  const curve = FAN[0].map((airflow, point) => [Number(airflow), Number(FAN[1][point])]);
  const answer = byName(solve(table(meant), curve, undefined, undefined, [["SI"]]));
  expect(flow.map(([run]) => run)).toEqual([...SHOP.map(({ run }) => run), "Fan"]);
  // a whole number is shown; the air of the sheet is that of its temperature, within a thousandth of the function's standard air
  for (const [run, airflow] of flow) {
    const wanted = Number(answer[run!]!.Airflow);
    expect(Math.abs(numberOf(airflow) - wanted)).toBeLessThanOrEqual(0.5 + 0.001 * wanted);
  }

  await keptSays(page, KEPT);
  await reload(page);
  await sheet(page, "Budget");
  expect(await read(page, "B9:D17")).toEqual(shown);
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
  expect(await pane.getByText("No separator, filter or bag is counted.", { exact: true }).count()).toBe(0);
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
