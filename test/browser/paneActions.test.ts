import { readFileSync } from "node:fs";
import type { BrowserContextOptions, Page } from "playwright-core";
import type { Calculated } from "../../src/sheets/calculated";
import { bookOf, runsWith, solveHeader } from "../support/books";
import { faultyBook } from "../support/faultyBook";
import { fakeHost, type FakeAnswers } from "./fakeHost";
import { hasFocus, servedPane, settle, tab, view } from "./panePage";

// Every action of the pane, against a fake sheet that writes down what it is asked, and alone.

jest.setTimeout(30_000); // a browser starts for each test

const site = servedPane();
const axeSource = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

const beside = (book: Calculated, answers: FakeAnswers = {}, options: BrowserContextOptions = {}) =>
  site.open(options, "pane.html", (page) => page.addInitScript(fakeHost(book, answers)));
const asked = (page: Page): Promise<unknown[][]> =>
  page.evaluate(() => (window as unknown as { asked: unknown[][] }).asked);
const button = (page: Page, name: string | RegExp) => page.getByRole("button", { name });
const says = (page: Page, words: string | RegExp) =>
  page.getByRole("status").filter({ hasText: words }).first().waitFor();

async function openElbow(page: Page): Promise<void> {
  await tab(page, "Tables").click();
  await page.getByRole("combobox", { name: "Table" }).selectOption("fittings");
  await page.getByRole("searchbox", { name: "Search", exact: true }).fill("4-piece 1.5");
  await page.locator("[data-row]:visible").first().click();
}

