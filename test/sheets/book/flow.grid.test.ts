/** What the sheet Flow says of the example: its numbers agree with one another, and what it promises comes true. */
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { gridOfBook, type Shows } from "../../support/gridOfBook";

const example = (): Shows =>
  gridOfBook(budgetBook({ units: "IP", contents: "example", sheets: ["flow"] }, { sheets: [], names: [] }));

let grid: Shows;
let isChanged = true;
beforeEach(() => {
  if (isChanged) grid = example();
  isChanged = false;
});

const read = (range: string, sheet = "Flow"): string[][] => grid.texts(sheet, range);
const readOne = (at: string): string => read(at)[0]![0]!;
function typeInto(sheet: string, at: string, text: string): void {
  grid.type(sheet, at, text);
  isChanged = true;
}
function clear(sheet: string, range: string): void {
  grid.clear(sheet, range);
  isChanged = true;
}

/** A number as the sheet shows it: "1,750" is 1750. */
const numberOf = (shown: string | undefined): number => {
  if (shown === undefined || !/^-?[\d,]*\.?\d+%?$/.test(shown)) throw new Error(`not a number: ${String(shown)}`);
  return Number(shown.replace(/[,%]/g, ""));
};

const FLOW = ["run", "airflow", "velocity", "suction", "leak", "loss", "gate", "note"] as const;
const HOOD_COLUMNS = ["wants", "gets", "share", "sealed", "gains"] as const;
type Rows<Column extends string> = Record<string, Record<Column, string>>;

/** The rows of a table by the run's name, each by its columns. */
function table<Column extends string>(range: string, columns: readonly Column[]): Rows<Column> {
  const rows = read(range);
  return Object.fromEntries(
    rows.map((row) => [
      row[0]!,
      Object.fromEntries(columns.map((column, index) => [column, row[index]!])) as Record<Column, string>,
    ]),
  );
}

const solved = (): Rows<(typeof FLOW)[number]> => table("B11:I20", FLOW);

/** What stands beside the answer, by the run's name, and the fan's own row. */
function hoods(): Rows<(typeof HOOD_COLUMNS)[number]> {
  const names = read("B11:B20").flat();
  const rows = read("Q11:U20");
  return Object.fromEntries(
    names.map((name, index) => [
      name,
      Object.fromEntries(HOOD_COLUMNS.map((column, place) => [column, rows[index]![place]!])),
    ]),
  ) as Rows<(typeof HOOD_COLUMNS)[number]>;
}
const total = (at: string): number => numberOf(readOne(at));
const HOODS = ["band saw", "planer", "drum sander", "router table"];
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Each number is shown to the last digit, so a sum of several may be off by half of it for each. */
const expectNear = (value: number, other: number, margin: number): void =>
  expect(Math.abs(value - other)).toBeLessThanOrEqual(margin + 1e-9);

