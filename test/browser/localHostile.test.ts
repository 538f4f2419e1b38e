/** Small files and kept books that would keep the page busy for minutes, or for ever. */
import { farValue, farValueThatIsRead, heavyFormula } from "../support/attackFiles";
import { goTo, keptSays, lineSays, readOne, reload, sheetNames, localSite } from "./localPage";

const local = localSite().openForAll();

const choose = (name: string, bytes: Uint8Array): Promise<void> =>
  local.page
    .locator("#chooser")
    .setInputFiles({ name, mimeType: "application/octet-stream", buffer: Buffer.from(bytes) });
const notice = () => local.page.locator("#notice");

test("a value in the last cell of a sheet: the rest opens, and the page says what it left out", async () => {
  await choose("far.xlsx", farValue("XFD1048576"));
  await notice().waitFor();
  expect(await notice().locator("p").innerText()).toBe(
    "Left out, since it stands too far from the rest of its sheet: One!XFD1048576. Nothing reads it; a file saved from here does not have it.",
  );
  await local.page.keyboard.press("Escape");
  expect(await sheetNames(local.page)).toEqual(["One"]);
  expect(Number(await readOne(local.page, "A1"))).toBeCloseTo(Math.PI / 36, 6); // a circle of 4 in, in ft2
  expect(local.complaints).toEqual([]);
});

test("one that a formula reads: the file is not opened, and says why", async () => {
  await choose("far.xlsx", farValueThatIsRead);
  await notice().waitFor();
  expect(await notice().locator("p").innerText()).toMatch(
    /^far\.xlsx was not opened\. This file reaches farther than a sheet can here, to One!A1048576, and the formula in One!A2 may read that/,
  );
  await local.page.keyboard.press("Escape");
});

test("a formula of a thousand million cells: its cell says that it has no value, also after a reload", async () => {
  await choose("heavy.xlsx", heavyFormula("SUM(SEQUENCE(100000,10000))"));
  await keptSays(local.page, /^Kept in this browser/);
  const says = async (): Promise<void> => {
    expect(await readOne(local.page, "A2")).toBe("#ERROR");
    await goTo(local.page, "A2");
    await lineSays(local.page, /asks for more cells, text or steps than this sheet computes/);
  };
  await says();
  await reload(local.page);
  await says();
});

/** Puts cells into the first sheet that the browser keeps, as an older page could have kept them. */
const keepFar = (cells: readonly object[]): Promise<void> =>
  local.page.evaluate(
    (added) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open("duct-ledger /");
        opening.onerror = () => reject(new Error("there is no store"));
        opening.onsuccess = () => {
          const store = opening.result.transaction("open-budget", "readwrite").objectStore("open-budget");
          const head = store.get("head");
          head.onsuccess = () => {
            const key = (head.result as { book: { keys: string[] } }).book.keys[0]!;
            const sheet = store.get(key);
            sheet.onsuccess = () => {
              (sheet.result as { cells: object[] }).cells.push(...added);
              store.put(sheet.result, key).onsuccess = () => resolve();
            };
          };
        };
      }),
    cells,
  );

async function keepSomething(): Promise<void> {
  await goTo(local.page, "A40");
  await local.page.evaluate(() => window.ductLedgerHost!.insert({ value: "mine" }));
  await keptSays(local.page, /^Kept in this browser/);
}

test("what the browser kept opens without its far cell, and says so", async () => {
  await keepSomething();
  await keepFar([{ at: "XFD1048576", value: 1 }]);
  await local.page.reload();
  await notice().waitFor();
  expect(await notice().locator("p").innerText()).toContain("Start!XFD1048576. Nothing reads it");
  await local.page.keyboard.press("Escape");
  expect(await readOne(local.page, "A40")).toBe("mine");
});

test("what it kept and cannot open is asked about before anything is computed, and stays where it is", async () => {
  await keepSomething();
  await keepFar([
    { at: "A1048576", value: 1 },
    { at: "B40", formula: "=SUM(A41:A1048576)" },
  ]);
  await local.page.reload();
  await notice().waitFor();
  expect(await notice().locator("p").innerText()).toMatch(
    /^What this browser kept may take minutes to open, or never end\. This file reaches farther/,
  );
  await notice().getByRole("button", { name: "Leave it" }).click();
  await local.page.waitForSelector(".o-grid");
  await keptSays(local.page, /^Not kept: what this browser has from before/);
});
