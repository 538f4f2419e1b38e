import { readFileSync } from "node:fs";
import type { BrowserContextOptions, Page } from "playwright-core";
import type { Calculated } from "../../src/sheets/calculated";
import { bookOf } from "../support/books";
import { faultyBook } from "../support/faultyBook";
import { fakeHost, type FakeAnswers } from "./fakeHost";
import { axeSource, expectNoFaults } from "./axe";
import { button, hasFocus, says, servedPane, tab, view } from "./panePage";

// What the real sheet beside the pane seldom or never does (refuse, fail, be slow, be empty), and the pane alone. The
// actions themselves are proved with the real sheet, in paneBeside.test.ts.

const site = servedPane();

const beside = (book: Calculated, answers: FakeAnswers = {}, options: BrowserContextOptions = {}) =>
  site.open(options, "pane.html", (page) => page.addInitScript(fakeHost(book, answers)));
const asked = (page: Page): Promise<unknown[][]> =>
  page.evaluate(() => (window as unknown as { asked: unknown[][] }).asked);

async function openElbow(page: Page): Promise<void> {
  await tab(page, "Tables").click();
  await page.getByRole("combobox", { name: "Table" }).selectOption("fittings");
  await page.getByRole("searchbox", { name: "Search", exact: true }).fill("4-piece 1.5");
  await page.locator("[data-row]:visible").first().click();
}

describe("Tables", () => {
  test("alone it says that there is no sheet", async () => {
    const { page } = await site.open();
    await openElbow(page);
    await button(page, "Insert K at 90 degrees 0.27").click();
    await says(page, "No sheet is open beside this pane.");
  });
});

describe("Functions", () => {
  async function openForm(page: Page, name: RegExp): Promise<void> {
    await tab(page, "Functions").click();
    await button(page, name).click();
    await button(page, "Insert here …").click();
  }

  test("a wrong value shows the function's own sentence, and the units of the fields follow the choice", async () => {
    const { page } = await beside(faultyBook);
    await openForm(page, /^AREA ?Cross/);
    await page.getByRole("textbox", { name: "diameter" }).fill("-4");
    await says(page, "diameter must be above 0 in; got -4");
    await page.getByRole("combobox", { name: "units" }).selectOption("SI");
    await says(page, "diameter must be above 0 mm; got -4");
    await button(page, "Take what is selected: Sheet1!B4").click();
    expect(await page.getByRole("textbox", { name: "diameter" }).inputValue()).toBe("Sheet1!B4");
  });

  test("reads the book again when a cell has changed, and not when another one is selected", async () => {
    const { page } = await site.open({}, "pane.html", async (fresh) => {
      await fresh.clock.install();
      await fresh.addInitScript(fakeHost(faultyBook));
    });
    const readingsAfter = async (what: string): Promise<number> => {
      await page.evaluate((told) => (window as unknown as { tellAll: (of: string) => void }).tellAll(told), what);
      await page.clock.runFor(2000);
      return page.evaluate(() => (window as unknown as { readings: { count: number } }).readings.count);
    };
    await page.clock.runFor(2000);
    await openForm(page, /^AREA ?Cross/);
    const before = await readingsAfter("selection"); // whatever was under way when the form opened is read by now
    expect(before).toBeGreaterThan(0);
    expect(await readingsAfter("selection")).toBe(before);
    expect(await readingsAfter("cells")).toBeGreaterThan(before);
  });

  test("alone it computes, copies the formula, and says that there is no sheet to write into", async () => {
    const { page } = await site.open({ permissions: ["clipboard-read", "clipboard-write"] });
    await openForm(page, /^AREA ?Cross/);
    await page.getByRole("textbox", { name: "diameter" }).fill("4");
    await says(page, "Gives 0.08727 ft²");
    await button(page, "Copy the formula =DUCT.AREA(4)").click();
    await says(page, "Copied =DUCT.AREA(4).");
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe("=DUCT.AREA(4)");
    await button(page, "Insert the formula =DUCT.AREA(4)").click();
    await says(page, "No sheet is open beside this pane.");
  });
});

describe("Build", () => {
  test("shows how far it is, and can be cancelled", async () => {
    const { page } = await beside(faultyBook, { adds: "slowly" });
    await tab(page, "Build").click();
    await button(page, "Add 7 sheets").click();
    await page.getByRole("progressbar", { name: "Adding sheets" }).waitFor();
    await says(page, /Writing the sheets \(\d+ of 1000\)/);
    await button(page, "Cancel").click();
    await says(page, "Cancelled: nothing was added.");
    expect(await page.getByRole("progressbar").count()).toBe(0);
  });

  test.each<[FakeAnswers["adds"] & string, string]>([
    ["fails", "It did not work: the workbook is protected."],
    ["refused", "This book was never a club copy."],
  ])("where the sheet %s, it says why", async (adds, sentence) => {
    const { page } = await beside(faultyBook, { adds });
    await tab(page, "Build").click();
    await button(page, "Add 7 sheets").click();
    await says(page, sentence);
  });

  test("without a sheet chosen nothing is asked", async () => {
    const { page } = await beside(faultyBook);
    await tab(page, "Build").click();
    const chosen = page.getByRole("checkbox", { checked: true });
    for (let left = await chosen.count(); left > 0; left--) await chosen.first().click();
    await button(page, "Add 0 sheets").click();
    await says(page, "Choose at least one sheet.");
    expect(await asked(page)).toEqual([]);
  });
});

