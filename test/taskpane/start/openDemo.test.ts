import type { AddOutcome, SheetHost } from "../../../src/hosts/host";
import { openDemo } from "../../../src/taskpane/start/openDemo";
import { bookOf, soundRuns } from "../../support/books";

const watch = { progress: () => undefined, signal: new AbortController().signal };

/** A sheet that shows the example, or does not, as `outcome` has it. */
const hostWith = (outcome: AddOutcome, asked: unknown[]): SheetHost =>
  ({
    openExample: async (units: string) => {
      asked.push(units);
      return outcome;
    },
    readBook: async () => bookOf({ Ducts: { rows: soundRuns } }),
    goTo: async (sheet: string, at: string) => void asked.push([sheet, at]),
  }) as unknown as SheetHost;

test("the example is shown in the units that were chosen, and its runs are selected", async () => {
  const asked: unknown[] = [];
  const words = await openDemo(hostWith({ added: true, sheets: ["Ducts"] }, asked), "SI", watch);
  expect(asked).toEqual(["SI", ["Ducts", "C2"]]);
  expect(words.join(" ")).toContain("on the sheet Ducts");
});

test("where it is not shown, the reason is said and nothing is selected in the user's own book", async () => {
  const asked: unknown[] = [];
  const why = "You kept the budget that is open.";
  expect(await openDemo(hostWith({ added: false, why }, asked), "IP", watch)).toEqual([why]);
  expect(asked).toEqual(["IP"]);
});

test("what the host refused is told", async () => {
  const refused = ["The page set-up for printing is missing."];
  const words = await openDemo(hostWith({ added: true, sheets: ["Ducts"], refused }, []), "IP", watch);
  expect(words.at(-1)).toBe(refused[0]);
});

test("alone it says how the example is opened", async () => {
  expect((await openDemo(null, "IP", watch)).join(" ")).toContain("npm start");
});
