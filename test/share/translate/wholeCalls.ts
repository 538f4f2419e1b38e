/** Calls that take a range as a whole or answer with several cells: a sheet each, and where each answer stands. */
import { referenceTables } from "../../../src/reference";
import type { UnitSystem } from "../../../src/reference/quantities";
import type { CellValue } from "../../../src/sheets/workbook";
import { ours } from "./ourFunctions";
import type { Given } from "./plainBook";
import { type Random, seeded } from "./random";
import { type Expected, SYSTEMS } from "./sampleSheets";
import { cellAddress } from "../../../src/sheets/address";

const AIRFLOWS = 5; // that one call reads from a curve

interface Kind {
  readonly name: string;
  readonly calls: number;
  readonly inputs: (random: Random, units: UnitSystem) => CellValue[][];
  readonly args: (row: number, units: UnitSystem, inputs: readonly (readonly CellValue[])[]) => string; // rows from 1
  readonly values: (inputs: readonly (readonly CellValue[])[], units: UnitSystem) => unknown[];
}

const column = (inputs: readonly (readonly CellValue[])[], at: number): CellValue[][] =>
  inputs.map((row) => [row[at]!]);

/** A falling, rising or humped curve; its rows in any order, some blank, a heading now and then. */
function curve(random: Random): CellValue[][] {
  const points = Array.from({ length: random.pick([2, 3, 4, 7]) }, () => [
    random.between(0, 1500),
    random.between(0, 12),
  ]);
  const heading = random.maybe(true, 0.4) === null ? [] : [["Airflow", "Pressure"]];
  const rows: CellValue[][] = [...heading, ...points];
  while (rows.length < 8) rows.push([null, null]);
  return rows;
}

