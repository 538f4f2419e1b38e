import type { BrowserContextOptions, Locator, Page } from "playwright-core";
import { PATIENCE } from "../../src/taskpane/office";
import { views } from "../../src/taskpane/views/views";
import { axeSource, expectNoFaults } from "./axe";
import { allFunctions, button, hasFocus, servedPane, settle, tab, view } from "./panePage";

const OFFICE_JS = "https://appsforoffice.microsoft.com/**";

const site = servedPane();
const open = (options?: BrowserContextOptions, file?: string, prepare?: (page: Page) => Promise<unknown>) =>
  site.open(options, file, prepare);

const search = (page: Page): Locator => page.getByRole("searchbox", { name: "Search", exact: true });
const rows = (page: Page): Locator => page.getByRole("list", { name: "Rows" }).locator("button[aria-expanded]");
const outcome = (page: Page): Locator => view(page, "Tables").getByRole("status").first();

async function look(page: Page, table: string, words: string): Promise<void> {
  await tab(page, "Tables").click();
  await page.getByRole("combobox", { name: "Table" }).selectOption(table);
  await search(page).fill(words);
}

const ALL = "";

async function openRow(page: Page): Promise<void> {
  await look(page, "materials", "hose");
  await rows(page).first().click();
  await view(page, "Tables").getByText("where in it").waitFor();
}

/** What the pane can look like. */
const states: Record<string, (page: Page) => Promise<void>> = {
  start: (page) => tab(page, "Start").click(),
  tables: (page) => look(page, ALL, ""),
  "an open row": openRow,
  "rows of long texts": (page) => look(page, "hazards", ""),
  "nothing found": (page) => look(page, ALL, "no such thing at all"),
  functions: async (page) => {
    await tab(page, "Functions").click();
    await page.getByText(allFunctions()).waitFor();
  },
  "a function with its form": async (page) => {
    await page.getByRole("button", { name: /^SOLVE/ }).click();
    await page.getByText("gives 5 rows of 8 cells").waitFor();
    await page.getByRole("button", { name: "Insert here …" }).click();
  },
  build: (page) => tab(page, "Build").click(),
  check: (page) => tab(page, "Check").click(),
  share: (page) => tab(page, "Share").click(),
  cautions: (page) => tab(page, "Cautions").click(),
};

test("in light, dark and forced colours, at 320 px: axe finds nothing and nothing scrolls sideways, in any view", async () => {
  const { page, complaints } = await open();
  await page.evaluate(axeSource);
  for (const [state, reach] of Object.entries(states)) {
    await reach(page);
    await expectNoFaults(page, state);
  }
  expect(complaints).toEqual([]);
});

test("the two themes differ in their ground", async () => {
  const ground = async (scheme: "light" | "dark") => {
    const { page } = await open({ colorScheme: scheme });
    return view(page, "Start").evaluate(
      (node) => getComputedStyle(node.closest(".fui-FluentProvider")!).backgroundColor,
    );
  };
  expect(await ground("light")).toBe("rgb(255, 255, 255)");
  expect(await ground("dark")).toBe("rgb(41, 41, 41)");
});

/** Whether the focus on an element can be seen: the pixels around it change when the focus leaves. */
async function showsFocus(page: Page): Promise<boolean> {
  const element = page.locator("*:focus");
  await element.scrollIntoViewIfNeeded();
  await settle(page);
  const focused = await page.screenshot();
  const handle = await element.elementHandle();
  await handle.evaluate((node) => (node as HTMLElement).blur());
  await settle(page);
  const blurred = await page.screenshot();
  await handle.evaluate((node) => (node as HTMLElement).focus({ preventScroll: true }));
  return !focused.equals(blurred);
}

test("by keyboard alone: to the tables, search, walk to a row, open it, copy its value", async () => {
  const { page } = await open({ permissions: ["clipboard-read", "clipboard-write"] });
  const press = async (key: string): Promise<void> => {
    await page.keyboard.press(key);
    expect(await showsFocus(page)).toBe(true);
  };
  await press("Tab");
  expect(await hasFocus(tab(page, "Start"))).toBe(true);
  await press("ArrowRight");
  expect(await hasFocus(tab(page, "Tables"))).toBe(true);
  expect(await view(page, "Tables").isVisible()).toBe(true);
  await press("Tab");
  expect(await hasFocus(view(page, "Tables"))).toBe(true);
  await press("Tab");
  expect(await hasFocus(page.getByRole("combobox", { name: "Table" }))).toBe(true);
  await press("Tab");
  expect(await hasFocus(search(page))).toBe(true);

  await page.keyboard.type("galvanized steel");
  await expect(rows(page).first().textContent()).resolves.toMatch(/galvanised/i);
  await press("ArrowDown");
  expect(await hasFocus(rows(page).first())).toBe(true);
  await press("ArrowDown");
  expect(await hasFocus(rows(page).nth(1))).toBe(true);
  await press("ArrowUp");
  await page.keyboard.press("Enter");
  expect(await rows(page).first().getAttribute("aria-expanded")).toBe("true");
  expect(await view(page, "Tables").getByText("how it is known").isVisible()).toBe(true);

  await press("Tab");
  const name = await page.locator("*:focus").getAttribute("aria-label");
  expect(name).toMatch(/^Copy key /);
  await page.keyboard.press("Enter");
  const key = name!.replace("Copy key ", "");
  await view(page, "Tables").getByText(`Copied ${key}.`).waitFor();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(key);
});

