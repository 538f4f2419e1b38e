import { goTo, lineSays, numberOf, read, readOne, localSite, typeHere, typeInto, walkTo } from "./localPage";

const local = localSite().openForAll();

const openSheet = (name: string): Promise<void> =>
  local.page.locator(".o-sheet", { hasText: new RegExp(`^\\s*${name}\\s*$`) }).click();

/** The rows of the budget's answer by the run's name, each by its column's letter. */
async function budget(): Promise<Record<string, Record<string, string>>> {
  await openSheet("Budget");
  const rows = await read(local.page, "B9:N18");
  return Object.fromEntries(
    rows.map((row) => [row[0]!, Object.fromEntries(row.map((cell, index) => ["BCDEFGHIJKLMN"[index]!, cell]))]),
  );
}

describe("the demo", () => {
  test("opens with nothing to complain of and nothing asked of another machine", async () => {
    expect(await local.page.title()).toBe("Duct Ledger");
    await local.page.frameLocator("#pane-frame").getByRole("tab").first().waitFor(); // the pane's code has run too
    expect(local.complaints).toEqual([]);
    expect(local.outside).toEqual([]);
  });

  test("says on its first sheet that it is invented and what to do, and on the next what to try", async () => {
    expect(await readOne(local.page, "A3")).toMatch(/^Invented for trying out/);
    expect((await read(local.page, "A14:A18")).flat()).toEqual([
      "1. Start",
      "2. Runs",
      "3. Fan",
      "4. Budget",
      "5. Flow",
    ]);
    await openSheet("Runs");
    expect(await readOne(local.page, "C2")).toMatch(/^Try it: the drum sander asks for 400 cfm; type 600 in D11/);
  });

  test("every cell of its sheets has an answer, but for the one that shows a wrong value", async () => {
    const { page } = local;
    const troubles: string[] = [];
    const names = (await page.locator(".o-sheet").allInnerTexts()).map((name) => name.trim());
    expect(names.length).toBe(15);
    for (const name of names) {
      await openSheet(name);
      const cells = (await read(page, "A1:Z60")).flat();
      if (name === "Flow") cells.push(...(await read(page, "A61:Z120")).flat());
      troubles.push(...cells.filter((cell) => /^(#|see [A-Z])/.test(cell)).map((cell) => `${name}: ${cell}`));
    }
    expect(troubles).toEqual(["Single cells: #VALUE!"]);
  });

  test("a drum sander that draws 400 cfm through 5 in settles; 600 cfm, typed by keyboard, does not", async () => {
    // By hand: 5 in is pi/4 (5/12)^2 = 0.136354 ft2. 400/0.136354 = 2933.5 fpm, under 3937; 600/0.136354 = 4400.3 fpm, over.
    const { page } = local;
    await openSheet("Runs");
    await goTo(page, "S11"); // without its gate's small leak
    await page.keyboard.press("Delete");
    expect(await readOne(page, "A11")).toBe("settles: 2934 fpm; 4 in would carry it (4584 fpm)");
    expect(await readOne(page, "F7")).toBe("1");
    await walkTo(page, "D11");
    await typeHere(page, "600");
    expect(await readOne(page, "A11")).toBe("ok: 4400 fpm");
    expect(await readOne(page, "F7")).toBe("0");
  });

  test("without leaks the fan's airflow is what the hoods ask for, follows a change to the last cfm, and adds up at each junction", async () => {
    const { page } = local;
    await openSheet("Runs");
    await goTo(page, "R9:T48");
    await page.keyboard.press("Delete");
    const pressure = numberOf(await readOne(page, "F6"));
    // 400 + 550 + 400 + 400 at the four hoods
    expect(await readOne(page, "F5")).toBe("1,750");
    await typeInto(page, "D11", "525");
    expect(await readOne(page, "F5")).toBe("1,875");
    expect(numberOf(await readOne(page, "F6"))).toBeGreaterThan(pressure);

    const rows = await budget();
    expect((await read(page, "F4:F6")).flat()).toEqual(["1,875", "0", "1,875"]);
    const airflow = (run: string): number => numberOf(rows[run]!.C);
    expect(airflow("north main")).toBe(airflow("band saw") + airflow("planer"));
    expect(airflow("south main")).toBe(airflow("drum sander") + airflow("router table"));
    expect(airflow("trunk")).toBe(airflow("north main") + airflow("south main"));
    for (const run of ["separator", "filter", "Fan"]) expect(airflow(run)).toBe(airflow("trunk"));
  });

  test("the totals are read from the budget's last row, and its flags from its notes", async () => {
    const rows = await budget();
    const [left, right] = [await read(local.page, "F4:F7"), await read(local.page, "K4:K7")];
    expect(left[2]![0]).toBe(rows.Fan!.C);
    expect(right[0]![0]).toBe(rows.Fan!.K);
    // a gauge reads the velocity pressure on top of the suction that is of total pressure
    const gauges = Object.values(rows).flatMap(({ E: velocityPressure, J: total }) =>
      velocityPressure === "" || total === "" ? [] : [numberOf(velocityPressure) + numberOf(total)],
    );
    expect(Math.abs(numberOf(right[1]![0]) - Math.max(...gauges))).toBeLessThanOrEqual(0.015001);
    // what the fan is asked for is the suction before it and the losses after it; each figure is rounded to 0.01
    expect(Math.abs(numberOf(rows.Fan!.K) - numberOf(rows.Fan!.J) - numberOf(rows.filter!.I))).toBeLessThanOrEqual(
      0.015001,
    );
    const resized = Object.values(rows).filter(({ N: note }) => note!.includes("resize"));
    expect(right[3]![0]).toBe(String(resized.length));
    expect(resized.length).toBeGreaterThan(0);
    const flags = ["band saw", "planer", "drum sander", "router table", "north main", "south main"].map((run) =>
      ["settles", "resize"].filter((word) => rows[run]!.N!.includes(word)).join(", "),
    );
    expect(flags).toContain("settles, resize");
    expect((await read(local.page, "A9:A14")).flat()).toEqual(flags);
  });

  test("a shut gate is said beside its run and lowers what the fan is asked for", async () => {
    const { page } = local;
    await openSheet("Runs");
    const before = numberOf(await readOne(page, "F5"));
    await typeInto(page, "J10", "shut");
    expect(await readOne(page, "A10")).toBe("gate shut");
    expect(numberOf(await readOne(page, "F5"))).toBeLessThan(before - 500); // the planer's 550 less its leaks
    // by hand: 400 cfm in 6 in (0.19635 ft2) are 2037 fpm, and two gates' leaks add a little, so the north main settles now
    expect(await readOne(page, "A13")).toMatch(/^settles: 2[0-2]\d\d fpm; /);
    await openSheet("Budget");
    expect(await readOne(page, "F4")).toBe("1,200"); // 1750 less the planer's 550
  });

  test("a wrong row is told beside it, no total stands without it, and undo brings all back", async () => {
    const { page } = local;
    await openSheet("Runs");
    const sound = await read(page, "A9:A17");
    await typeInto(page, "C12", "nowhere");
    expect(await readOne(page, "A12")).toMatch(/; waiting for nowhere, which no row has/);
    expect(await readOne(page, "A9")).toBe(sound[0]![0]);
    await openSheet("Budget");
    expect(await readOne(page, "C3")).toMatch(/^Look: Runs row 12, router table: waiting for nowhere/);
    expect(await readOne(page, "C15")).toBe("#N/A");
    await lineSays(page, /C15 shows #N\/A: waits for run "router table" \(row 5\)/);
    // no total stands there with a 0 that means "unknown"
    expect([...(await read(page, "F4:F7")).flat(), ...(await read(page, "K4:K7")).flat()]).toEqual(
      Array.from({ length: 8 }, () => "see C3"),
    );
    await page.keyboard.press("Control+Z");
    await openSheet("Runs");
    expect(await read(page, "A9:A17")).toEqual(sound);
    expect(await readOne(page, "C12")).toBe("south main");
  });

  test("a heading is explained in the line under the grid, and so is each cell to be filled, while one types, with what Tab takes", async () => {
    const { page } = local;
    await openSheet("Runs");
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
    await page.keyboard.press("d");
    await page.waitForFunction(() => document.activeElement?.textContent === "d"); // the keys go to the cell now
    await page.keyboard.type("rum");
    await lineSays(page, /^H18: Tab takes "drum sander port"/);
    await page.keyboard.press("Tab");
    await page.keyboard.type("gate; elbow 5"); // the next cell, and the second fitting in it
    await lineSays(page, /^I18: Tab takes "gate; elbow 5-piece/);
    await page.keyboard.press("Tab");
    // keys that come before the grid has drawn the word and the caret behind it, faster than any hand, would be typed elsewhere
    await page.waitForFunction(() => {
      const [cell, { focusNode, focusOffset }] = [document.activeElement!, document.getSelection()!];
      if (cell.textContent !== "gate; elbow 5-piece" || focusNode === null) return false;
      const before = document.createRange();
      before.selectNodeContents(cell);
      before.setEnd(focusNode, focusOffset);
      return before.toString() === cell.textContent;
    });
    await page.keyboard.type(" 1.5");
    await page.keyboard.press("Enter");
    expect((await read(page, "H18:I18"))[0]).toEqual(["drum sander port", "gate; elbow 5-piece 1.5"]);
  });
});
