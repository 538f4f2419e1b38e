/** What the sheets of a budget show, computed by the grid's library with our own functions. */
import { PICTURE_CURVE, PICTURE_POINT, PICTURE_SYSTEM } from "../../../src/sheets/book/fan/fanLayout";
import type { UnitSystem } from "../../../src/reference/quantities";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { gridOfBook, type Shows } from "../../support/gridOfBook";
import { type SheetKey, sheetKeys } from "../../../src/sheets/sheetKeys";

const shows = (units: UnitSystem, contents: "example" | "empty", sheets: readonly SheetKey[] = sheetKeys): Shows =>
  gridOfBook(budgetBook({ units, contents, sheets }, { sheets: [], names: [] }));

const near = (value: unknown, expected: number, margin: number): void => {
  expect(typeof value).toBe("number");
  expect(Math.abs(Number(value) - expected)).toBeLessThanOrEqual(margin);
};
const sum = (values: readonly unknown[]): number => values.reduce<number>((total, value) => total + Number(value), 0);

describe.each(["IP", "SI"] as const)("an empty budget in %s", (units) => {
  const grid = shows(units, "empty");

  test("shows no error, and says what to fill in", () => {
    expect(grid.errors()).toEqual([]);
    expect(grid.value("Budget", "B8")).toBe("Fill in the sheet Runs first");
    expect(grid.value("Flow", "B10")).toBe("Fill in the sheets Runs and Fan first");
  });

  test("claims no number: totals are blank, not 0", () => {
    const totals = [
      ...grid.column("Runs", "F5:F7"),
      ...grid.column("Budget", "F4:F7"),
      ...grid.column("Budget", "K4:K7"),
      ...grid.column("Flow", "C5:C9"),
      ...grid.column("Flow", "G5:G8"),
      ...grid.column("Fan", "B26:B29"),
      ...grid.column("Fan", "A31:A31"),
      ...grid.column("Summary", "B40:B43"),
      ...grid.column("Summary", "B47:B48"),
    ];
    expect(totals.filter((value) => value !== "")).toEqual([]);
  });
});

describe("an empty budget that is filled in", () => {
  const grid = shows("IP", "empty", ["summary"]); // and those that it reads
  const type = (sheet: string, cells: Readonly<Record<string, string>>): void =>
    Object.entries(cells).forEach(([at, text]) => grid.type(sheet, at, text));

  test("answers from the first run on, and flows from the second point of the curve on", () => {
    type("Runs", { B9: "saw", C9: "fan", D9: "350", E9: "4", F9: "10", H9: "plain end" });
    expect(grid.value("Budget", "C9")).toBe(350);
    // by hand: 4 in is pi/4 (4/12)^2 = 0.0872665 ft2; 350/0.0872665 = 4010.7 fpm
    near(grid.value("Budget", "D9"), 4010.7, 0.05);
    // what a gauge reads is lower than the total pressure by the velocity pressure: (4010.7/4005)^2 = 1.003 in.w.g.
    near(Number(grid.value("Budget", "P9")) - Number(grid.value("Budget", "J9")), 1.003, 0.005);
    expect(grid.value("Budget", "K5")).toBe(grid.value("Budget", "P9"));
    expect(grid.value("Runs", "A9")).toBe("ok: 4011 fpm");
    expect(grid.value("Runs", "P9")).toBe("wood dust");
    expect(grid.value("Flow", "B10")).toBe("Fill in the sheets Runs and Fan first");
    type("Fan", { A9: "0", B9: "8", A10: "800", B10: "1" });
    expect(grid.value("Flow", "B11")).toBe("saw");
    expect(grid.value("Flow", "B12")).toBe("Fan");
    expect(grid.value("Flow", "C12")).toBe(grid.value("Flow", "C11"));
    expect(grid.value("Summary", "A8")).toBe("saw");
    expect(grid.value("Flow", "B66")).toBe("No run of the sheet Runs has a gate");
    expect(grid.errors()).toEqual([]);
  });

  test("says where no device is typed that no filter is counted, until one is or a 0 says that there is none", () => {
    const said = (): unknown[] =>
      [["Runs", "H6"], ["Budget", "N7"], ["Flow", "C1"], ["Summary", "D43"]].map(([sheet, at]) => grid.value(sheet!, at!)); // prettier-ignore
    const solved = "Ducts and leaks of Runs with the fan of Fan, solved as one network. ";
    const see = "No separator, filter or bag is counted: see Runs H6.";
    const none = ["No separator, filter or bag is counted: type its loss under Device loss, 0 for none.", see, `${solved}${see}`, see]; // prettier-ignore
    expect(said()).toEqual(none);
    expect(grid.value("Summary", "A43")).toBe("which needs");
    grid.type("Runs", "L9", "0");
    expect(said()).toEqual(["", "", solved, ""]);
    grid.type("Runs", "L9", "1");
    grid.type("Runs", "M9", "350");
    expect(said()).toEqual(["", "", solved, ""]);
    grid.clear("Runs", "L9:M9");
    expect(said()).toEqual(none);
    grid.clear("Runs", "B9:H9");
    expect(said()).toEqual(["", "", solved, ""]);
  });
});

