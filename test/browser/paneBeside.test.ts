import fs from "node:fs";
import type { FrameLocator, Page } from "playwright-core";
import { numberOf } from "../support/numberOf";
import {
  goTo,
  KEPT,
  keptSays,
  openSheet,
  paneFrame,
  read,
  readOne,
  sheetNames,
  staysQuiet,
  localSite,
  typeHere,
  typeInto,
} from "./localPage";
import { allFunctions, button, hasFocus, says, tab, view } from "./panePage";

// The pane beside the real sheet, on the demo: what it says it did is read in the grid.

const local = localSite().openForAll();
let page: Page;
let pane: FrameLocator;

beforeEach(async () => {
  ({ page } = local);
  pane = paneFrame(page);
  await tab(pane, "Start").click();
  await goTo(page, "A1"); // the focus is in the grid, as when the page has opened
});
staysQuiet(local);

/** The grid's address box follows the selection with the next drawing. */
const isSelected = (at: string): Promise<unknown> =>
  page.waitForFunction(
    (wanted) => document.querySelector<HTMLInputElement>(".o-named-range-selector input")?.value === wanted,
    at,
  );
const isShown = (sheet: string): Promise<void> =>
  page.locator(".o-sheet.active .o-sheet-name", { hasText: new RegExp(`^${sheet}$`) }).waitFor();

test("Build adds the chosen sheets in the chosen units, says their names, and leaves what was there as it was", async () => {
  await openSheet(page, "Runs");
  const runs = await read(page, "A1:T20");
  const before = await sheetNames(page);
  await tab(pane, "Build").click();
  await pane.getByRole("radio", { name: /^SI/ }).check();
  await pane.getByRole("radio", { name: /example/ }).check();
  await pane.getByRole("checkbox", { name: /^About/ }).uncheck();
  await pane.getByRole("checkbox", { name: /^Leaks/ }).check();
  await button(pane, "Add 7 sheets").click();
  const added = ["Start 2", "Runs 2", "Fan 2", "Budget 2", "Flow 2", "Leaks 2", "Cautions 2"];
  await says(pane, `Added 7 sheets: ${added.slice(0, -1).join(", ")} and Cautions 2.`);
  await isShown("Start 2"); // drawn after the pane has said so
  expect(await sheetNames(page)).toEqual([...before, ...added]);
  expect((await read(page, "A5:B6")).flat()).toEqual(["Settings", "", "Units", "SI"]);
  await openSheet(page, "Budget 2");
  const [header, first] = await read(page, "B8:D9");
  expect(header).toEqual(["Run", "Airflow (m³/h)", "Velocity (m/s)"]);
  expect(numberOf(first![1])).toBeGreaterThan(0);
  await openSheet(page, "Runs");
  expect(await read(page, "A1:T20")).toEqual(runs);
});

test("Build takes a reading of the leak log as the leak of its run when told to, and one undo takes it back", async () => {
  await openSheet(page, "Runs");
  const before = await readOne(page, "T10");
  await tab(pane, "Build").click();
  await button(pane, "Read the leak log").click();
  await says(pane, "Readings of the sheet Leaks, for the sheet Runs.");
  await pane.getByText("bench hood: no run on the sheet Runs is called so.").waitFor();
  await button(pane, "Take this reading as the leak of planer …").click();
  expect(await readOne(page, "T10")).toBe(before); // asked first
  await button(pane, "Write it into T10 of Runs").click();
  await says(pane, "The leak of planer stands in T10 of the sheet Runs. One undo takes it back.");
  expect(numberOf(await readOne(page, "T10"))).toBeCloseTo(0.0812, 3); // 2.5 cfm at 3.4 in.w.g., by hand in leaks.grid.test.ts
  await page.keyboard.press("Control+Z");
  expect(await readOne(page, "T10")).toBe(before);
});

test("Fittings by picture tell a formula before they are written over it, also one that shows nothing", async () => {
  await openSheet(page, "Runs");
  const [header] = await read(page, "A8:Z8");
  const column = "ABCDEFGHIJKLMNOPQRSTUVWXYZ".charAt(header!.indexOf("Fittings"));
  const before = await readOne(page, `${column}10`);
  await typeInto(page, `${column}10`, '=""');
  await goTo(page, `${column}10`);
  await tab(pane, "Build").click();
  await pane.getByText(/^Fittings of planer, Runs![A-Z]10: blank, by the formula =""$/).waitFor();
  await button(pane, `Write it over the formula in ${column}10`).waitFor();
  await goTo(page, `${column}11`);
  await button(pane, `Write it over what ${column}11 holds`).waitFor();
  await page.keyboard.press("Control+Z");
  expect(await readOne(page, `${column}10`)).toBe(before);
});