test("the outcome of a search is announced, and follows the words", async () => {
  const { page } = await open();
  await tab(page, "Tables").click();
  const counted = async (): Promise<number> => Number(/^(\d+) rows?$/.exec((await outcome(page).textContent())!)![1]);
  const all = await counted();
  await search(page).fill("elbow");
  const some = await counted();
  await search(page).fill("elbow 0.27");
  const few = await counted();
  expect(few).toBeGreaterThan(0);
  expect(some).toBeGreaterThan(few);
  expect(all).toBeGreaterThan(some);
  expect(await rows(page).count()).toBe(few);
});

test("a weak row says in words why, and a row that was read carries no such badge", async () => {
  const { page } = await open();
  await tab(page, "Tables").click();
  await search(page).fill("shut wrong side");
  expect(await rows(page).first().textContent()).toContain("common practice");
  await search(page).fill("wood dust causes cancer");
  expect(await rows(page).first().textContent()).not.toMatch(/from memory|common practice/);
});

test("more rows come on demand, and the focus goes to the first of them", async () => {
  const { page } = await open();
  await tab(page, "Tables").click();
  const before = await rows(page).count();
  await page.getByRole("button", { name: /^Show \d+ more/ }).click();
  expect(await rows(page).count()).toBe(2 * before);
  expect(await hasFocus(rows(page).nth(before))).toBe(true);
});

test("where copying is not allowed, the value is selected and the pane says so", async () => {
  const { page } = await open({}, "pane.html", (fresh) =>
    fresh.addInitScript(() => {
      navigator.clipboard.writeText = () => Promise.reject(new Error("not allowed here"));
    }),
  );
  await openRow(page);
  const button = page.getByRole("button", { name: /^Copy roughness .* mm$/ });
  const label = await button.getAttribute("aria-label");
  await button.click();
  await page.getByText("Copying is not allowed here.").first().waitFor();
  const selected = await page.evaluate(() => getSelection()!.toString());
  expect(label).toBe(`Copy roughness ${selected} mm`);
  expect(await page.getByRole("button", { name: `Selected roughness ${selected} mm` }).isVisible()).toBe(true);
});

test("markup and code in the search stay text", async () => {
  const { page, requested, complaints } = await open();
  await tab(page, "Tables").click();
  const images = await page.locator("img").count();
  const asked = requested.length;
  for (const text of [
    "<img src=x onerror=window.broken=1>",
    "<b>hose</b>",
    "{{1+1}}",
    "=1+1",
    '"><script>window.broken=1</script>',
  ]) {
    await search(page).fill(text);
    await outcome(page).waitFor();
    expect(await search(page).inputValue()).toBe(text);
    expect(await page.locator("img").count()).toBe(images);
    expect(await page.locator("main b, main script").count()).toBe(0);
  }
  expect(await page.evaluate(() => "broken" in window)).toBe(false);
  expect(requested).toHaveLength(asked);
  expect(complaints).toEqual([]);
});

test("pane.html asks nothing of any other origin, in any view", async () => {
  const { page, requested } = await open();
  for (const reach of Object.values(states)) await reach(page);
  expect(requested.length).toBeGreaterThan(1);
  expect(requested.filter((url) => new URL(url).origin !== site.address())).toEqual([]);
});

test("its policy refuses written styles, written scripts and requests elsewhere", async () => {
  const { page } = await open();
  const after = await page.evaluate(async () => {
    const style = document.createElement("style");
    style.textContent = "body { outline: 7px solid red }";
    const script = document.createElement("script");
    script.textContent = "window.broken = 1";
    document.head.append(style, script);
    const elsewhere = await fetch("http://127.0.0.1:9/").then(
      () => "answered",
      () => "refused",
    );
    return { outline: getComputedStyle(document.body).outlineWidth, broken: "broken" in window, elsewhere };
  });
  expect(after.outline).not.toBe("7px");
  expect(after).toMatchObject({ broken: false, elsewhere: "refused" });
});

test("the corner that the host's menu covers stays free, 34 x 32 px, and every tab is in sight", async () => {
  const { page } = await open();
  for (const name of views) {
    const box = (await tab(page, name).boundingBox())!;
    expect(box.x + box.width <= 320 - 34 || box.y >= 32).toBe(true);
    expect(box.x + box.width).toBeLessThanOrEqual(320);
    expect(box.y + box.height).toBeLessThan(80);
  }
});

test("the cautions are one click away even far down in the tables, and the tables stay where they were", async () => {
  const { page } = await open();
  await tab(page, "Tables").click();
  await rows(page).nth(20).click();
  await rows(page).nth(20).scrollIntoViewIfNeeded();
  const at = await page.evaluate(() => window.scrollY);
  expect(at).toBeGreaterThan(0);
  await tab(page, "Cautions").click();
  expect(await page.getByText("Before you reach in").isVisible()).toBe(true);
  expect(await page.evaluate(() => window.scrollY)).toBe(0);
  await tab(page, "Tables").click();
  expect(await page.evaluate(() => window.scrollY)).toBe(at);
  expect(await rows(page).nth(20).getAttribute("aria-expanded")).toBe("true");
});

