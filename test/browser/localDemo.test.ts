import {
  chartIsDrawn,
  goTo,
  lineSays,
  type LocalPage,
  localSite,
  openSheet,
  read,
  readOne,
  sheetNames,
  typeHere,
  typeInto,
  walkTo,
} from "./localPage";

// What the demo computes stands in test/sheets/demo.grid.test.ts and test/sheets/book/flow.grid.test.ts; here is what only a browser shows.

const site = localSite();
let local: LocalPage; // the tests go on from one another
beforeAll(async () => {
  local = await site.open();
});
afterEach(() => {
  expect(local.complaints).toEqual([]);
  expect(local.outside).toEqual([]);
});
afterAll(() => local.close());

describe("the demo", () => {
  test("opens with nothing to complain of and nothing asked of another machine", async () => {
    expect(await local.page.title()).toBe("Duct Ledger");
    await local.page.frameLocator("#pane-frame").getByRole("tab").first().waitFor(); // the pane's code has run too
    expect((await sheetNames(local.page)).length).toBe(15);
    expect(await readOne(local.page, "A3")).toMatch(/^Invented for trying out/);
  });

  test("a gate is shut by keyboard, and undo brings all back", async () => {
    const { page } = local;
    await openSheet(page, "Flow");
    const before = await read(page, "B5:U20");
    await walkTo(page, "A12");
    await typeHere(page, "shut planer");
    expect((await read(page, "B12:H12"))[0]!.filter((_, index) => index === 0 || index === 6)).toEqual([
      "planer",
      "shut",
    ]);
    expect(await readOne(page, "C9")).toBe("band saw; drum sander; router table");
    await page.keyboard.press("Control+Z");
    expect(await read(page, "B5:U20")).toEqual(before);
  });

  test("a chart shows where the fan works", async () => {
    const { page } = local;
    await openSheet(page, "Fan");
    await chartIsDrawn(page);
  });

  test("what is wrong in a row of Runs or in a point of the curve is read in the line under the grid, and undo brings all back", async () => {
    const { page } = local;
    await openSheet(page, "Fan");
    await typeInto(page, "B10", "abc");
    await openSheet(page, "Flow");
    expect(await readOne(page, "B10")).toBe("#VALUE!");
    await lineSays(
      page,
      /^B10 shows #VALUE!: pressure in row 3 of the curve must be a number \(in\.w\.g\.\); got "abc"$/,
    );
    await page.keyboard.press("Control+Z");
    await openSheet(page, "Runs");
    await typeInto(page, "C12", "nowhere");
    await openSheet(page, "Budget");
    expect(await readOne(page, "C15")).toBe("#N/A");
    await lineSays(page, /C15 shows #N\/A: waits for run "router table" \(row 5\)/);
    await page.keyboard.press("Control+Z");
    await openSheet(page, "Runs");
    expect(await readOne(page, "C12")).toBe("south main");
  });

  test("a sheet is chosen by mouse from the list of all, and a reading that is typed there is judged", async () => {
    const { page } = local;
    await page.locator(".o-list-sheets").click();
    await page.locator(".o-popover").getByText("Readings", { exact: true }).click();
    await page.locator(".o-sheet.active").getByText("Readings", { exact: true }).waitFor();
    for (const [at, words] of Object.entries({ A11: "lathe", B11: "5", C11: "0.196", D11: "980" }))
      await typeInto(page, at, words);
    // by hand in readings.grid.test.ts
    expect((await read(page, "E11:H11"))[0]).toEqual([
      "0.1364",
      "1.44",
      "682",
      "slip: the area entered is 44 % too large",
    ]);
  });

  test("a heading is explained in the line under the grid, and so is each cell to be filled, while one types, with what Tab takes", async () => {
    const { page } = local;
    await openSheet(page, "Runs");
    await goTo(page, "R8");
    await lineSays(page, /^R8: An open area at the run's upstream end/);
    await goTo(page, "R18");
    await lineSays(page, /^R18: An open area at the run's upstream end/);
    await goTo(page, "A11"); // wider than its column
    await lineSays(page, /^A11: settles: 29\d\d fpm; 4 in would carry it \(\d+ fpm\)$/);
    await goTo(page, "A4");
    await page.waitForFunction(() => document.getElementById("sheet-words")!.textContent === "");

    await goTo(page, "C18");
    await page.keyboard.type("no");
    await lineSays(page, /^C18: Tab takes "north main"\. The run that it joins, spelled as there/);
    await page.keyboard.press("Tab");
    await lineSays(page, /^D18: What a hood should draw/); // the cell beside it
    expect(await readOne(page, "C18")).toBe("north main");
    await goTo(page, "H18");
    await page.keyboard.type("4"); // a K, no matter which names have a 4 in them
    await page.keyboard.press("Tab");
    expect(await readOne(page, "H18")).toBe("4");
    await goTo(page, "H18");
    await page.keyboard.type("drum");
    await lineSays(page, /^H18: Tab takes "drum sander port"/);
    await page.keyboard.press("Tab");
    await page.keyboard.type("gate; elbow 5"); // the next cell, and the second fitting in it
    await lineSays(page, /^I18: Tab takes "gate; elbow 5-piece/);
    await page.keyboard.press("Tab");
    await page.keyboard.type(" 1.5"); // at once: a hand does not wait until the grid has drawn the word
    await page.keyboard.press("Enter");
    expect((await read(page, "H18:I18"))[0]).toEqual(["drum sander port", "gate; elbow 5-piece 1.5"]);
  });

  test("what is typed counts as typed, however long the sheet computes after each entry", async () => {
    const { page } = local;
    await openSheet(page, "Runs");
    await goTo(page, "D9");
    const airflows = ["421", "512", "433", "544"];
    const press = (keys: readonly string[]) => Promise.all(keys.map((key) => page.keyboard.press(key))); // none waits for what the one before did
    await press([...airflows.flatMap((airflow) => [...airflow, "Enter"]), "F2", "Backspace", "7", "Enter"]);
    expect((await read(page, "D9:D12")).flat()).toEqual(airflows);
    expect(await readOne(page, "D13")).toBe("7");
    await goTo(page, "D18");
    await press(["1", "Tab", "2", "Tab", "3", "Enter", "4", "5", "Enter"]); // the row below begins where this one began
    expect(await read(page, "D18:F19")).toEqual([
      ["1", "2", "3"],
      ["45", "", ""],
    ]);
  });

  test("whoever goes to another sheet while typing in a cell has entered it", async () => {
    const { page } = local;
    await openSheet(page, "Runs");
    await goTo(page, "D9");
    await page.keyboard.type("431");
    await openSheet(page, "Fan");
    await openSheet(page, "Runs");
    expect(await readOne(page, "D9")).toBe("431");
    await goTo(page, "D10");
    await page.keyboard.type("521");
    await page.keyboard.press("Shift+PageDown");
    await openSheet(page, "Runs");
    expect(await readOne(page, "D10")).toBe("521");
  });
});
