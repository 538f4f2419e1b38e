import { goTo, lineSays, numberOf, read, readOne, localSite, typeHere, typeInto, walkTo } from "./localPage";

const local = localSite().openForAll();

beforeEach(async () => {
  await openSheet("Flow");
});

const openSheet = (name: string): Promise<void> =>
  local.page.locator(".o-sheet", { hasText: new RegExp(`^\\s*${name}\\s*$`) }).click();

const FLOW = ["run", "airflow", "velocity", "suction", "leak", "loss", "gate", "note"] as const;
const HOOD_COLUMNS = ["wants", "gets", "share", "sealed", "gains"] as const;
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

/** What stands beside the answer, by the run's name, and the fan's own row. */
async function hoods(): Promise<Rows<(typeof HOOD_COLUMNS)[number]>> {
  const names = (await read(local.page, "B11:B20")).flat();
  const rows = await read(local.page, "Q11:U20");
  return Object.fromEntries(
    names.map((name, index) => [
      name,
      Object.fromEntries(HOOD_COLUMNS.map((column, place) => [column, rows[index]![place]!])),
    ]),
  ) as Rows<(typeof HOOD_COLUMNS)[number]>;
}
const total = async (at: string): Promise<number> => numberOf(await readOne(local.page, at));
const HOODS = ["band saw", "planer", "drum sander", "router table"];
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Each number is shown to the last digit, so a sum of several may be off by half of it for each. */
const expectNear = (value: number, other: number, margin: number): void =>
  expect(Math.abs(value - other)).toBeLessThanOrEqual(margin + 1e-9);

