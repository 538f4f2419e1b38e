import {
  type BuiltSite,
  goTo,
  lineSays,
  type LocalPage,
  numberOf,
  read,
  readOne,
  startSite,
  typeHere,
  typeInto,
  walkTo,
} from "./localPage";

jest.setTimeout(30_000);

let site: BuiltSite;
let local: LocalPage;

beforeAll(async () => {
  site = await startSite();
});
afterAll(() => site.stop());

beforeEach(async () => {
  local = await site.open();
});
afterEach(() => local.close());

/** The rows of the budget's answer by the run's name, each by its column's letter. */
async function budget(): Promise<Record<string, Record<string, string>>> {
  const rows = await read(local.page, "B27:N36");
  return Object.fromEntries(
    rows.map((row) => [row[0]!, Object.fromEntries(row.map((cell, index) => ["BCDEFGHIJKLMN"[index]!, cell]))]),
  );
}

describe("the demo", () => {
  test("opens with nothing to complain of and nothing asked of another machine", async () => {
    expect(await local.page.title()).toBe("Duct Ledger");
    await local.page.frameLocator("#pane-frame").locator("body").waitFor();
    await local.page.waitForLoadState("networkidle");
    expect(local.complaints).toEqual([]);
    expect(local.outside).toEqual([]);
  });

  test("says in its first lines that it is invented, and what to try", async () => {
    const [first, second] = await read(local.page, "C1:C2");
    expect(first![0]).toMatch(/^Invented for trying out/);
    expect(second![0]).toMatch(/^Try it: type another airflow/);
  });

  test("every cell of its four sheets has an answer, but for the one that shows a wrong value", async () => {
    const { page } = local;
    const troubles = (cells: string[][]): string[] =>
      cells.flat().filter((cell) => cell.startsWith("#") || cell.startsWith("see "));
    expect(troubles(await read(page, "A1:S40"))).toEqual([]);
    await page.getByText("Flow", { exact: true }).click();
    expect(troubles(await read(page, "A1:P112"))).toEqual([]);
    await page.getByText("Single cells", { exact: true }).click();
    expect((await read(page, "A1:F24")).flat().filter((cell) => cell.startsWith("#"))).toEqual(["#VALUE!"]);
    await page.getByText("Cautions and tables", { exact: true }).click();
    expect((await read(page, "A1:F90")).flat().filter((cell) => cell.startsWith("#"))).toEqual([]);
  });

  test("a drum sander that draws 400 cfm through 5 in settles; 600 cfm does not", async () => {
    // By hand: 5 in is pi/4 (5/12)^2 = 0.136354 ft2. 400/0.136354 = 2933.5 fpm, under 3937; 600/0.136354 = 4400.3 fpm, over.
    await goTo(local.page, "R13"); // without its gate's small leak
    await local.page.keyboard.press("Delete");
    expect(await readOne(local.page, "A13")).toBe("settles: 2934 fpm");
    expect(await readOne(local.page, "G8")).toBe("1");
    await walkTo(local.page, "D13");
    await typeHere(local.page, "600");
    expect(await readOne(local.page, "A13")).toBe("ok: 4400 fpm");
    expect(await readOne(local.page, "G8")).toBe("0");
  });

  test("without leaks the fan's airflow is what the hoods ask for, follows a change to the last cfm, and adds up at each junction", async () => {
    const { page } = local;
    await goTo(page, "Q11:S22");
    await page.keyboard.press("Delete");
    const before = await read(page, "G5:G7");
    // 400 + 550 + 400 + 400 at the four hoods
    expect(before.map(([cell]) => cell)).toEqual(["1,750", "1,750", "0"]);
    const pressure = numberOf(await readOne(page, "J5"));

    await typeInto(page, "D13", "525");
    expect((await read(page, "G5:G7")).map(([cell]) => cell)).toEqual(["1,875", "1,875", "0"]);
    expect(numberOf(await readOne(page, "J5"))).toBeGreaterThan(pressure);

    const rows = await budget();
    const airflow = (run: string): number => numberOf(rows[run]!.C);
    expect(airflow("north main")).toBe(airflow("band saw") + airflow("planer"));
    expect(airflow("south main")).toBe(airflow("drum sander") + airflow("router table"));
    expect(airflow("trunk")).toBe(airflow("north main") + airflow("south main"));
    expect(airflow("separator")).toBe(airflow("trunk"));
    expect(airflow("filter")).toBe(airflow("trunk"));
    expect(airflow("Fan")).toBe(1875);
  });

  test("the totals are read from the budget's last row", async () => {
    const rows = await budget();
    const [left, right] = [await read(local.page, "G5:G8"), await read(local.page, "J5:J8")];
    expect(left[1]![0]).toBe(rows.Fan!.C);
    expect(right[0]![0]).toBe(rows.Fan!.K);
    expect(right[1]![0]).toBe(rows.Fan!.J);
    // what the fan is asked for is the suction before it and the losses after it; each figure is rounded to 0.01
    expect(Math.abs(numberOf(rows.Fan!.K) - numberOf(rows.Fan!.J) - numberOf(rows.filter!.I))).toBeLessThanOrEqual(
      0.015001,
    );
    const resized = Object.values(rows).filter(({ N: note }) => note!.includes("resize"));
    expect(right[3]![0]).toBe(String(resized.length));
    expect(resized.length).toBeGreaterThan(0);
  });

  test("a shut gate is said beside its run and lowers what the fan moves", async () => {
    const { page } = local;
    const before = numberOf(await readOne(page, "G6"));
    await typeInto(page, "J12", "shut");
    expect(await readOne(page, "A12")).toBe("gate shut");
    expect(await readOne(page, "G5")).toBe("1,200"); // 1750 less the planer's 550
    expect(numberOf(await readOne(page, "G6"))).toBeLessThan(before - 500);
    // by hand: 400 cfm in 6 in (0.19635 ft2) are 2037 fpm, and two gates' leaks add a little, so the north main settles now
    expect(await readOne(page, "A15")).toMatch(/^settles: 2[0-2]\d\d fpm$/);
  });

  test("a wrong row is named where the answer would stand, the checks point there, and undo brings all back", async () => {
    const { page } = local;
    const sound = await read(page, "A11:A19");
    await typeInto(page, "C14", "nowhere");
    expect(await readOne(page, "B26")).toBe("#VALUE!");
    await lineSays(page, /B26 shows #VALUE!: To of run "router table" \(row 5\) must be/);
    expect(await readOne(page, "A11")).toBe("see B26");
    // no total stands there with a 0 that means "unknown"; what the hoods want is typed, so it stays
    expect((await read(page, "G5:G8")).flat()).toEqual(["1,750", "see B26", "see B26", "see B26"]);
    expect((await read(page, "J5:J8")).flat()).toEqual(["see B26", "see B26", "see B26", "see B26"]);
    await page.keyboard.press("Control+Z");
    expect(await read(page, "A11:A19")).toEqual(sound);
    expect(await readOne(page, "C14")).toBe("south main");
  });

  test("a selected heading is explained in the line under the grid", async () => {
    await goTo(local.page, "Q10");
    await lineSays(local.page, /^Q10: An open area in in²/);
    await goTo(local.page, "A1");
    await local.page.waitForFunction(() => document.getElementById("sheet-words")!.textContent === "");
  });
});