test("Check lists what the grid holds and goes to the cell; mended there, it is found no more", async () => {
  const what = "south main has 4.5 in, but drum sander, which joins it, has 5 in.";
  const turned = "The gate of router table has its seat on the wrong side.";
  const findings = pane.getByRole("list", { name: "Findings" });
  await openSheet(page, "Runs");
  await typeInto(page, "E14", "4.5");
  await typeInto(page, "T12", "shut wrong side");
  await openSheet(page, "Start");
  await tab(pane, "Check").click();
  const check = (name: string) => view(pane, "Check").getByRole("button", { name }).click();
  await check("Check the open book");
  await says(pane, /to look at/);
  for (const one of [what, turned]) await findings.getByText(one, { exact: true }).waitFor();
  await pane.locator("canvas").waitFor();
  await pane.getByRole("img", { name: /^Tree of the ducts/ }).waitFor();
  await pane.getByText("The same as a table").locator("visible=true").first().click();
  await pane.getByRole("region", { name: "Fan and ducts in numbers" }).getByText("works here").waitFor();

  await button(pane, "Go to Runs, T12").click();
  await says(pane, "Selected T12 on the sheet Runs.");
  await isSelected("T12");
  await isShown("Runs");
  await button(pane, "Go to Runs, E14").first().click();
  await says(pane, "Selected E14 on the sheet Runs.");
  await isSelected("E14");
  await page.keyboard.press("Shift+F6"); // to the grid, whose selection it is
  await typeHere(page, "6");
  expect(await readOne(page, "E14")).toBe("6");
  await pane.getByText("Something has been changed since: check again.").waitFor();
  await check("Check again");
  await findings.getByText(what).waitFor({ state: "detached" });
  expect(await findings.getByText(turned).count()).toBe(1);
});

test("Tables puts a value and a formula into the selected cell, and asks before it writes over a filled one", async () => {
  await page.click(".o-add-sheet");
  await goTo(page, "C3");
  await tab(pane, "Tables").click();
  await pane.getByRole("combobox", { name: "Table" }).selectOption("fittings");
  await pane.getByRole("searchbox", { name: "Search", exact: true }).fill("4-piece 1.5");
  await pane.locator("[data-row]:visible").first().click();
  const value = button(pane, "Insert K at 90 degrees 0.27"); // SMACNA Table A-7
  await value.click();
  await says(pane, "Written into C3.");
  expect(await readOne(page, "C3")).toBe("0.27");

  await typeInto(page, "C4", "mine");
  await goTo(page, "C4");
  await value.click();
  await pane.getByRole("group", { name: /^Sheet\d+!C4 is filled$/ }).waitFor();
  expect(await hasFocus(button(pane, "Leave it"))).toBe(true);
  await page.keyboard.press("Enter");
  await says(pane, /^Sheet\d+!C4 was left as it is\.$/);
  expect(await hasFocus(value)).toBe(true);
  expect(await readOne(page, "C4")).toBe("mine");

  await goTo(page, "C4");
  await button(pane, 'Insert the formula =DUCT.LOSSCOEFFICIENT("elbow 4-piece",1.5)').click();
  await pane.getByRole("group", { name: /^Sheet\d+!C4 is filled$/ }).waitFor();
  await typeInto(page, "C9", "of mine");
  await goTo(page, "C9"); // what is selected when the question is answered is not what was asked about
  await button(pane, /^Write over Sheet\d+!C4$/).click();
  await says(pane, "Written into C4.");
  expect(await readOne(page, "C4")).toBe("0.27");
  expect(await readOne(page, "C9")).toBe("of mine");
});

test("Functions, by keyboard alone: the form shows the result, writes the formula, and the grid shows the number", async () => {
  await page.click(".o-add-sheet");
  const mine = await page.locator(".o-sheet.active .o-sheet-name", { hasText: /^Sheet/ }).innerText();
  await typeInto(page, "A1", "350");
  await goTo(page, "B1");
  await page.keyboard.press("F6");
  expect(await hasFocus(tab(pane, "Start"))).toBe(true);
  for (const key of ["ArrowRight", "ArrowRight"]) await page.keyboard.press(key);
  await pane.getByText(allFunctions()).waitFor();
  for (const key of ["Tab", "Tab"]) await page.keyboard.press(key);
  expect(await hasFocus(pane.getByRole("searchbox", { name: "Search functions" }))).toBe(true);
  await page.keyboard.type("mean velocity airflow duct");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
  await pane.getByText(/^gives .* fpm$/).waitFor();
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  expect(await hasFocus(pane.getByRole("textbox", { name: "airflow" }))).toBe(true);
  await page.keyboard.type(`${mine}!A1`);
  await page.keyboard.press("Tab");
  await page.keyboard.type("4");
  await says(pane, "Gives 4011 fpm"); // 350 / 0.0872665 ft² = 4010.7 fpm
  for (let i = 0; i < 4; i++) await page.keyboard.press("Tab"); // height, units, Copy, Insert
  await page.keyboard.press("Enter");
  await says(pane, "Written into B1.");
  expect(numberOf(await readOne(page, "B1"))).toBeCloseTo(4010.7, 0);
  await typeInto(page, "A1", "700");
  expect(numberOf(await readOne(page, "B1"))).toBeCloseTo(2 * 4010.7, 0);
});

