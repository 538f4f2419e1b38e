/** Arguments that nobody sane would pass, drawn by lot from a seed, the same on every machine. */

import { allColumns } from "../../src/reference/columnsOfRuns";

export const NUMBERS = [
  ...[0, -0, 1, -1, 2, 4, 6, 0.5, 1.5, 30, 90, 100, 350, 1000, 4005, 1e4],
  ...[5e-324, 1e-310, 2.2250738585072014e-308, 1e-300, 1e-9, 1e9, 1e154, 1e300, 1e308, 1.7976931348623157e308],
  ...[-5e-324, -1e-9, -1e308, NaN, Infinity, -Infinity, 2 ** 31, 2 ** 53, 0.1 + 0.2],
];

export const TEXTS = [
  ...["", " ", "\t\n", "4", "1e5", "1,5", "0x10", "-", "NaN", "Infinity", "#N/A", "=1+1", "'", '"', "<b>x</b>"],
  ...["__proto__", "constructor", "toString", "hasOwnProperty", "prototype", "valueOf", "then", "length"],
  ...[
    "IP",
    "SI",
    "si",
    "elbow",
    "elbow 1.5",
    "elbow 1.5 x2; branch 30",
    "elbow 1.5 x",
    "elbow -1e308 x1e308",
    ";;;",
    "x2",
  ],
  ...["flanged end", "plain end", "open bare slot", "shut seated", "galvanised steel", "pvc pipe", "open", "shut"],
  ...["fan", "a", "b", "a; b", "materials", "fittings", "gates", "key", "velocity", "velocity pressure", "log-linear"],
  ...["cfm", "m³/h", "Pa", "down", "up", "airflow", "pressure", "motor power", "A", "C", "é\u0301", "\ud800", "\u0000"],
  "x".repeat(10_000),
  "elbow 1.5;".repeat(1000),
];

const RUNS_HEADERS = [...allColumns, "run", " RUN (x) ", "Run", "", null, 7];

export type HostErrorClass = new (code: string, message?: string) => object;