describe("Check", () => {
  test("of an empty book it says that there is nothing", async () => {
    const { page } = await beside(bookOf({ Sheet1: { rows: [] } }));
    await tab(page, "Check").click();
    await view(page, "Check").getByRole("button", { name: "Check the open book" }).click();
    await page.getByText("There is no table of runs in this book").waitFor();
  });

  test("alone it says that there is no sheet", async () => {
    const { page } = await site.open();
    await tab(page, "Check").click();
    await view(page, "Check").getByRole("button", { name: "Check the open book" }).click();
    await says(page, "No sheet is open beside this pane.");
  });
});

describe("Share", () => {
  test("alone each says that there is no sheet", async () => {
    const { page } = await site.open();
    await tab(page, "Share").click();
    await button(page, "Repair #NAME?").click();
    await says(page, "No sheet is open beside this pane.");
  });
});

describe("a copy that the sheet was asked to open", () => {
  test.each([
    ["asked", "If none appeared"],
    ["refused", "It did not open as a new workbook. Excel refused: there was an internal error."],
  ] as const)("is offered as a file, too (%s)", async (opens, words) => {
    const { page } = await beside(faultyBook, { opens });
    await tab(page, "Share").click();
    expect(await page.getByText("Save club-copy.xlsx").count()).toBe(0);
    await button(page, "Make a club copy").click();
    await says(page, words);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("link", { name: "Save club-copy.xlsx" }).click(),
    ]);
    expect(download.suggestedFilename()).toBe("club-copy.xlsx");
    expect([...readFileSync(await download.path())]).toEqual([80, 75, 3, 4]); // what the fake sheet handed over
  });
});

describe("Start", () => {
  test("one button shows the example, or says why not, or how to open it", async () => {
    const open = await beside(faultyBook);
    await button(open.page, "Show me an example").click();
    await says(open.page, "The example is open. Its runs stand on the sheet Runs");
    expect(await asked(open.page)).toEqual([
      ["openExample", "IP"],
      ["goTo", "Runs", "D9"],
    ]);
    const kept = await beside(faultyBook, { adds: "refused" });
    await button(kept.page, "Show me an example").click();
    await says(kept.page, "You kept the budget that is open.");
    expect(await asked(kept.page)).toEqual([["openExample", "IP"]]);
    const alone = await site.open();
    await button(alone.page, "Show me an example").click();
    await says(alone.page, "type npm start");
  });

  test.each(["Functions", "Build", "Check", "Share"])("from %s all cautions are one click away", async (name) => {
    const { page } = await site.open();
    await tab(page, name).click();
    await view(page, name).getByRole("button", { name: "All cautions" }).click();
    expect(await hasFocus(view(page, "Cautions"))).toBe(true);
  });
});

test("in light, dark and forced colours, at 320 px, after every action: axe finds nothing and nothing scrolls sideways", async () => {
  const { page } = await beside(faultyBook, { filled: true });
  await page.evaluate(axeSource);
  const acts: Record<string, () => Promise<void>> = {
    "a question about a filled cell": async () => {
      await openElbow(page);
      await button(page, "Insert K at 90 degrees 0.27").click();
      await button(page, "Leave it").waitFor();
    },
    "a form with its result": async () => {
      await tab(page, "Functions").click();
      await button(page, /^AREA ?Cross/).click();
      await button(page, "Insert here …").click();
      await page.getByRole("textbox", { name: "diameter" }).fill("4");
      await says(page, "Gives 0.08727 ft²");
    },
    "sheets that were added": async () => {
      await tab(page, "Build").click();
      await button(page, "Add 7 sheets").click();
      await says(page, "Added 7 sheets");
    },
    "findings and pictures": async () => {
      await tab(page, "Check").click();
      await view(page, "Check").getByRole("button", { name: "Check the open book" }).click();
      await page.locator("canvas").waitFor();
      for (const one of await page.getByText("The same as a table").locator("visible=true").all()) await one.click();
    },
    "a copy that was made": async () => {
      await tab(page, "Share").click();
      await button(page, "Make a club copy").click();
      await says(page, "Made Budget");
    },
  };
  for (const [state, act] of Object.entries(acts)) {
    await act();
    await expectNoFaults(page, state);
  }
});