describe("the flow sheet", () => {
  test("what flows in flows out: at each junction, at the fan, and over all leaks", () => {
    const rows = solved();
    const airflow = (run: string): number => numberOf(rows[run]!.airflow);
    expectNear(airflow("north main"), airflow("band saw") + airflow("planer"), 1.5);
    expectNear(airflow("south main"), airflow("drum sander") + airflow("router table"), 1.5);
    expectNear(airflow("trunk"), airflow("north main") + airflow("south main"), 1.5);
    expectNear(airflow("separator"), airflow("trunk") + numberOf(rows.separator!.leak), 1.05);
    expect(airflow("Fan")).toBe(airflow("separator"));
    const leaks = [...HOODS, "separator"].map((run) => numberOf(rows[run]!.leak));
    expectNear(numberOf(rows.Fan!.leak), sum(leaks), 0.3);
    expect(numberOf(readOne("I5"))).toBe(Math.round(numberOf(rows.Fan!.leak)));
  });

  test("all hoods together come out short, and so do three of four, as the notes and the count say", () => {
    const rows = hoods();
    expect(total("C6")).toBe(1750); // 400 + 550 + 400 + 400
    expect(total("C5")).toBeLessThan(1750);
    const short = HOODS.filter((hood) => numberOf(rows[hood]!.share) < 95);
    expect(short.length).toBe(3);
    expect(readOne("C8")).toBe("3");
    const notes = solved();
    for (const hood of HOODS) expect(notes[hood]!.note.includes("the hood gets")).toBe(short.includes(hood));
  });

  test("sealing gives the hoods less than the leaks add up to, and the difference is what the fan no longer moves", () => {
    const rows = hoods();
    const [leaks, gained] = [total("I5"), total("I7")];
    for (const hood of HOODS) expect(numberOf(rows[hood]!.gains)).toBeGreaterThan(0);
    expectNear(gained, sum(HOODS.map((hood) => numberOf(rows[hood]!.gains))), 0.7);
    expect(gained).toBeLessThan(leaks);
    const fanNow = numberOf(solved().Fan!.airflow);
    expectNear(leaks - gained, fanNow - numberOf(rows.Fan!.sealed), 2);
    const sentences = read("Q5:Q6").flat();
    expect(sentences[0]).toBe(
      `The leaks add up to ${leaks} cfm. Sealing them all gives the open hoods ${gained} cfm more.`,
    );
    expect(sentences[1]).toMatch(/^The other \d+ cfm the fan no longer moves: /);
  });

  test("what it says of sealing comes true when the leaks are taken out of the runs", () => {
    const promised = hoods();
    clear("Runs", "R9:T48");
    const now = hoods();
    for (const hood of HOODS) {
      expect(now[hood]!.gets).toBe(promised[hood]!.sealed);
      expect(numberOf(now[hood]!.gains)).toBe(0);
    }
    expect(total("I5")).toBe(0);
    expect(solved().Fan!.airflow).toBe(promised.Fan!.sealed);
  });

  test("a gate left blank here is as on the runs, and one set here wins", () => {
    typeInto("Runs", "J9", "shut");
    expect(solved()["band saw"]!.gate).toBe("open");
    clear("Flow", "A11");
    expect(solved()["band saw"]!.gate).toBe("shut");
  });

  test("with every gate shut only leaks flow", () => {
    for (const [index, hood] of HOODS.entries()) typeInto("Flow", `A${11 + index}`, `shut ${hood}`);
    expect(readOne("C9")).toBe("none");
    const rows = solved();
    for (const hood of HOODS) expect(rows[hood]!.gate).toBe("shut");
    expectNear(numberOf(rows.Fan!.leak), numberOf(rows.Fan!.airflow), 0.55);
    expect(read("C5:C6").flat()).toEqual(["0", "0"]);
  });

  test("scenarios agree with the gates set above, leave shut hoods blank, and a blank row takes another one", () => {
    const gets = hoods();
    const [all, alone] = read("B67:O68") as [string[], string[]];
    expect([all[1], all[3], all[5], all[7]]).toEqual(HOODS.map((hood) => gets[hood]!.gets));
    expect([alone[1], alone[5], alone[7]]).toEqual(["", "", ""]);
    expect(numberOf(alone[3])).toBeGreaterThan(numberOf(all[3]));
    expect(numberOf(alone[9])).toBeLessThan(numberOf(all[9])); // less at the fan
    expect(alone[12]).toMatch(/^trunk: .* dust settles: /); // the widest duct is the slowest
    expect(read("A67:A71").flat()).toEqual(["settles", "settles", "settles", "", ""]);

    typeInto("Flow", "B61", "sander alone");
    typeInto("Flow", "E61", "open");
    const added = read("B70:O70")[0]!;
    expect(added[0]).toBe("sander alone");
    expect(added.slice(1, 9).map((cell) => cell === "")).toEqual([true, true, true, true, false, false, true, true]);
    expect(numberOf(added[5])).toBeGreaterThan(numberOf(all[5]));
    expect(read("B79:F79")[0]).toEqual([added[0], added[9], added[10], added[11], added[12]]);
  });

  test("the gains are tried for the hood with the smallest share, and the first of them comes true", () => {
    const rows = hoods();
    const share = (hood: string): number => numberOf(rows[hood]!.gets) / numberOf(rows[hood]!.wants);
    const least = HOODS.reduce((worst, hood) => (share(hood) < share(worst) ? hood : worst));
    expect(readOne("B86")).toBe(least);
    const gains = read("A89:C97").map(([run, change, gained]) => ({ run, change, gained }));
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

    typeInto("Flow", `A${11 + HOODS.indexOf(other)}`, `shut ${other}`);
    const after = hoods();
    expectNear(
      numberOf(after[least]!.gets) - numberOf(rows[least]!.gets),
      numberOf(gains[0]!.gained),
      1.05, // two whole numbers and one decimal
    );
  });

  test("another hood can be named", () => {
    typeInto("Flow", "B85", "router table");
    expect(readOne("B86")).toBe("router table");
    const runs = read("A89:A107").flat();
    expect(runs).toContain("south main"); // on its way to the fan
    expect(runs).not.toContain("north main"); // not on its way, and without a gate or a leak
  });

  test("the fan works at a point of its curve", () => {
    const rows = solved();
    expect(read("B26:B27", "Fan").flat()).toEqual([rows.Fan!.airflow, rows.Fan!.suction]);
    const curve = read("A9:B17", "Fan").map((line) => line.map(numberOf) as [number, number]);
    const next = curve.findIndex(([airflow]) => airflow > numberOf(rows.Fan!.airflow));
    expect(numberOf(rows.Fan!.suction)).toBeLessThan(curve[next - 1]![1]);
    expect(numberOf(rows.Fan!.suction)).toBeGreaterThan(curve[next]![1]);
  });

  test("the headings follow the units cell", () => {
    expect(read("A8:B8", "Fan").flat()).toEqual(["Airflow (cfm)", "Pressure printed (in.w.g.)"]);
    expect(read("D8:E8", "Fan").flat()).toEqual(["Airflow (cfm)", "Fan static pressure (in.w.g.)"]);
    typeInto("Start", "B6", "SI");
    expect(read("A8:B8", "Fan").flat()).toEqual(["Airflow (m³/h)", "Pressure printed (Pa)"]);
    expect(read("D8:E8", "Fan").flat()).toEqual(["Airflow (m³/h)", "Fan static pressure (Pa)"]);
    expect(readOne("R10")).toBe("Hood gets (m³/h)");
  });
});
