import { goTo, lineSays, read, readOne, localSite, typeHere, typeInto } from "./localPage";

const site = localSite();
const local = site.openForAll();

const focusIsIn = (id: string): Promise<boolean> =>
  local.page.evaluate((part) => document.getElementById(part)!.contains(document.activeElement), id);

/** Goes on with Tab until the control of this name has the focus. */
async function tabTo(name: string): Promise<void> {
  const focused = (): Promise<string> => local.page.evaluate(() => document.activeElement?.textContent?.trim() ?? "");
  for (let steps = 0; steps < 9 && (await focused()) !== name; steps++) await local.page.keyboard.press("Tab");
  expect(await focused()).toBe(name);
}

describe("around the grid", () => {
  test("F6 goes from the grid to the pane, the top and back, and Shift+F6 the other way, also out of the pane's frame", async () => {
    const { page } = local;
    await page.frameLocator("#pane-frame").getByRole("tab").first().waitFor();
    await page.frame({ url: /pane\.html$/ })!.waitForLoadState("load"); // from then on its keys are heard
    expect(await focusIsIn("sheet")).toBe(true);
    for (const part of ["pane", "top", "sheet", "pane"]) {
      await page.keyboard.press("F6");
      expect(await focusIsIn(part)).toBe(true);
    }
    await page.keyboard.press("Shift+F6");
    expect(await focusIsIn("sheet")).toBe(true);
    await typeHere(page, "12");
    expect(await readOne(page, "A1")).toBe("12");
  });

  test("the pane can be hidden by keyboard, the grid takes its room, and F6 then leaves it out", async () => {
    const { page } = local;
    const width = (): Promise<number> =>
      page.locator("#sheet .o-grid").evaluate((grid) => grid.getBoundingClientRect().width);
    const before = await width();
    await page.keyboard.press("Shift+F6");
    await tabTo("Hide the pane");
    await page.keyboard.press("Enter");
    expect(await page.getByRole("button", { name: "Show the pane" }).getAttribute("aria-expanded")).toBe("false");
    await page.waitForFunction(
      (old) => document.querySelector("#sheet .o-grid")!.getBoundingClientRect().width >= old + 340,
      before,
    );
    await page.keyboard.press("F6");
    await page.keyboard.press("F6");
    expect(await focusIsIn("top")).toBe(true);
    await tabTo("Show the pane");
    await page.keyboard.press("Enter");
    await page.waitForFunction(
      (old) => document.querySelector("#sheet .o-grid")!.getBoundingClientRect().width === old,
      before,
    );
  });

  test("where this grid differs from Excel is one click away, and it does differ so", async () => {
    const { page } = local;
    await page.getByText("Differences from Excel").click();
    const list = page.locator("#differences");
    await list.getByText(/-2\^2 is -4 here and 4 in Excel/).waitFor(); // what it lists comes last of all
    await page.keyboard.press("Enter"); // the summary has the focus: closed again
    await list.waitFor({ state: "hidden" });
    await page.click(".o-add-sheet");
    const answers: Readonly<Record<string, string>> = {
      "=-2^2": "-4",
      "=(-2)^2": "4",
      "=LOG10(100)": "#BAD_EXPR",
      "=LOG(100)": "2",
      "=LET(x,1,x)": "#NAME?",
      "=AGGREGATE(9,6,B1:B2)": "#NAME?",
      '="a""b"': "#BAD_EXPR",
      '=1+"a"': "#ERROR",
    };
    await goTo(page, "A1");
    for (const code of Object.keys(answers)) await typeHere(page, code);
    expect((await read(page, `A1:A${Object.keys(answers).length}`)).flat()).toEqual(Object.values(answers));
  });

  test("what the grid wants to ask stands on the page, not in a dialog window", async () => {
    const { page } = local;
    await page.locator(".o-sheet", { hasText: "Single cells" }).click({ button: "right" });
    await page.getByText("Delete", { exact: true }).click();
    const notice = page.locator("#notice");
    await notice.waitFor();
    expect(await notice.innerText()).toMatch(/delete/i);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Yes");
    await notice.getByRole("button", { name: "No" }).click();
    await notice.waitFor({ state: "hidden" });
    expect(await page.locator(".o-sheet", { hasText: "Single cells" }).count()).toBe(1);
    expect(local.complaints).toEqual([]);
  });

  test("what is only said takes no key away: right after a paste that it tells of, Ctrl+Z takes that back", async () => {
    const { page } = local;
    await page.click(".o-add-sheet");
    await page.evaluate(() => navigator.clipboard.writeText("3,25\n4,125"));
    await goTo(page, "B2");
    await page.keyboard.press("Control+V");
    const notice = page.locator("#notice", { hasText: "4,125 is 4125 here" });
    await notice.waitFor();
    await page.keyboard.press("Control+Z");
    await notice.getByRole("button", { name: "Close" }).click();
    expect((await read(page, "B2:B3")).flat()).toEqual(["", ""]);
    expect(await page.evaluate(() => document.activeElement?.closest("#sheet") !== null)).toBe(true);
    expect(local.complaints).toEqual([]);
  });

  test("on a narrow screen the pane stands under the grid and nothing is wider than the page", async () => {
    const narrow = await site.open({ width: 400, height: 800 });
    const boxes = await narrow.page.evaluate(() => {
      const edge = (id: string): DOMRect => document.getElementById(id)!.getBoundingClientRect();
      const { scrollWidth, clientWidth } = document.documentElement;
      return {
        below: edge("pane").top - edge("sheet").bottom,
        sheetHeight: edge("sheet").height,
        tooWide: scrollWidth - clientWidth,
      };
    });
    expect(boxes.below).toBeGreaterThanOrEqual(0);
    expect(boxes.sheetHeight).toBeGreaterThan(300);
    expect(boxes.tooWide).toBeLessThanOrEqual(0);
    await narrow.close();
  });
});