describe("Tables", () => {
  const formula = '=DUCT.LOSSCOEFFICIENT("elbow 4-piece",1.5)';

  test("a value and a ready formula go into the selected cell", async () => {
    const { page } = await beside(faultyBook);
    await openElbow(page);
    await button(page, "Insert K at 90 degrees 0.27").click();
    await says(page, "Written into B4.");
    await button(page, `Insert the formula ${formula}`).click();
    await page.waitForFunction(() => (window as unknown as { asked: unknown[] }).asked.length === 2);
    expect(await asked(page)).toEqual([
      ["insert", { value: 0.27 }, false],
      ["insert", { formula }, false],
    ]);
  });

  test("a filled cell is asked about first; leaving it writes nothing, and the focus comes back", async () => {
    const { page } = await beside(faultyBook, { filled: true });
    await openElbow(page);
    const insert = button(page, "Insert K at 90 degrees 0.27");
    await insert.click();
    await page.getByRole("group", { name: "B4 is filled" }).waitFor();
    expect(await hasFocus(button(page, "Leave it"))).toBe(true);
    await page.keyboard.press("Enter");
    await says(page, "B4 was left as it is.");
    expect(await hasFocus(insert)).toBe(true);
    expect(await asked(page)).toEqual([["insert", { value: 0.27 }, false]]);

    await insert.click();
    await button(page, "Write over B4").click();
    await says(page, "Written into B4.");
    expect((await asked(page)).at(-1)).toEqual(["insert", { value: 0.27 }, true]);
  });

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

  // 350 / 0.0872665 ft² = 4010.7 fpm
  test("the form shows the result before it writes the formula", async () => {
    const { page, complaints } = await beside(faultyBook);
    await openForm(page, /^VELOCITY ?Mean/);
    await says(page, "once airflow is given");
    await page.getByRole("textbox", { name: "airflow" }).fill("350");
    await page.getByRole("textbox", { name: "diameter" }).fill("4");
    await says(page, "Gives 4011 fpm");
    await button(page, "Insert the formula =DUCT.VELOCITY(350,4)").click();
    await says(page, "Written into B4.");
    expect(await asked(page)).toEqual([["insert", { formula: "=DUCT.VELOCITY(350,4)" }, false]]);
    expect(complaints).toEqual([]);
  });

  test("a wrong value shows the function's own sentence, and the units of the fields follow the choice", async () => {
    const { page } = await beside(faultyBook);
    await openForm(page, /^AREA ?Cross/);
    await page.getByRole("textbox", { name: "diameter" }).fill("-4");
    await says(page, "diameter must be above 0 in; got -4");
    await page.getByRole("combobox", { name: "units" }).selectOption("SI");
    await says(page, "diameter must be above 0 mm; got -4");
  });

  test("cells of the open book are read, and its runs and curve are offered", async () => {
    const { page } = await beside(faultyBook);
    await openForm(page, /^FANPRESSURE/);
    await button(page, "Take Fan!A8:B13").click();
    await page.getByRole("textbox", { name: "airflow" }).fill("800");
    await says(page, "Gives 10.5 in.w.g."); // a point of the curve itself
    await page.getByRole("textbox", { name: "airflow" }).fill("Fan!A10");
    await says(page, "Gives 10.5 in.w.g.");
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
  test("adds the chosen sheets in the chosen units and says which", async () => {
    const { page } = await beside(faultyBook);
    await tab(page, "Build").click();
    await page.getByRole("radio", { name: /^SI/ }).check();
    await page.getByRole("radio", { name: /example/ }).check();
    await page.getByRole("checkbox", { name: /^About/ }).uncheck();
    await page.getByRole("checkbox", { name: /^Leaks/ }).check();
    await button(page, "Add 7 sheets").click();
    await says(page, "Added 7 sheets: start, runs, fan, budget, flow, leaks and cautions.");
    const order = {
      units: "SI",
      sheets: ["start", "runs", "fan", "budget", "flow", "leaks", "cautions"],
      contents: "example",
    };
    expect(await asked(page)).toEqual([["addSheets", order]]);
  });

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
  const check = async (page: Page): Promise<void> => {
    await tab(page, "Check").click();
    await view(page, "Check").getByRole("button", { name: "Check the open book" }).click();
    await says(page, /to look at|Nothing found/);
  };

  test("lists one of each fault, leads to its cell, and draws the fan and the ducts", async () => {
    const { page, complaints } = await beside(faultyBook);
    await check(page);
    const findings = page.getByRole("list", { name: "Findings" });
    const rules = ["#NAME?", "#VALUE!", "Dust settles", "The fan can't give it", "Main smaller than its branch"];
    for (const rule of [...rules, "Area in the meter", "Gate turned round", "Tight elbow", "Long hose"])
      expect(await findings.getByText(rule, { exact: true }).count()).toBeGreaterThan(0);
    await button(page, "Go to Runs, L10").click();
    await says(page, "Selected L10 on the sheet Runs.");
    expect(await asked(page)).toEqual([["goTo", "Runs", "L10"]]);
    await page.locator("canvas").waitFor();
    expect(await page.getByRole("img", { name: /^Tree of the ducts/ }).isVisible()).toBe(true);
    await page.getByText("The same as a table").first().click();
    await page.getByRole("region", { name: "Fan and ducts in numbers" }).getByText("works here").waitFor();
    expect(complaints).toEqual([]);
  });

  test("says that it is old once something has changed", async () => {
    const { page } = await beside(faultyBook);
    await check(page);
    await page.evaluate(() => (window as unknown as { change: () => void }).change());
    await page.getByText("check again after a change").waitFor();
  });

  test("of an empty book it says that there is nothing", async () => {
    const { page } = await beside(bookOf({ Sheet1: { rows: [] } }));
    await check(page);
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
  test.each([
    ["Make a club copy", "412 cells recalculate there; 1 stays as now.", ["shareCopy", "formulas"]],
    ["Make a copy of values", "Made Budget for the club.xlsx.", ["shareCopy", "values"]],
    ["Repair #NAME?", "Entered 3 formulas again.", ["repair"]],
    ["Revive this copy", "Added 2 sheets: Runs and Budget.", ["revive", { sheets: ["Runs", "Budget"] }]],
  ])("%s says: %s", async (name, sentence, call) => {
    const { page } = await beside(faultyBook);
    await tab(page, "Share").click();
    await button(page, name).click();
    await says(page, sentence);
    expect(await asked(page)).toEqual([call]);
  });

  test("alone each says that there is no sheet", async () => {
    const { page } = await site.open();
    await tab(page, "Share").click();
    await button(page, "Repair #NAME?").click();
    await says(page, "No sheet is open beside this pane.");
  });
});

describe("Start", () => {
  test("one button leads to the open budget, or adds the example, or says how to open it", async () => {
    const open = await beside(faultyBook);
    await button(open.page, "Show me an example").click();
    await says(open.page, "The runs of a budget stand on the sheet Runs");
    expect(await asked(open.page)).toEqual([["goTo", "Runs", "D9"]]);
    const empty = await beside(bookOf({ Sheet1: { rows: [] } }));
    await button(empty.page, "Show me an example").click();
    await says(empty.page, "Added 12 sheets");
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

const NASTY = [
  "<img src=x onerror=window.broken=1>",
  '"><script>window.broken=1</script>',
  "<svg/onload=window.broken=1>",
  "javascript:window.broken=1",
  '=HYPERLINK("http://127.0.0.1:9/","x")',
  "{{constructor.constructor('window.broken=1')()}}",
  "\u202e<b>saw</b>\u0000",
  "@SUM(1)|cmd!A0",
];

test.each(NASTY)(
  "the cell text %j stays text in Check and in the form: nothing runs, nothing is asked for",
  async (text) => {
    const rows = runsWith("saw", "Run", text).map((row) =>
      row.map((cell) => (cell === "elbow 2" ? `${text}; elbow 1` : cell)),
    );
    const answer = [
      solveHeader,
      [text, 100, 1000, 1, 50, 1, "open", `dust settles; ${text}`],
      ["Fan", 100, "", 3, 0, "", "", ""],
    ];
    const refused = [[{ error: "#VALUE!", message: text } as const]];
    const book = bookOf({
      Runs: { rows: rows.map((row) => row.map((cell) => (cell === 3 ? 30 : cell))) },
      "A <i>sheet</i>": { rows: answer },
      One: { rows: refused, formulas: { A1: `=DUCT.AREA("${text}")` } },
    });
    const { page, requested, complaints } = await beside(book);
    const images = await page.locator("img").count();
    await tab(page, "Check").click();
    await view(page, "Check").getByRole("button", { name: "Check the open book" }).click();
    await says(page, /to look at/);
    const shown = await page.getByRole("list", { name: "Findings" }).innerText();
    expect(shown.replaceAll("\u0000", "")).toContain(text.replaceAll("\u0000", "").trim().slice(0, 20));
    await tab(page, "Functions").click();
    await button(page, /^CAUTIONS/).click();
    await button(page, "Insert here …").click();
    await page.getByRole("textbox", { name: "topic" }).fill(text);
    await says(page, /#VALUE!|Gives|Without|Name the sheet/);
    expect(await page.locator("img").count()).toBe(images);
    expect(await page.locator("main script, main b, main i, main a, main iframe").count()).toBe(0);
    expect(await page.evaluate(() => "broken" in window)).toBe(false);
    expect(requested.filter((url) => new URL(url).origin !== site.address())).toEqual([]);
    expect(complaints.filter((line) => !line.includes("Failed to parse"))).toEqual([]);
  },
  30_000,
);

interface Axe {
  run(): Promise<Record<"violations" | "passes", { id: string }[]>>;
}

test.each<[string, BrowserContextOptions]>([
  ["light", { colorScheme: "light" }],
  ["dark", { colorScheme: "dark" }],
  ["forced colours", { forcedColors: "active" }],
])(
  "in %s, at 320 px, after every action: axe finds nothing and nothing scrolls sideways",
  async (_, options) => {
    const { page } = await beside(faultyBook, { filled: true }, options);
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
        for (const one of await page.getByText("The same as a table").all()) await one.click();
      },
      "a copy that was made": async () => {
        await tab(page, "Share").click();
        await button(page, "Make a club copy").click();
        await says(page, "Made Budget");
      },
    };
    for (const [state, act] of Object.entries(acts)) {
      await act();
      await settle(page);
      const found = await page.evaluate(async () => {
        const { violations, passes } = await (window as unknown as { axe: Axe }).axe.run();
        const { scrollWidth, clientWidth } = document.documentElement;
        return {
          violations: violations.map(({ id }) => id),
          looked: passes.some(({ id }) => id === "color-contrast"),
          sideways: scrollWidth > clientWidth,
        };
      });
      expect({ state, ...found }).toEqual({ state, violations: [], looked: true, sideways: false });
    }
  },
  60_000,
);

test("by keyboard alone: choose a function, fill its form, write it, and go on to check", async () => {
  const { page } = await beside(faultyBook);
  await tab(page, "Start").focus();
  for (const key of ["ArrowRight", "ArrowRight"]) await page.keyboard.press(key);
  await page.getByText("39 functions").waitFor();
  expect(await hasFocus(tab(page, "Functions"))).toBe(true);
  for (const key of ["Tab", "Tab"]) await page.keyboard.press(key);
  expect(await hasFocus(page.getByRole("searchbox", { name: "Search functions" }))).toBe(true);
  await page.keyboard.type("cross-section");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
  await page.getByText("gives 0.08727 ft²").waitFor();
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  expect(await hasFocus(page.getByRole("textbox", { name: "diameter" }))).toBe(true);
  await page.keyboard.type("5");
  for (let i = 0; i < 4; i++) await page.keyboard.press("Tab"); // height, units, Copy, Insert
  await says(page, "Gives 0.1364 ft²"); // π/4 × (5/12)²
  await page.keyboard.press("Enter");
  await says(page, "Written into B4.");
  expect(await asked(page)).toEqual([["insert", { formula: "=DUCT.AREA(5)" }, false]]);
});
