import { numberOf } from "../support/numberOf";
import { goTo, lineSays, type LocalPage, read, readOne, localSite, typeInto } from "./localPage";

const site = localSite();
let local: LocalPage;

beforeAll(async () => {
  local = await site.open();
});

describe("an empty sheet", () => {
  beforeEach(() => local.page.keyboard.press("Shift+F11")); // a new sheet for each test

  async function airflowsAndDiameters(): Promise<void> {
    const { page } = local;
    for (const [at, text] of Object.entries({
      A2: "300",
      A3: "400",
      A4: "500",
      A5: "600",
      A6: "700",
      B1: "4",
      C1: "5",
      D1: "6",
    })) {
      await typeInto(page, at, text);
    }
  }

  test("a column with a row makes a grid of 5 by 3 numbers: more air costs more, a wider duct less", async () => {
    const { page } = local;
    await airflowsAndDiameters();
    await typeInto(page, "B2", "=DUCT.FRICTION(A2:A6, B1:D1)");
    const grid = (await read(page, "B2:D6")).map((row) => row.map(numberOf));
    expect(grid.map((row) => row.length)).toEqual([3, 3, 3, 3, 3]);
    grid.forEach((row, down) =>
      row.forEach((value, across) => {
        expect(value).toBeGreaterThan(0);
        if (down > 0) expect(value).toBeGreaterThan(grid[down - 1]![across]!);
        if (across > 0) expect(value).toBeLessThan(row[across - 1]!);
      }),
    );
    expect((await read(page, "E2:E7")).flat().join("")).toBe("");
    expect((await read(page, "A7:D7")).flat().join("")).toBe("");
  });

  test("a filled cell in the way of a spill is kept, and the formula says #SPILL!", async () => {
    const { page } = local;
    await airflowsAndDiameters();
    await typeInto(page, "C4", "mine");
    await typeInto(page, "B2", "=DUCT.FRICTION(A2:A6, B1:D1)");
    expect(await readOne(page, "B2")).toBe("#SPILL!");
    await lineSays(page, /^B2 shows #SPILL!: the answer needs several cells, and one of them is filled \(C4\)$/);
    expect(await readOne(page, "C4")).toBe("mine");
  });

  test("typing =DUCT. lists the functions with a description, and choosing one explains each argument", async () => {
    const { page } = local;
    await page.keyboard.type("=DUCT.");
    const list = page.locator(".o-autocomplete-dropdown");
    await list.getByText("DUCT.AREA", { exact: true }).waitFor(); // at "=D" it lists others
    expect(await list.innerText()).toMatch(/DUCT\.AREA\s+Cross-section of a round duct.*ft² \(SI: m²\)/);
    await page.keyboard.type("VELOCITYP");
    await page.locator(".o-autocomplete-value-focus", { hasText: "DUCT.VELOCITYPRESSURE" }).waitFor();
    await page.keyboard.press("Tab");
    await lineSays(page, /^DUCT\.VELOCITYPRESSURE, velocity: .*fpm \(SI: m\/s\)/);
    await page.keyboard.type("4000,");
    await lineSays(page, /^DUCT\.VELOCITYPRESSURE, density \(optional\): .*lb\/ft³/);
    await page.keyboard.press("Backspace");
    await page.keyboard.type(")");
    await page.keyboard.press("Enter");
    // VP = (V/4005)^2 in.w.g., the trade's rounded form (4006.5 with this program's inch of water), so near 1.00
    expect(Math.abs(numberOf(await readOne(page, "A1")) - 1)).toBeLessThan(0.005);
  });

  test("the line says how digits are read that can be read in two ways, and that a decimal comma makes no number", async () => {
    const { page } = local;
    await goTo(page, "G5");
    await page.keyboard.type("1.200");
    await lineSays(page, /^G5: 1\.200 counts as 1\.2, not as 1200\. /);
    await page.keyboard.press("Escape");
    await page.keyboard.type("0,125");
    await lineSays(page, /^G5: 0,125 is no number here: type 0\.125\. /);
    await page.keyboard.press("Escape");
  });

  test("a wrong value shows #VALUE!, and the sentence is read without a mouse", async () => {
    const { page } = local;
    await typeInto(page, "B2", "=DUCT.AREA(-4)");
    expect(await readOne(page, "B2")).toBe("#VALUE!");
    expect(await lineSays(page, /B2/)).toBe("B2 shows #VALUE!: diameter must be above 0 in; got -4");
    await typeInto(page, "B3", '=IFERROR(B2,"caught")');
    expect(await readOne(page, "B3")).toBe("caught");
  });

  test("an answer that outgrows the sheet says so, and an error tells the cell it comes from", async () => {
    const { page } = local;
    await typeInto(page, "A99", '=DUCT.REFERENCE(IF(B1="","gates",B1))');
    expect(await readOne(page, "A99")).toBe("key");
    await typeInto(page, "B1", "fittings");
    await goTo(page, "A99");
    await lineSays(page, /^A99 shows #SPILL!: the answer needs more cells than there are/);
    await typeInto(page, "C3", "=DUCT.AREA(0)");
    await typeInto(page, "C4", "=C3*2");
    await goTo(page, "C4");
    await lineSays(page, /^C4 shows #VALUE!: diameter must be above 0 in; got 0 \(C3\)$/);
  });

  test("one wrong row of a range shows its sentence, the others compute", async () => {
    const { page } = local;
    await typeInto(page, "A1", "6");
    await typeInto(page, "A2", "-4");
    await typeInto(page, "A4", "=1/0");
    await typeInto(page, "B1", "=DUCT.AREA(A1:A4)");
    const [good, wrong, blank, error] = (await read(page, "B1:B4")).flat();
    expect(numberOf(good)).toBeCloseTo(0.1963, 2); // by hand: π/4 (6/12)²
    expect([wrong, blank, error]).toEqual(["#VALUE!", "", "#VALUE!"]);
    await goTo(page, "B2");
    await lineSays(page, /^B2 shows #VALUE!: diameter must be above 0 in; got -4/);
    await goTo(page, "B4");
    await lineSays(page, /^B4 shows #VALUE!: diameter must be .*#DIV\/0!/);
  });

  test("the units of a cell are taken from the named cell", async () => {
    const { page } = local;
    await typeInto(page, "A1", '=DUCT.VELOCITY(360,100,,"SI")');
    // by hand: 360 m3/h is 0.1 m3/s; through 0.1 m that is 0.1/(pi/4 * 0.01) = 12.732 m/s
    expect(Math.abs(numberOf(await readOne(page, "A1")) - 12.732)).toBeLessThanOrEqual(0.0051);
    await typeInto(page, "A2", "=DUCT.VELOCITY(350,4,,units)");
    await typeInto(page, "A3", "=DUCT.VELOCITY(350,4)");
    expect(await readOne(page, "A2")).toBe(await readOne(page, "A3"));
  });

  test("undo and redo follow a change through to its result", async () => {
    const { page } = local;
    await typeInto(page, "A1", "4");
    await typeInto(page, "B1", "=DUCT.AREA(A1)");
    const first = await readOne(page, "B1");
    await typeInto(page, "A1", "8");
    const second = numberOf(await readOne(page, "B1"));
    expect(Math.abs(second / numberOf(first) - 4)).toBeLessThan(0.25); // twice the diameter is four times the area; shown to 0.01
    await page.keyboard.press("Control+Z");
    expect(await readOne(page, "B1")).toBe(first);
    await page.keyboard.press("Control+Y");
    expect(numberOf(await readOne(page, "B1"))).toBe(second);
  });
});