const examples = {
  // wanted at the hoods, typed here by hand; area of the first hood's duct; density by p/(R T), with R = 287.05 J/(kg K)
  // and the standard atmosphere's p = 101325 (1 - 2.25577e-5 z)^5.2559 (ASHRAE Handbook, Psychrometrics)
  IP: {
    wanted: 400 + 550 + 400 + 400, // cfm
    velocity: (airflow: number) => airflow / ((Math.PI / 4) * (4 / 12) ** 2), // fpm
    density: (101325 / (287.05 * 294.26)) * 0.062428, // 70 °F, sea level, in lb/ft3
  },
  SI: {
    wanted: 600 + 900 + 1150 + 400, // m3/h
    velocity: (airflow: number) => airflow / 3600 / ((Math.PI / 4) * 0.1 ** 2), // m/s
    density: (101325 * (1 - 2.25577e-5 * 520) ** 5.2559) / (287.05 * 292.15), // 19 °C, 520 m
  },
} as const;

describe.each(["IP", "SI"] as const)("the example in %s", (units) => {
  const grid = shows(units, "example");
  const { wanted, velocity, density } = examples[units];

  test("shows no error", () => {
    expect(grid.errors()).toEqual([]);
  });

  test("density and transport velocity stand on Start", () => {
    near(Number(grid.value("Start", "B9")) / density, 1, 3e-4); // the constant of air differs in its fifth digit
    // DGUV Information 209-044: 20 m/s, which is 20/0.00508 = 3937.0 fpm
    near(grid.value("Start", "B11"), units === "SI" ? 20 : 3937, 0.05);
  });

  test("what the hoods want is what was typed, on Budget and on Flow", () => {
    expect(grid.value("Budget", "F4")).toBe(wanted);
    expect(grid.value("Flow", "C6")).toBe(wanted);
  });

  test("velocity is airflow over the duct's area", () => {
    near(Number(grid.value("Budget", "D9")) / velocity(Number(grid.value("Budget", "C9"))), 1, 1e-9);
    near(Number(grid.value("Flow", "D11")) / velocity(Number(grid.value("Flow", "C11"))), 1, 1e-9);
  });

  test("what flows in flows out, and the share lost is leaks over air", () => {
    const airflow = grid.column("Flow", "C11:C20").map(Number);
    const leaks = grid.column("Flow", "F11:F18");
    const [first, second, third, fourth, one, other, trunk, separator] = airflow as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    near(one, first + second, 1e-6 * trunk);
    near(other, third + fourth, 1e-6 * trunk);
    near(trunk, one + other, 1e-6 * trunk);
    near(separator, trunk + Number(leaks[7]), 1e-6 * trunk);
    near(grid.value("Flow", "G5"), sum(leaks), 1e-6 * trunk);
    near(grid.value("Flow", "G6"), sum(leaks) / airflow[9]!, 1e-9);
    expect(grid.value("Summary", "B48")).toBe(grid.value("Flow", "G6"));
    expect(grid.value("Summary", "D47")).toBe("");
    grid.clear("Runs", "R9:T48");
    const none = "No leak is counted: none before the fan is entered on Runs for the gates as they are.";
    expect(["B47", "B48", "D47"].map((at) => grid.value("Summary", at))).toEqual([0, 0, none]);
    grid.undo();
  });

  test("a hood gets its run's air less its leak, on Flow, in the scenario with all gates open, and on Summary", () => {
    for (const [index, letter] of ["C", "E", "G", "I"].entries()) {
      const row = 11 + index;
      const gets = Number(grid.value("Flow", `C${row}`)) - Number(grid.value("Flow", `F${row}`));
      near(grid.value("Flow", `R${row}`), gets, 1e-9 * gets);
      near(grid.value("Flow", `${letter}67`), gets, 1e-6 * gets);
      near(grid.value("Summary", `B${8 + index}`), gets, 1e-9 * gets);
      expect(grid.value("Summary", `D${8 + index}`)).toBe(gets / Number(grid.value("Runs", `D${9 + index}`)));
    }
  });

  test("sealing gives the hoods less than the leaks add up to", () => {
    const gains = grid.column("Flow", "U11:U14").map(Number);
    gains.forEach((gain) => expect(gain).toBeGreaterThan(0));
    near(grid.value("Flow", "G7"), sum(gains), 1e-9 * sum(gains));
    expect(sum(gains)).toBeLessThan(Number(grid.value("Flow", "G5")));
  });

  test("scenarios are told again in short, each with its slowest run", () => {
    const names = grid.column("Flow", "B58:B63").filter((name) => name !== "");
    expect(grid.column("Flow", "B76:B81").filter((name) => name !== "")).toEqual(names);
    expect(grid.value("Flow", "C76")).toBe(grid.value("Flow", "K67"));
    expect(grid.value("Flow", "D76")).toBe(grid.value("Flow", "L67"));
    for (const row of [76, 77, 78]) expect(grid.value("Flow", `F${row}`)).toMatch(/^[a-z ]+: [\d.]+ (fpm|m\/s), /);
  });

  test("the picture's system line passes through the point where the fan works, and the fan's curve too", () => {
    const points = (letters: string): [number, number][] =>
      grid.column("Fan", `A${PICTURE_CURVE}:A${PICTURE_POINT - 1}`).flatMap((x, index): [number, number][] => {
        const y = grid.value("Fan", `${letters}${PICTURE_CURVE + index}`);
        return typeof y === "number" ? [[Number(x), y]] : [];
      });
    const [airflow, pressure] = ["A", "D"].map((letter) => Number(grid.value("Fan", `${letter}${PICTURE_POINT}`))) as [
      number,
      number,
    ];
    expect([airflow, pressure]).toEqual([grid.value("Flow", "C20"), grid.value("Flow", "E20")]);
    const [x, y] = points("C").at(-1)!;
    near(y / pressure / (x / airflow) ** 2, 1, 1e-9);
    const curve = points("B");
    const next = curve.findIndex(([flow]) => flow > airflow);
    const [left, right] = [curve[next - 1]!, curve[next]!];
    // the curve is smooth between its points, so it lies near the straight line, not on it
    const straight = left[1] + ((right[1] - left[1]) * (airflow - left[0])) / (right[0] - left[0]);
    near(pressure / straight, 1, 0.02);
  });
});