describe("what the pane may ask of the sheet", () => {
  beforeEach(() => local.page.click(".o-add-sheet"));

  test("it learns the selection", async () => {
    const { page } = local;
    await goTo(page, "B2:C3");
    expect(await page.evaluate(() => window.ductLedgerHost!.selectionAddress())).toMatch(/^[A-Za-z0-9']+!B2:C3$/);
  });

  test("it writes into an empty cell, never over a filled one without being told to, nor over a spill", async () => {
    const { page } = local;
    await goTo(page, "B2");
    expect(await page.evaluate(() => window.ductLedgerHost!.insert({ formula: "=DUCT.AREA(A1:A3)" }))).toEqual({
      written: true,
      isBlocked: false,
      at: "B2",
    });
    await typeInto(page, "A2", "4");
    const filled = { written: false, at: expect.stringMatching(/^[A-Za-z0-9']+!B3$/), why: "filled" };
    await goTo(page, "B3"); // filled by the spill
    expect(await page.evaluate(() => window.ductLedgerHost!.insert({ value: 1 }))).toEqual(filled);
    await goTo(page, "A2");
    const refused = await page.evaluate(() => window.ductLedgerHost!.insert({ value: 5 }));
    expect(refused).toEqual({ ...filled, at: expect.stringMatching(/^[A-Za-z0-9']+!A2$/) });
    expect(await readOne(page, "A2")).toBe("4");
    await goTo(page, "B3"); // the user is elsewhere when the question is answered
    expect(
      await page.evaluate((at) => window.ductLedgerHost!.insert({ value: 5 }, at), (refused as { at: string }).at),
    ).toEqual({
      // prettier-ignore
      written: true,
      isBlocked: false,
      at: "A2",
    });
    expect(await readOne(page, "A2")).toBe("5");
  });

  test("text is neither a formula nor markup, whatever it begins with", async () => {
    const { page } = local;
    const texts = [
      "=1+1",
      "+1",
      "-1",
      "@SUM(A1)",
      "'quoted",
      "12",
      "1/2",
      "TRUE",
      '<img src=x onerror="document.title=1">',
    ];
    for (const [index, value] of texts.entries()) {
      await goTo(page, `A${index + 1}`);
      await page.evaluate((text) => window.ductLedgerHost!.insert({ value: text }), value);
    }
    await goTo(page, "B1");
    for (const index of texts.keys()) await typeHere(page, `=ISTEXT(A${index + 1})`);
    expect(await read(page, `A1:B${texts.length}`)).toEqual(texts.map((value) => [value, "TRUE"]));
    await typeInto(page, "C1", '=DUCT.AREA("<b>4</b>")');
    await goTo(page, "C1");
    expect(await lineSays(page, /^C1/)).toContain("<b>4</b>");
    expect(await page.locator("#sheet-words b").count()).toBe(0);
    expect(await page.title()).toBe("Duct Ledger");
    expect(local.complaints).toEqual([]);
  });
});