const KINDS: readonly Kind[] = [
  {
    name: "FANPRESSURE",
    calls: 40,
    inputs: (random) => {
      const rows = curve(random);
      const flows = rows.flatMap(([flow]) => (typeof flow === "number" ? [flow] : []));
      const [least, most] = [Math.min(...flows), Math.max(...flows)];
      const asked = (): number => (random.maybe(true, 0.9) === null ? 2500 : random.between(least, most));
      return rows.map((row, at) => [...row, at < AIRFLOWS ? asked() : null]);
    },
    args: (row, units) => `A${row}:B${row + 7},C${row}:C${row + AIRFLOWS - 1},"${units}"`,
    values: (inputs, units) => [
      inputs.map((row) => row.slice(0, 2)),
      inputs.slice(0, AIRFLOWS).map((row) => [row[2]]),
      [[units]],
    ],
  },
  {
    name: "FANLAW",
    calls: 40,
    inputs: (random) =>
      curve(random).map((row, at) => [
        ...row,
        ...(at === 0
          ? [random.between(0.3, 2), random.maybe(random.between(0.5, 1.5)), random.maybe(random.between(0.5, 2))]
          : [null, null, null]),
      ]),
    args: (row) => `A${row}:B${row + 7},C${row},D${row},E${row}`,
    values: (inputs) => [inputs.map((row) => row.slice(0, 2)), ...[2, 3, 4].map((at) => [[inputs[0]![at]]])],
  },
  {
    name: "OPERATINGPOINT",
    calls: 30,
    inputs: (random) => {
      const rows = curve(random);
      const fixed = random.maybe(random.between(0, 2));
      const design = [random.between(50, 2000), (fixed ?? 0) + random.between(-0.1, 6), fixed];
      return rows.map((row, at) => [...row, ...(at === 0 ? design : [null, null, null])]);
    },
    args: (row, units) => `A${row}:B${row + 7},C${row},D${row},E${row},"${units}"`,
    values: (inputs, units) => [
      inputs.map((row) => row.slice(0, 2)),
      ...[2, 3, 4].map((at) => [[inputs[0]![at]]]),
      [[units]],
    ],
  },
  {
    name: "TRAVERSE",
    calls: 200,
    inputs: (random, units) =>
      Array.from({ length: 6 }, (_, at) => [
        ...[0, 1].map(() => {
          const reading = units === "IP" ? random.between(0.001, 3) : random.between(1, 55);
          return random.maybe(random.pick([reading, reading, reading, "still", "Not read"]), 0.97);
        }),
        at === 0 ? random.pick([null, "velocity", "Velocity Pressure"]) : null,
        at === 0 ? random.maybe(units === "IP" ? random.between(0.06, 0.08) : random.between(1, 1.3), 0.6) : null,
      ]),
    args: (row, units) => `A${row}:B${row + 5},C${row},D${row},"${units}"`,
    values: (inputs, units) => [inputs.map((row) => row.slice(0, 2)), [[inputs[0]![2]]], [[inputs[0]![3]]], [[units]]],
  },
  {
    name: "DIFFERENCE",
    calls: 60,
    inputs: (random) => {
      const reading = (mean: number): CellValue => {
        const value = mean + random.between(-1, 1);
        return random.pick([value, value, value, value, "not read", value]);
      };
      const [before, after, further] = [random.between(5, 60), random.between(5, 60), random.between(5, 60)];
      const isKnown = random.maybe(true, 0.4) !== null;
      const first = [
        isKnown ? random.between(0.5, 8) : null,
        isKnown ? random.maybe(random.between(0, 2)) : null,
        random.pick([null, "either", "Less", "more", "up"]),
      ];
      return Array.from({ length: 3 }, (_, at) => [
        ...[before, random.maybe(before) ?? after, further].map(reading),
        ...(at === 0 ? first : [null, null, null]),
      ]);
    },
    args: (row, _, inputs) =>
      `A${row}:A${row + 2},B${row}:B${row + 2},D${row},E${row},${inputs[0]![3] === null ? `C${row}:C${row + 2}` : ""},F${row}`,
    values: (inputs) => [
      ...[0, 1].map((at) => column(inputs, at)),
      ...[3, 4].map((at) => [[inputs[0]![at]]]),
      inputs[0]![3] === null ? column(inputs, 2) : null,
      [[inputs[0]![5]]],
    ],
  },
  {
    name: "TRAVERSEPOINTS",
    calls: 200,
    inputs: (random, units) => [
      [
        random.between(0.05, 1) / (units === "IP" ? 0.0254 : 0.001),
        random.pick([null, 4, 6, 8, 10]),
        random.pick([null, "log-linear"]),
      ],
      ...Array.from({ length: 10 }, () => [null, null, null]),
    ],
    args: (row, units) => `A${row},B${row},C${row},"${units}"`,
    values: (inputs, units) => [...[0, 1, 2].map((at) => column(inputs.slice(0, 1), at)), [[units]]],
  },
  {
    name: "REFERENCE", // one value and its source; the table's name stands in the call
    calls: 200,
    inputs: (random) => {
      const { name, columns, rows } = random.pick(referenceTables);
      const key = String(random.pick(rows)[0]);
      const { name: head, unit } = random.pick(columns);
      const header = unit === "" ? head : `${head} (${unit})`;
      return [[name, random.pick([key, key.toUpperCase(), ` ${key} `, "no such row"]), header]];
    },
    args: (row, _, inputs) => `"${String(inputs[0]![0])}",B${row},C${row}`,
    values: (inputs) => [0, 1, 2].map((at) => column(inputs, at)),
  },
];

/** Sheets of such calls and what the functions answer, cell by cell; a blank cell of an answer is "". */
/** @param share of the calls of each kind */
export function wholeCalls(share = 1): {
  given: readonly Given[];
  expected: readonly Expected[];
  names: readonly string[];
} {
  const expected: Expected[] = [];
  const given = KINDS.flatMap((kind, index) =>
    SYSTEMS.map((system, half): Given => {
      const random = seeded(90_000 + 1000 * index + half);
      const sheet = `${kind.name} ${system}`;
      const rows: CellValue[][] = [];
      const formulas: Record<string, string> = {};
      for (let sample = 0; sample < share * kind.calls; sample++) {
        const first = rows.length + 1;
        const inputs = kind.inputs(random, system);
        rows.push(...inputs);
        formulas[`H${first}`] = `=DUCT.${kind.name}(${kind.args(first, system, inputs)})`;
        const answer = ours(kind.name, kind.values(inputs, system));
        const cells = answer === "refused" ? [[answer]] : answer;
        cells.forEach((line, down) =>
          line.forEach((value, right) =>
            expected.push({
              name: kind.name,
              sheet,
              at: cellAddress(8 + right, first + down),
              inputs: inputs[0]!,
              answer: value,
            }),
          ),
        );
      }
      return { name: sheet, rows, formulas };
    }),
  );
  return { given, expected, names: KINDS.map(({ name }) => name) };
}