test("each button on the first page leads to its view, and takes the focus there", async () => {
  const { page } = await open();
  for (const [button, name] of [
    ["Read the cautions", "Cautions"],
    ["Search the tables", "Tables"],
    ["Choose a function", "Functions"],
    ["Build a budget", "Build"],
    ["Check the open book", "Check"],
    ["Share it", "Share"],
  ] as const) {
    await tab(page, "Start").click();
    await view(page, "Start").getByRole("button", { name: button }).click();
    expect([button, await tab(page, name).getAttribute("aria-selected")]).toEqual([button, "true"]);
    expect([button, await hasFocus(view(page, name))]).toEqual([button, true]);
  }
});

describe("taskpane.html, the pane in Excel", () => {
  // Stands for office.js inside Excel: what the pane and the cell functions need of it, no more.
  const officeInExcel = `
    window.Office = { onReady: () => Promise.resolve({ host: "Excel" }) };
    window.CustomFunctions = { associate() {}, Error: class extends Error {}, ErrorCode: {} };`;

  test("with office.js it says that it is connected", async () => {
    const { page, complaints } = await open({}, "taskpane.html", (fresh) =>
      fresh.route(OFFICE_JS, (route) => route.fulfill({ contentType: "text/javascript", body: officeInExcel })),
    );
    await page.getByText("Connected to Excel.").waitFor();
    expect(complaints).toEqual([]);
  });

  test("office.js is told to wait for the functions, before it starts", async () => {
    const { page } = await open({}, "taskpane.html", (fresh) =>
      fresh.route(OFFICE_JS, (route) =>
        route.fulfill({
          contentType: "text/javascript",
          body: `window.asOfficeStarts = JSON.stringify(window.CustomFunctionMappings);${officeInExcel}`,
        }),
      ),
    );
    await page.getByText("Connected to Excel.").waitFor();
    expect(await page.evaluate("window.asOfficeStarts")).toBe('{"__delay__":true}');
  });

  test("with office.js blocked it works alone", async () => {
    const { page } = await open({}, "taskpane.html", (fresh) => fresh.route(OFFICE_JS, (route) => route.abort()));
    await page.getByText("Running without a sheet").waitFor();
    await openRow(page);
  });

  test("while office.js hangs the whole pane is there already, and when its patience ends it works alone", async () => {
    const { page } = await open({}, "taskpane.html", async (fresh) => {
      await fresh.addInitScript(holdPatience, PATIENCE);
      await fresh.route(OFFICE_JS, () => undefined);
    });
    await page.getByText("Looking for Excel").waitFor();
    await openRow(page);
    await tab(page, "Start").click();
    await page.getByText("Looking for Excel").waitFor();
    await page.evaluate(() => (window as unknown as Holding).patienceEnds());
    await page.getByText("Running without a sheet").waitFor();
  });
});

interface Holding {
  patienceEnds: () => void;
}

/** Runs in the page: what the pane would do after its patience, the test does when it has looked, however long that took. */
function holdPatience(patience: number): void {
  const begin = window.setTimeout.bind(window);
  const held = (act: () => void, delay?: number, ...given: unknown[]): number => {
    if (delay !== patience) return begin(act, delay, ...given);
    Object.assign(window, { patienceEnds: act });
    return 0;
  };
  Object.assign(window, { setTimeout: held });
}

describe("the views behind the first come after the tabs", () => {
  const LATER = /\/\d+\.[0-9a-f]+\.js$/; // what the pane's script loads

  test("one that is chosen before it is here says that it is loading, and then shows itself", async () => {
    let release: () => void;
    const released = new Promise<void>((resolve) => (release = resolve));
    const { page, complaints } = await site.openAtTabs({}, "pane.html", (fresh) =>
      fresh.route(LATER, (route) => released.then(() => route.fallback())),
    );
    await tab(page, "Cautions").click();
    await view(page, "Cautions").getByText("Loading …").waitFor();
    release!();
    await page.getByRole("heading", { name: "Cautions", exact: true }).waitFor();
    expect(complaints).toEqual([]);
  });

  test("where they cannot be loaded each says so, and asks again when told to", async () => {
    let isThere = false;
    const { page } = await site.openAtTabs({}, "pane.html", (fresh) =>
      fresh.route(LATER, (route) => (isThere ? route.fallback() : route.abort())),
    );
    await tab(page, "Tables").click();
    await page.getByRole("alert").filter({ hasText: "This part of the pane could not be loaded." }).waitFor();
    isThere = true;
    await button(page, "Try again").click();
    await page.getByRole("combobox", { name: "Table" }).waitFor();
    await tab(page, "Start").click();
    await view(page, "Start")
      .getByText(/^From \d+ tables with \d+ rows/)
      .waitFor();
  });
});