describe("a change of the example", () => {
  let grid: Shows;
  beforeEach(() => {
    grid = shows("IP", "example", ["summary"]);
  });

  test("while nothing says where the fan works, its curve is still drawn over airflow, and no point of the system", () => {
    grid.type("Runs", "D9", "what?"); // the first run's airflow
    expect(grid.value("Flow", "C20")).not.toEqual(expect.any(Number));
    const airflows = grid.column("Fan", `A${PICTURE_CURVE}:A${PICTURE_POINT}`);
    expect(airflows.every((airflow) => typeof airflow === "number")).toBe(true);
    const typed = grid.column("Fan", "A9:A23").filter((value): value is number => typeof value === "number");
    expect(Math.max(...airflows.map(Number))).toBe(Math.max(...typed));
    expect(
      grid.column("Fan", `B${PICTURE_CURVE}:B${PICTURE_CURVE + 4}`).every((pressure) => Number(pressure) > 0),
    ).toBe(true);
    expect(grid.value("Fan", `C${PICTURE_SYSTEM}`)).toBe("#N/A");
    expect(grid.value("Fan", `D${PICTURE_POINT}`)).toBe("#N/A");
  });

  test("600 cfm at the drum sander do not settle where 400 did", () => {
    // by hand: 5 in is 0.136354 ft2; 400/0.136354 = 2933.5 fpm, 600/0.136354 = 4400.3 fpm; its gate leaks less than 1 cfm
    expect(grid.value("Runs", "A11")).toMatch(/^settles: 293\d fpm; 4 in would carry it \(458\d fpm\)$/);
    expect(grid.value("Runs", "F7")).toBe(1);
    grid.type("Runs", "D11", "600");
    expect(grid.value("Runs", "A11")).toMatch(/^ok: 440\d fpm$/);
    expect(grid.value("Runs", "F7")).toBe(0);
    expect(grid.value("Budget", "F4")).toBe(1950);
  });

  test("a lighter dust chosen on Start settles less, unless a run says that it carries another", () => {
    grid.type("Start", "B10", "fine light dust"); // 2500 fpm, as its row of the table is printed
    near(grid.value("Start", "B11"), 2500, 0.05);
    expect(grid.value("Runs", "A11")).toMatch(/^ok: 293\d fpm$/);
    grid.type("Runs", "P11", "wood dust");
    expect(grid.value("Runs", "A11")).toMatch(/^settles: 293\d fpm; 4 in would carry it \(458\d fpm\)$/);
  });

  test("a gate shut on Flow takes its hood out and leaves Runs alone", () => {
    grid.type("Flow", "A12", "shut planer");
    expect(grid.value("Flow", "C6")).toBe(1200); // 1750 less the planer's 550
    expect(grid.value("Flow", "C9")).toBe("band saw; drum sander; router table");
    expect(grid.value("Flow", "H12")).toBe("shut");
    expect(grid.column("Summary", "A8:A11")).toEqual(["band saw", "drum sander", "router table", ""]);
    expect(grid.value("Runs", "A10")).toMatch(/^ok/);
  });

  test("a wrong row is told beside it, what depends on it waits, and SOLVE refuses the whole in one error", () => {
    grid.type("Runs", "C12", "nowhere");
    expect(grid.errors().filter((words) => words.startsWith(`Flow!B10: #VALUE! To of run "router table"`)).length).toBe(
      1,
    );
    expect(grid.value("Runs", "A12")).toMatch(/^ok: \d+ fpm; waiting for nowhere, which no row has/);
    expect(grid.column("Budget", "F4:F7")).toEqual(["see C3", "see C3", "see C3", "see C3"]);
    expect(grid.value("Budget", "C3")).toMatch(/^Look: Runs row 12, router table: waiting for nowhere/);
    expect(grid.column("Flow", "G5:G8")).toEqual(["see B10", "see B10", "see B10", "see B10"]);
    expect(grid.value("Summary", "B40")).toBe("see Flow B10");
  });

  test("headings follow the units cell", () => {
    expect(grid.value("Runs", "D8")).toBe("Airflow (cfm)");
    grid.type("Start", "B6", "SI");
    expect(grid.value("Runs", "D8")).toBe("Airflow (m³/h)");
    expect(grid.value("Fan", "B8")).toBe("Pressure printed (Pa)");
    expect(grid.value("Fan", "E8")).toBe("Fan static pressure (Pa)");
    expect(grid.value("Start", "C9")).toBe("kg/m³");
  });
});
