import type { SheetHost } from "../../../src/hosts/host";
import type { Calculated } from "../../../src/sheets/calculated";
import { openDemo } from "../../../src/taskpane/start/openDemo";
import { bookOf, soundRuns } from "../../support/books";

const watch = { progress: () => undefined, signal: new AbortController().signal };
const hostWith = (book: Calculated, asked: unknown[]): SheetHost =>
  ({
    readBook: async () => book,
    goTo: async (sheet: string, at: string) => void asked.push([sheet, at]),
    addSheets: async (order: { units: string; contents: string }) => {
      asked.push([order.units, order.contents]);
      return { added: true, sheets: ["Start", "Runs"] };
    },
  }) as unknown as SheetHost;

test("leads to the runs of the budget that is open", async () => {
  const asked: unknown[] = [];
  const words = await openDemo(hostWith(bookOf({ Ducts: { rows: soundRuns } }), asked), "IP", watch);
  expect(asked).toEqual([["Ducts", "C2"]]);
  expect(words.join(" ")).toContain("on the sheet Ducts");
});

test("adds the example where no budget is open", async () => {
  const asked: unknown[] = [];
  const words = await openDemo(hostWith(bookOf({ Sheet1: { rows: [] } }), asked), "IP", watch);
  expect(asked).toEqual([["IP", "example"]]);
  expect(words[0]).toBe("Added 2 sheets: Start and Runs.");
});

test("adds the example beside a budget in the other units, so that the chosen ones are seen", async () => {
  const asked: unknown[] = [];
  await openDemo(hostWith(bookOf({ Ducts: { rows: soundRuns } }), asked), "SI", watch);
  expect(asked).toEqual([["SI", "example"]]);
});

test("alone it says how the example is opened", async () => {
  expect((await openDemo(null, "IP", watch)).join(" ")).toContain("npm start");
});
