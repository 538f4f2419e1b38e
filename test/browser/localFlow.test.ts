/** The sheet Flow under a person's hands; what its numbers must say of one another stands in test/sheets/book/flow.grid.test.ts. */
import { lineSays, numberOf, read, readOne, localSite, openSheet, typeHere, typeInto, walkTo } from "./localPage";

const local = localSite().openForAll();

const FLOW = ["run", "airflow", "velocity", "suction", "leak", "loss", "gate", "note"] as const;
type Rows<Column extends string> = Record<string, Record<Column, string>>;

/** The rows of a table by the run's name, each by its columns. */
async function table<Column extends string>(range: string, columns: readonly Column[]): Promise<Rows<Column>> {
  const rows = await read(local.page, range);
  return Object.fromEntries(
    rows.map((row) => [
      row[0]!,
      Object.fromEntries(columns.map((column, index) => [column, row[index]!])) as Record<Column, string>,
    ]),
  );
}

const solved = (): Promise<Rows<(typeof FLOW)[number]>> => table("B11:I20", FLOW);

const total = async (at: string): Promise<number> => numberOf(await readOne(local.page, at));
describe("the flow sheet", () => {
  test("shutting the planer's gate by keyboard: the other hoods get more, the leaks' share grows, the mains settle; undo brings all back", async () => {
    const { page } = local;
    await openSheet(page, "Flow");
    const before = await solved();
    const share = await total("I6");
    expect(before.planer!.gate).toBe("open");

    await walkTo(page, "A12");
    await typeHere(page, "shut planer");

    const after = await solved();
    expect(after.planer).toMatchObject({ gate: "shut", note: "gate shut: only its leak flows" });
    for (const hood of ["band saw", "drum sander", "router table"])
      expect(numberOf(after[hood]!.airflow)).toBeGreaterThan(numberOf(before[hood]!.airflow));
    expect(numberOf(after.Fan!.airflow)).toBeLessThan(numberOf(before.Fan!.airflow));
    expect(numberOf(after.Fan!.suction)).toBeGreaterThan(numberOf(before.Fan!.suction));
    expect(numberOf(await readOne(page, "I6"))).toBeGreaterThan(share);
    for (const main of ["north main", "trunk", "separator"]) {
      expect(numberOf(after[main]!.airflow)).toBeLessThan(numberOf(before[main]!.airflow));
      expect(after[main]!.note).toMatch(/^dust settles: /);
    }
    const settling = Object.values(after).filter(({ note }) => note.startsWith("dust settles"));
    expect(await readOne(page, "I8")).toBe(String(settling.length));
    expect(await readOne(page, "C9")).toBe("band saw; drum sander; router table; ");

    await page.keyboard.press("Control+Z");
    expect(await solved()).toEqual(before);
    expect(local.complaints).toEqual([]);
  });
  test("a wrong point of the curve is named where the answer would stand, no total shows a 0, and undo brings all back", async () => {
    const { page } = local;
    await openSheet(page, "Flow");
    const before = await solved();
    await openSheet(page, "Fan");
    await page.locator(".o-figure canvas").first().waitFor(); // the chart of the curve
    await typeInto(page, "B10", "abc");
    await openSheet(page, "Flow");
    expect(await readOne(page, "B10")).toBe("#VALUE!");
    await lineSays(
      page,
      /^B10 shows #VALUE!: pressure in row 3 of the curve must be a number \(in\.w\.g\.\); got "abc"$/,
    );
    expect((await read(page, "C5:C8")).flat()).toEqual(["see B10", "see B10", "see B10", "see B10"]);
    expect((await read(page, "I5:I8")).flat()).toEqual(["see B10", "see B10", "see B10", "see B10"]);
    await page.keyboard.press("Control+Z");
    expect(await solved()).toEqual(before);
    expect(local.outside).toEqual([]);
  });
});
