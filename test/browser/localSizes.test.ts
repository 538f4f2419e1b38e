import type { FrameLocator, Page } from "playwright-core";
import { LISTS_FIRST } from "../../src/sheets/book/sizes/sizesLayout";
import { localSite, openSheet, paneFrame, read, readOne, staysQuiet, typeInto } from "./localPage";
import { button, says, tab } from "./panePage";

// Choosing sizes in the pane, on the demo. One size alone can be bought, so what is chosen is known beforehand.

const local = localSite().openForAll();
let page: Page;
let pane: FrameLocator;

beforeEach(() => {
  ({ page } = local);
  pane = paneFrame(page);
});
staysQuiet(local);

const use = () => button(pane, "Use these sizes …");

async function searched(): Promise<void> {
  await openSheet(page, "Sizes");
  await typeInto(page, `A${LISTS_FIRST}`, "planer");
  await typeInto(page, `F${LISTS_FIRST}`, "5");
  await tab(pane, "Build").click();
  await button(pane, "Choose sizes").click();
  await use().waitFor();
}

test("sizes that were found are written for the ducts and the fan that they were found for, and for no others", async () => {
  await searched();
  await openSheet(page, "Fan");
  const pressure = await readOne(page, "B10");
  await typeInto(page, "B10", String(Number(pressure) + 0.5));
  await use().click();
  await button(pane, "Write them").click();
  await says(pane, "The ducts, the fan or what is asked have changed since it was searched, so nothing was written: choose sizes again."); // prettier-ignore
  await openSheet(page, "Runs");
  const diameters = (): Promise<string[]> => read(page, "E9:E15").then((rows) => rows.flat());
  const before = await diameters();
  expect(before).toContain("9"); // of the trunk

  await openSheet(page, "Fan");
  await typeInto(page, "B10", pressure);
  await button(pane, "Write them").click();
  await says(pane, /^5 diameters were written into the sheet Runs\./);
  await openSheet(page, "Runs");
  expect((await diameters()).filter((one) => one !== "5" && one !== "9")).toEqual([]); // the separator keeps its own
});

test("sizes and leaks that were found in a book are not offered for another that is opened in its place", async () => {
  await searched();
  await button(pane, "Read the leak log").click();
  const take = button(pane, /^Take this reading as the leak of planer/);
  await take.waitFor();
  await page.getByRole("button", { name: "New", exact: true }).click();
  await page.getByRole("radio", { name: /invented example/ }).check();
  await page.getByRole("button", { name: "Make it" }).click();
  await page.locator("#notice").getByRole("button", { name: "Replace it" }).click();
  await use().waitFor({ state: "detached" });
  await take.waitFor({ state: "detached" });
  expect(await pane.getByText("Readings of the sheet Leaks, for the sheet Runs.").count()).toBe(0);
});