describe("the flow sheet", () => {
  test("shutting the planer's gate by keyboard: the other hoods get more, the leaks' share grows, the mains settle; undo brings all back", async () => {
    const { page } = local;
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

  test("what flows in flows out: at each junction, at the fan, and over all leaks", async () => {
    const rows = await solved();
    const airflow = (run: string): number => numberOf(rows[run]!.airflow);
    expectNear(airflow("north main"), airflow("band saw") + airflow("planer"), 1.5);
    expectNear(airflow("south main"), airflow("drum sander") + airflow("router table"), 1.5);
    expectNear(airflow("trunk"), airflow("north main") + airflow("south main"), 1.5);
    expectNear(airflow("separator"), airflow("trunk") + numberOf(rows.separator!.leak), 1.05);
    expect(airflow("Fan")).toBe(airflow("separator"));
    const leaks = [...HOODS, "separator"].map((run) => numberOf(rows[run]!.leak));
    expectNear(numberOf(rows.Fan!.leak), sum(leaks), 0.3);
    expect(numberOf(await readOne(local.page, "I5"))).toBe(Math.round(numberOf(rows.Fan!.leak)));
  });

  test("all hoods together come out short, and so do three of four, as the notes and the count say", async () => {
    const rows = await hoods();
    expect(await total("C6")).toBe(1750); // 400 + 550 + 400 + 400
    expect(await total("C5")).toBeLessThan(1750);
    const short = HOODS.filter((hood) => numberOf(rows[hood]!.share) < 95);
    expect(short.length).toBe(3);
    expect(await readOne(local.page, "C8")).toBe("3");
    const notes = await solved();
    for (const hood of HOODS) expect(notes[hood]!.note.includes("the hood gets")).toBe(short.includes(hood));
  });

  test("sealing gives the hoods less than the leaks add up to, and the difference is what the fan no longer moves", async () => {
    const rows = await hoods();
    const [leaks, gained] = [await total("I5"), await total("I7")];
    for (const hood of HOODS) expect(numberOf(rows[hood]!.gains)).toBeGreaterThan(0);
    expectNear(gained, sum(HOODS.map((hood) => numberOf(rows[hood]!.gains))), 0.7);
    expect(gained).toBeLessThan(leaks);
    const fanNow = numberOf((await solved()).Fan!.airflow);
    expectNear(leaks - gained, fanNow - numberOf(rows.Fan!.sealed), 2);
    const sentences = (await read(local.page, "Q5:Q6")).flat();
    expect(sentences[0]).toBe(
      `The leaks add up to ${leaks} cfm. Sealing them all gives the open hoods ${gained} cfm more.`,
    );
    expect(sentences[1]).toMatch(/^The other \d+ cfm the fan no longer moves: /);
  });

  test("what it says of sealing comes true when the leaks are taken out of the runs", async () => {
    const { page } = local;
    const promised = await hoods();
    await openSheet("Runs");
    await goTo(page, "R9:T48");
    await page.keyboard.press("Delete");
    await openSheet("Flow");
    const now = await hoods();
    for (const hood of HOODS) {
      expect(now[hood]!.gets).toBe(promised[hood]!.sealed);
      expect(numberOf(now[hood]!.gains)).toBe(0);
    }
    expect(await total("I5")).toBe(0);
    expect((await solved()).Fan!.airflow).toBe(promised.Fan!.sealed);
  });

  test("a gate left blank here is as on the runs, and one set here wins", async () => {
    const { page } = local;
    await openSheet("Runs");
    await typeInto(page, "J9", "shut");
    await openSheet("Flow");
    expect((await solved())["band saw"]!.gate).toBe("open");
    await goTo(page, "A11");
    await page.keyboard.press("Delete");
    expect((await solved())["band saw"]!.gate).toBe("shut");
  });

  test("with every gate shut only leaks flow", async () => {
    const { page } = local;
    for (const [index, hood] of HOODS.entries()) await typeInto(page, `A${11 + index}`, `shut ${hood}`);
    expect(await readOne(page, "C9")).toBe("none");
    const rows = await solved();
    for (const hood of HOODS) expect(rows[hood]!.gate).toBe("shut");
    expectNear(numberOf(rows.Fan!.leak), numberOf(rows.Fan!.airflow), 0.55);
    expect((await read(page, "C5:C6")).flat()).toEqual(["0", "0"]);
  });

  test("scenarios agree with the gates set above, leave shut hoods blank, and a blank row takes another one", async () => {
    const { page } = local;
    const gets = await hoods();
    const [all, alone] = (await read(page, "B67:O68")) as [string[], string[]];
    expect([all[1], all[3], all[5], all[7]]).toEqual(HOODS.map((hood) => gets[hood]!.gets));
    expect([alone[1], alone[5], alone[7]]).toEqual(["", "", ""]);
    expect(numberOf(alone[3])).toBeGreaterThan(numberOf(all[3]));
    expect(numberOf(alone[9])).toBeLessThan(numberOf(all[9])); // less at the fan
    expect(alone[12]).toMatch(/^trunk: .* dust settles: /); // the widest duct is the slowest
    expect((await read(page, "A67:A71")).flat()).toEqual(["settles", "settles", "settles", "", ""]);

    await typeInto(page, "B61", "sander alone");
    await typeInto(page, "E61", "open");
    const added = (await read(page, "B70:O70"))[0]!;
    expect(added[0]).toBe("sander alone");
    expect(added.slice(1, 9).map((cell) => cell === "")).toEqual([true, true, true, true, false, false, true, true]);
    expect(numberOf(added[5])).toBeGreaterThan(numberOf(all[5]));
    expect((await read(page, "B79:F79"))[0]).toEqual([added[0], added[9], added[10], added[11], added[12]]);
  });

  test("the gains are tried for the hood with the smallest share, and the first of them comes true", async () => {
    const { page } = local;
    const rows = await hoods();
    const share = (hood: string): number => numberOf(rows[hood]!.gets) / numberOf(rows[hood]!.wants);
    const least = HOODS.reduce((worst, hood) => (share(hood) < share(worst) ? hood : worst));
    expect(await readOne(page, "B86")).toBe(least);
    const gains = (await read(page, "A89:C97")).map(([run, change, gained]) => ({ run, change, gained }));
    gains
      .slice(1)
      .forEach(({ gained }, index) => expect(numberOf(gained)).toBeLessThanOrEqual(numberOf(gains[index]!.gained)));
    const beside = {
      "band saw": "planer",
      planer: "band saw",
      "drum sander": "router table",
      "router table": "drum sander",
    };
    const other = beside[least as keyof typeof beside]; // the one on the same main
    expect(gains[0]).toMatchObject({ run: other, change: "gate there shut" });

    await typeInto(page, `A${11 + HOODS.indexOf(other)}`, `shut ${other}`);
    const after = await hoods();
    expectNear(
      numberOf(after[least]!.gets) - numberOf(rows[least]!.gets),
      numberOf(gains[0]!.gained),
      1.05, // two whole numbers and one decimal
    );
  });

  test("another hood can be named", async () => {
    const { page } = local;
    await typeInto(page, "B85", "router table");
    expect(await readOne(page, "B86")).toBe("router table");
    const runs = (await read(page, "A89:A107")).flat();
    expect(runs).toContain("south main"); // on its way to the fan
    expect(runs).not.toContain("north main"); // not on its way, and without a gate or a leak
  });

  test("the fan works at a point of its curve, and a chart shows it", async () => {
    const { page } = local;
    const rows = await solved();
    await openSheet("Fan");
    expect((await read(page, "B26:B27")).flat()).toEqual([rows.Fan!.airflow, rows.Fan!.suction]);
    const curve = (await read(page, "A9:B17")).map((line) => line.map(numberOf) as [number, number]);
    const next = curve.findIndex(([airflow]) => airflow > numberOf(rows.Fan!.airflow));
    expect(numberOf(rows.Fan!.suction)).toBeLessThan(curve[next - 1]![1]);
    expect(numberOf(rows.Fan!.suction)).toBeGreaterThan(curve[next]![1]);
    await page.locator(".o-figure canvas").first().waitFor();
    expect(local.complaints).toEqual([]);
    expect(local.outside).toEqual([]);
  });

  test("a wrong point of the curve is named where the answer would stand, no total shows a 0, and undo brings all back", async () => {
    const { page } = local;
    const before = await solved();
    await openSheet("Fan");
    await typeInto(page, "B10", "abc");
    await openSheet("Flow");
    expect(await readOne(page, "B10")).toBe("#VALUE!");
    await lineSays(
      page,
      /^B10 shows #VALUE!: pressure in row 3 of the curve must be a number \(in\.w\.g\.\); got "abc"$/,
    );
    expect((await read(page, "C5:C8")).flat()).toEqual(["see B10", "see B10", "see B10", "see B10"]);
    expect((await read(page, "I5:I8")).flat()).toEqual(["see B10", "see B10", "see B10", "see B10"]);
    await page.keyboard.press("Control+Z");
    expect(await solved()).toEqual(before);
  });

  test("the headings follow the units cell", async () => {
    const { page } = local;
    await openSheet("Fan");
    expect((await read(page, "A8:B8")).flat()).toEqual(["Airflow (cfm)", "Pressure printed (in.w.g.)"]);
    expect((await read(page, "D8:E8")).flat()).toEqual(["Airflow (cfm)", "Fan static pressure (in.w.g.)"]);
    await openSheet("Start");
    await typeInto(page, "B6", "SI");
    await openSheet("Fan");
    expect((await read(page, "A8:B8")).flat()).toEqual(["Airflow (m³/h)", "Pressure printed (Pa)"]);
    expect((await read(page, "D8:E8")).flat()).toEqual(["Airflow (m³/h)", "Fan static pressure (Pa)"]);
    await openSheet("Flow");
    expect(await readOne(page, "R10")).toBe("Hood gets (m³/h)");
  });
});