test("Functions offers the runs and the curve of the open book, and computes with its cells", async () => {
  await openSheet(page, "Fan");
  const [airflow, pressure] = (await read(page, "A11:B11"))[0]!; // a point of the curve itself
  await tab(pane, "Functions").click();
  await pane.getByRole("searchbox", { name: "Search functions" }).fill("FANPRESSURE");
  await button(pane, /^FANPRESSURE/).click();
  await button(pane, "Insert here …").click();
  await button(pane, /^Take Fan!D8:E\d+$/).click();
  await pane.getByRole("textbox", { name: "airflow" }).fill(airflow!);
  await says(pane, `Gives ${pressure!} in.w.g.`);
  await pane.getByRole("textbox", { name: "airflow" }).fill("Fan!A11");
  await says(pane, `Gives ${pressure!} in.w.g.`);
});

test("Functions begins with the units of the open book: in one in SI, 1000 m³/h in 100 mm are 35.4 m/s", async () => {
  await openSheet(page, "Start");
  await typeInto(page, "B6", "SI");
  await tab(pane, "Functions").click();
  await pane.getByRole("searchbox", { name: "Search functions" }).fill("VELOCITY airflow");
  await button(pane, /^VELOCITY/)
    .first()
    .click();
  await button(pane, "Insert here …").click();
  await pane.getByRole("textbox", { name: "airflow" }).fill("1000");
  await pane.getByRole("textbox", { name: "diameter" }).fill("100");
  await says(pane, "Gives 35.37 m/s"); // 1000/3600 m³/s over 0.00785398 m² = 35.36777
  await button(pane, "Insert the formula =DUCT.VELOCITY(1000,100,,units)").waitFor();
  await pane.getByRole("combobox", { name: "units" }).selectOption("IP");
  await says(pane, /^Gives .* fpm$/);
  await typeInto(page, "B6", "IP");
});

test("Repair says that there is nothing to repair, and names the cell of a function that there is not", async () => {
  await tab(pane, "Share").click();
  await button(pane, "Repair #NAME?").click();
  await says(pane, "No formula of ours stands at #NAME? or #BUSY!, so nothing was changed.");
  await openSheet(page, "Start");
  await typeInto(page, "A40", "=DUCT.NOSUCH(1)");
  await button(pane, "Repair #NAME?").click();
  await says(pane, "Still at #NAME? or #BUSY!: Start!A40.");
});

test("Share makes a club copy, which Open reads again and Revive turns back: the same numbers all along, and live again", async () => {
  const numbers = async (): Promise<string[][]> => {
    const shown: string[][] = [];
    for (const [name, range] of [
      ["Budget", "B8:M18"],
      ["Flow", "B10:H20"],
    ] as const) {
      await openSheet(page, name);
      shown.push(...(await read(page, range)));
    }
    return shown;
  };
  const calls = (): Promise<number> =>
    page.evaluate(async () => {
      const { workbook } = await window.ductLedgerHost!.readBook();
      return workbook.sheets
        .flatMap(({ cells }) => cells)
        .filter((cell) => "formula" in cell && cell.formula.includes("DUCT.")).length;
    });
  const [before, live] = [await numbers(), await calls()];
  expect(live).toBeGreaterThan(0);
  await tab(pane, "Share").click();
  const [download] = await Promise.all([page.waitForEvent("download"), button(pane, "Make a club copy").click()]);
  const copy = { name: download.suggestedFilename(), bytes: fs.readFileSync(await download.path()) };
  await says(pane, `Made ${copy.name}.`);
  expect(await calls()).toBe(live); // the open budget was only read
  await button(pane, "Revive this copy").click();
  await says(pane, /is no club copy/);

  await page
    .locator("#chooser")
    .setInputFiles({ name: copy.name, mimeType: "application/octet-stream", buffer: copy.bytes });
  await keptSays(page, KEPT);
  expect(await calls()).toBe(0);
  expect(await numbers()).toEqual(before);

  await openSheet(page, "Start");
  await typeInto(page, "A40", "no file has this");
  await button(pane, "Revive this copy").click();
  await page.locator("#notice").waitFor();
  await page.keyboard.press("Escape");
  await says(pane, "You kept the copy as it is.");
  expect(await hasFocus(button(pane, "Revive this copy"))).toBe(true);
  await page.keyboard.press("Enter");
  await page.locator("#notice").getByRole("button", { name: "Replace it" }).click();
  await says(pane, /^Live again: Start, Runs/);
  expect(await pane.locator("body").innerText()).not.toContain("from what the copy held"); // each number is the copy's
  expect(await calls()).toBe(live);
  expect(await numbers()).toEqual(before);
  await openSheet(page, "Runs");
  await typeInto(page, "D10", "600"); // the planer's
  await openSheet(page, "Budget");
  expect(Math.abs(numberOf(await readOne(page, "C10")) - 600)).toBeLessThanOrEqual(1); // and what its gate lets in
});
