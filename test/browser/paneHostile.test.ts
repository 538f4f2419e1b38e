import fc from "fast-check";
import type { Page } from "playwright-core";
import type { Calculated } from "../../src/sheets/calculated";
import { bookOf, runsWith, solveHeader, soundRuns } from "../support/books";
import { fakeHost, held } from "./fakeHost";
import { button, says, servedPane, tab, view } from "./panePage";

// Cell texts that would be markup, script or a formula elsewhere: in the pane they are texts.

const site = servedPane();

const PIECES = [
  "<img src=x onerror=window.broken=1>",
  '"><script>window.broken=1</script>',
  "</p></li><svg/onload=window.broken=1>",
  "<iframe srcdoc='<b>x</b>'>",
  "javascript:window.broken=1",
  '=HYPERLINK("http://127.0.0.1:9/","x")',
  "=cmd|' /C calc'!A0",
  "@SUM(1)",
  "{{constructor.constructor('window.broken=1')()}}",
  "${window.broken=1}",
  "&lt;b&gt;&#x3c;b&#62;",
  "\u202e\u2066saw\u2069",
  "\u200b\u200d\ufeff",
  "e\u0301\ud83d\ude00\ud800",
  "\u0000\u0007\u001b[31m",
  "__proto__",
  "constructor",
  "toString",
  "hasOwnProperty",
  "wood dust\nfan\ttrunk",
];
const LONG = "<b>ten thousand</b> ".repeat(500); // 10,000 characters
const mixed = fc.sample(
  fc.array(fc.constantFrom(...PIECES), { minLength: 2, maxLength: 3 }).map((pieces) => pieces.join(" ")),
  { seed: 20_261_127, numRuns: 12 },
);
const HOSTILE = [...PIECES, LONG, ...mixed];
const PLAIN = HOSTILE.map((_, i) => `name ${i}`);

/** A book that says each text wherever a text of a cell is said again: names of runs and sheets, notes, refusals. */
function bookSaying(texts: readonly string[]): Calculated {
  const [header, ...sound] = runsWith("saw", "Flex", 12);
  const [saw, , main] = sound;
  const runs = texts.map((text) => [text, ...saw!.slice(1, -1), "shut wrong side"]);
  const answers = texts.map((text) => [text, 100, 1000, 1, 0, 1, "open", `dust settles; ${text.replaceAll(";", ",")}`]);
  const sheets = texts.map((text) => [
    text,
    {
      rows: [[{ error: "#VALUE!", message: text } as const], [...soundRuns[0]!, text], ...sound],
      formulas: { A1: `=DUCT.AREA("${text}")` },
    },
  ]);
  return bookOf(
    {
      Runs: { rows: [header!, ...runs, main!] },
      Flow: { rows: [solveHeader, ...answers] },
      ...Object.fromEntries(sheets),
    },
    texts.map((name) => ({ name, sheet: "Runs", at: "A2" })),
  );
}

/** The same with every text among the fittings as well, which the functions refuse. */
function refusedBook(texts: readonly string[]): Calculated {
  const rows = texts.map((text) => [text, "main", 400, 4, 12, text, `${text}; elbow 1`, text, text]);
  return bookOf({ Runs: { rows: [soundRuns[0]!, ...rows, soundRuns.at(-1)!] } });
}

/** Every kind of element there is: its tag with the names of its attributes. */
const kinds = (page: Page): Promise<string[]> =>
  page.evaluate(() => [
    ...new Set(
      [...document.querySelectorAll("*")].map((element) =>
        [element.localName, ...element.getAttributeNames().sort()].join(" "),
      ),
    ),
  ]);

async function checkSays(page: Page, book: Calculated): Promise<string> {
  await page.evaluate((next) => (window as unknown as { hold: (book: unknown) => void }).hold(next), held(book));
  await tab(page, "Check").click();
  await view(page, "Check")
    .getByRole("button", { name: /^Check (the open book|again)$/ })
    .click();
  await page.getByText("Reading the book").waitFor({ state: "detached" });
  await says(page, /things? to look at/);
  return (await view(page, "Check").textContent())!;
}

/** Puts the page's clock on past the pause after which a form is computed, and waits until the worker has answered all that it was asked. */
async function computed(page: Page): Promise<void> {
  await page.clock.runFor(300);
  await page.waitForFunction(() => {
    const { asked, answered } = (window as unknown as Counting).worker;
    return asked > 0 && answered === asked;
  });
}

interface Counting {
  worker: { asked: number; answered: number };
}

/** Runs in the page before its scripts: counts what its workers are asked and what they answer. */
function countAnswers(): void {
  const counted = { asked: 0, answered: 0 };
  Object.assign(window, { worker: counted });
  class Counted extends Worker {
    constructor(...given: ConstructorParameters<typeof Worker>) {
      super(...given);
      this.addEventListener("message", () => counted.answered++);
    }
    override postMessage(message: unknown): void {
      counted.asked++;
      super.postMessage(message);
    }
  }
  Object.assign(window, { Worker: Counted });
}

/** Leads the texts through the views that read or take texts; gives the kinds of elements that were seen on the way. */
async function leadThrough(page: Page, texts: readonly string[]): Promise<Set<string>> {
  const seen = new Set<string>();
  const look = async (): Promise<void> => (await kinds(page)).forEach((kind) => seen.add(kind));
  for (const book of [refusedBook(texts), bookSaying(texts)]) {
    const said = await checkSays(page, book);
    for (const text of texts) expect(said).toContain(text.trim());
    await look();
  }
  await tab(page, "Tables").click();
  for (const text of texts) {
    await page.getByRole("searchbox", { name: "Search", exact: true }).fill(text);
    await look();
  }
  await tab(page, "Functions").click();
  await page.getByRole("searchbox", { name: "Search functions" }).fill(texts.at(-1)!);
  await look();
  await page.getByRole("searchbox", { name: "Search functions" }).fill("REFERENCE");
  const item = button(page, /^REFERENCE/);
  if ((await item.getAttribute("aria-expanded")) === "false") await item.click();
  await button(page, "Insert here …").click();
  const fields = ["table", "key", "column"].map((name) => page.getByRole("textbox", { name: new RegExp(`^${name}`) }));
  for (const [i, text] of texts.entries()) {
    await fields[i % 3]!.fill(text);
    if (i % 8 === 0) await computed(page); // now and then; nothing fails where it was not yet
    await look();
  }
  return seen;
}

test("hostile texts bring up no element that plain ones do not, run nothing, ask for nothing and break nothing", async () => {
  const { page, requested, complaints } = await site.open({}, "pane.html", async (fresh) => {
    await fresh.clock.install();
    await fresh.addInitScript(countAnswers);
    await fresh.addInitScript(fakeHost(bookOf({})));
    await fresh.addInitScript(() => {
      const refused: string[] = [];
      document.addEventListener("securitypolicyviolation", ({ blockedURI }) => refused.push(blockedURI));
      Object.assign(window, { refused });
    });
  });
  const ours = await leadThrough(page, PLAIN);
  const seen = await leadThrough(page, HOSTILE);
  expect(ours.size).toBeGreaterThan(20);
  expect([...seen].filter((kind) => !ours.has(kind))).toEqual([]);
  const state = await page.evaluate(() => ({
    broken: "broken" in window,
    refused: (window as unknown as { refused: string[] }).refused,
    polluted: Object.keys(Object.prototype),
    path: location.pathname,
  }));
  expect(state).toEqual({ broken: false, refused: [], polluted: [], path: "/pane.html" });
  expect(requested.filter((url) => new URL(url).origin !== site.address())).toEqual([]);
  expect(complaints).toEqual([]);
});
