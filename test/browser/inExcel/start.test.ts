/** How the add-in starts in Excel: files that come late or not at all, and where office.js does not know Excel's own page. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import type { ConsoleMessage, Route } from "playwright-core";
import packageJson from "../../../package.json";
import type { CellCall } from "../../support/excelOnTheWeb/cells";
import { excelOnTheWeb } from "../../support/excelOnTheWeb/excelOnTheWeb";
import { dist } from "../../built/loadBundle";
import { button, says, tab } from "../panePage";

const open = excelOnTheWeb();

test("functions that come late: Excel is told that they are there when they are, so that no cell fails before", async () => {
  let release: () => void;
  const released = new Promise<void>((resolve) => (release = resolve));
  const { pane, isReady, functionsReady, cells, complaints } = await open({
    prepare: (context) => context.route("**/functions.js", (route) => released.then(() => route.fallback())),
  });
  await pane.getByText("Connected to Excel.").waitFor();
  await tab(pane, "Share").click();
  await button(pane, "Repair #NAME?").click();
  await says(pane, /nothing was changed/); // office.js has long started and gone to Excel and back
  expect(isReady()).toBe(false);
  release!();
  await functionsReady;
  expect(await cells(["AREA", [[4]], null, null])).toEqual([{ rows: [[expect.closeTo(Math.PI / 36, 12)]] }]);
  expect(complaints).toEqual([]);
});

test("functions.js that does not come at first is asked for again, and the pane says what waits for it meanwhile", async () => {
  let isThere = false;
  const { pane, isReady, functionsReady, cells, complaints } = await open({
    prepare: (context) => context.route("**/functions.js", (route) => (isThere ? route.fallback() : route.abort())),
  });
  const waits = pane.getByText(/The file of the cell functions could not be loaded: cells wait for it/);
  await waits.waitFor();
  expect(isReady()).toBe(false); // so no cell is told a wrong thing
  isThere = true;
  await functionsReady;
  expect(await cells(["AREA", [[4]], null, null])).toEqual([{ rows: [[expect.closeTo(Math.PI / 36, 12)]] }]);
  await waits.waitFor({ state: "detached" });
  expect(complaints).toEqual(expect.arrayContaining([expect.stringContaining("ERR_FAILED")]));
});

test("what writes into Excel and does not come at first is asked for again", async () => {
  const isOurs = (name: string): boolean =>
    name.endsWith(".js") && readFileSync(path.join(dist, name), "utf8").includes("delayForCellEdit");
  let refused = 0;
  const { pane, complaints } = await open({
    prepare: async (context) => {
      for (const name of readdirSync(dist).filter(isOurs))
        await context.route(`**/${name}`, (route) => (refused++ === 0 ? route.abort() : route.fallback()));
    },
  });
  await pane.getByText("Connected to Excel.").waitFor();
  expect(refused).toBe(2); // once in vain
  expect(complaints).toEqual([expect.stringContaining("ERR_FAILED")]);
});

describe("a later file of the functions", () => {
  const ABOUT: CellCall = ["ABOUT"];
  const IS_ABOUT = { rows: expect.arrayContaining([expect.arrayContaining([packageJson.version])]) };

  test("comes late: a cell that asks for one of them waits, and others do not", async () => {
    let release: () => void;
    const released = new Promise<void>((resolve) => (release = resolve));
    const { functionsReady, cells, complaints } = await open({
      prepare: (context) => context.route("**/functionsTables.js?*", (route) => released.then(() => route.fallback())),
    });
    await functionsReady;
    const waiting = cells(ABOUT);
    expect(await cells(["AREA", [[4]], null, null])).toEqual([{ rows: [[expect.closeTo(Math.PI / 36, 12)]] }]);
    release!();
    expect(await waiting).toEqual([IS_ABOUT]);
    expect(complaints).toEqual([]);
  });

  test("does not come: the cell says so, and computes when it is entered again and the file is there", async () => {
    let isThere = false;
    const { functionsReady, cells, complaints } = await open({
      prepare: (context) =>
        context.route("**/functionsTables.js?*", (route) => (isThere ? route.fallback() : route.abort())),
    });
    await functionsReady;
    const sentence = expect.stringMatching(/^the file of the add-in that holds ABOUT could not be loaded: enter/);
    expect(await cells(ABOUT)).toEqual([{ error: "#N/A", sentence }]);
    isThere = true;
    expect(await cells(ABOUT)).toEqual([IS_ABOUT]);
    expect(complaints).toEqual(expect.arrayContaining([expect.stringContaining("ERR_FAILED")]));
  });
});

test.each<[string, (route: Route) => Promise<void>]>([
  ["is blocked", (route) => route.abort()],
  ["never comes", () => new Promise(() => undefined)],
])("office.js %s: the pane says that it works alone, and its tables do", async (_, answer) => {
  const { pane } = await open({
    prepare: (context) => context.route("https://appsforoffice.microsoft.com/**", answer),
  });
  await pane.getByText("Running without a sheet: tables, functions and cautions need nothing else.").waitFor();
  await tab(pane, "Tables").click();
  await pane.getByRole("combobox", { name: "Table" }).selectOption("fittings");
  await pane.getByRole("searchbox", { name: "Search", exact: true }).fill("4-piece 1.5");
  await pane.locator("[data-row]:visible").first().click();
  await button(pane, "Insert K at 90 degrees 0.27").waitFor(); // SMACNA Table A-7
});

test("where office.js does not know the host of Excel's page, it asks in a page of its own, which the policy lets through", async () => {
  const { pane, complaints, outside } = await open({ host: "https://excel.cloud.microsoft" });
  await pane.getByText("This add-in has been disabled to help keep you safe.").waitFor();
  await pane.getByRole("button", { name: "Continue" }).waitFor();
  expect(complaints).toEqual([]);
  expect(outside).toEqual([]);
});

test("the pane's content policy is on: no other server is asked", async () => {
  const { pane, frame, complaints, outside } = await open();
  await pane.getByText("Connected to Excel.").waitFor();
  const isTold = (message: ConsoleMessage): boolean => message.text().includes("Content Security Policy");
  const told = frame().page().waitForEvent("console", isTold); // a browser tells of a refusal a little later
  await frame().evaluate(() => fetch("https://other.example/").catch(() => undefined));
  await told;
  expect(complaints).toContainEqual(expect.stringContaining("Content Security Policy"));
  expect(outside).toEqual([]);
});