/** Draws arguments; nothing drawn may be changed by whoever receives it, so all of it is frozen. */
export function hostile(random: () => number, HostError: HostErrorClass) {
  const pick = <Item>(items: readonly Item[]): Item => items[Math.floor(random() * items.length)]!;
  const frozen = Object.freeze;

  const object = (): unknown =>
    pick([
      () => frozen({ type: "Double", basicValue: pick(NUMBERS), numberFormat: "0.0" }),
      () => frozen({ type: "String", basicValue: pick(TEXTS) }),
      () => frozen({ type: "Error", basicValue: "#N/A" }),
      () => frozen({ type: "Entity", text: "x", properties: frozen({}) }),
      () => frozen(new HostError("#N/A", "from elsewhere")),
      () => frozen(new HostError("#VALUE!")),
      () => frozen(Object.create(null) as object),
      () => frozen([1, 2]),
    ])();

  const cell = (): unknown => {
    const lot = random();
    if (lot < 0.5) return pick(NUMBERS);
    if (lot < 0.78) return pick(TEXTS);
    if (lot < 0.88) return pick([null, undefined, true, false]);
    return lot < 0.95 ? 10 ** (20 * random() - 8) : object();
  };

  const rows = (count: number, width: () => number): unknown[][] =>
    Array.from({ length: count }, () => Array.from({ length: width() }, cell));

  const sane = (): unknown[][] => [[pick([1, 2, 4, 6, 100, 350, 1000, 0.075, "elbow 1.5", "IP", "SI", "flanged end"])]];

  const matrix = (): unknown[][] => {
    const lot = random();
    if (lot < 0.35) return sane();
    if (lot < 0.75) return [[cell()]];
    const [down, across] = [1 + Math.floor(5 * random()), 1 + Math.floor(5 * random())];
    if (lot < 0.82) return rows(down, () => 1);
    if (lot < 0.88) return rows(1, () => across);
    if (lot < 0.95) return rows(down, () => across);
    if (lot < 0.97) return rows(down, () => Math.floor(4 * random())); // ragged
    if (lot < 0.985) return pick<unknown[][]>([[], [[]], [[], []]]);
    return lot < 0.9995 ? rows(down, () => across) : rows(3000, () => 1);
  };

  /**
   * A table of runs that is right in places: real headers, names that join, and hostile cells between.
   *
   * @param spoilt share of the cells that are hostile
   */
  const runsTable = (spoilt: number): unknown[][] => {
    const width = 3 + Math.floor(8 * random());
    const count = 1 + Math.floor(6 * random());
    const asking = random() < 0.5 ? ["Gate", "Airflow"] : []; // some functions answer only where there are both
    const headers = [
      "Run",
      "To",
      "Diameter",
      ...asking,
      ...Array.from({ length: width - 3 }, () => pick(RUNS_HEADERS)),
    ];
    const names = Array.from({ length: count }, (_, index) => `r${index}`);
    return [
      headers,
      ...names.map((name, index) =>
        headers.map((header, column): unknown => {
          if (random() < spoilt) return cell();
          if (column === 0) return name;
          if (column === 1) return index === 0 ? "fan" : names[Math.floor(random() * index)];
          if (column === 2) return pick([4, 5, 6, 100]);
          if (header === "Gate") return pick(["open", "shut", "open", null]);
          if (header === "Airflow") return pick([null, 300, 600]);
          return pick([null, null, "", 0, 1, 0.5, 3, "open", "shut", "flanged end", "elbow 1.5", "open bare slot"]);
        }),
      ),
    ];
  };

  const curve = (spoilt: number): unknown[][] =>
    Array.from({ length: 2 + Math.floor(6 * random()) }, (_, index) => [300 * index, 10 - index]).map((row) =>
      row.map((value) => (random() < spoilt ? cell() : value)),
    );

  const facts = (spoilt: number): unknown[][] =>
    ["airflow", "pressure", "motor power", "inlet diameter", "filter rating"].map((fact) => [
      fact,
      random() < spoilt ? cell() : pick([1, 5, 10, 1000]),
    ]);

  /** Numbers read across a duct, or a table of what was read with gates open. */
  const readings = (spoilt: number): unknown[][] => {
    const headers = ["At", "Open", "Velocity", "Airflow", "Suction", "Drop", "±", "Times", "Meter"];
    const line = (): unknown[] => [pick(["r0", "r0", "r1", "fan"]), pick([null, "r0; r1"]), null, pick([null, 300, 900]), pick([null, 2, 8]), null, pick([null, 4]), null, null]; // prettier-ignore
    const filled = random() < 0.5 ? rowsOf(line) : rowsOf(() => [pick([1, 300, 900]), 2]);
    const spoiled = filled.map((row) => row.map((value) => (random() < spoilt ? cell() : value)));
    return spoiled[0]!.length === headers.length ? [headers, ...spoiled] : spoiled;
  };

  const rowsOf = (line: () => unknown[]): unknown[][] => Array.from({ length: 1 + Math.floor(4 * random()) }, line);

  /** What the tables and names of the functions on whole systems look like, with so many cells spoilt. */
  const shaped: Readonly<Record<string, (spoilt: number) => unknown[][]>> = {
    runs: runsTable,
    curve,
    facts,
    readings,
    scenarios: () => [["one", pick(["r0", "r1", "r0; r1", "r9"])]],
    hood: () => [[pick(["r0", "r1", "r2"])]],
  };

  /** An argument as a host passes it; null where it was left out. */
  const argument = (name: string, calm: boolean): unknown => {
    const shape = shaped[name];
    if (calm && shape !== undefined) return deepFrozen(shape(0));
    if (random() < (calm ? 0.9 : 0.1)) return null;
    return deepFrozen(shape === undefined || random() < 0.2 ? matrix() : shape(0.15));
  };

  /** All arguments of one call. A part of the calls is calm, so that not only refusals are tried. */
  const args = (names: readonly string[]): unknown[] => {
    const calm = names.some((name) => name in shaped) && random() < 0.4;
    return names.map((name) => argument(name, calm));
  };

  const deepFrozen = (rows: unknown[][]): unknown => frozen(rows.map((row) => frozen(row)));

  return { args };
}
