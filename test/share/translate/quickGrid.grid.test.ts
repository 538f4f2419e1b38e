/**
 * A few calls of every function as plain formulas, computed in the grid of the local sheet (an engine that is not ours), against the
 * function itself: seeded inputs, each argument left blank or wrong, typed into the call, and over ranges. The engines' tests take
 * many more inputs; this one is quick, so that `npm run mutate` can ask it.
 */
import { lossFamilies } from "../../../src/reference/lossFamilies";
import type { UnitSystem } from "../../../src/reference/quantities";
import { cellAddress } from "../../../src/sheets/address";
import type { CellValue } from "../../../src/sheets/workbook";
import { type Sample, samples } from "./corpus";
import { ours } from "./ourFunctions";
import type { Given } from "./plainBook";
import { seeded } from "./random";
import { wholeCalls } from "./wholeCalls";
import { type Answer, type Expected, wrongIn } from "./wrongInGrid";

/** What stands in an argument's place besides what belongs there. */
const ODD: readonly CellValue[] = [null, 0, -1, 1e9, "no such word"];
const LOTS = 2;

/** Rows of inputs by lot, and below them rows that are odd throughout. */
function rowsOf({ inputs }: Sample, system: UnitSystem): CellValue[][] {
  const random = seeded(7);
  const lots = Array.from({ length: LOTS }, () => inputs(random, system));
  return [...lots, ...ODD.map((value) => lots[0]!.map(() => value))];
}

/** Which row each argument of a call comes from: one row throughout, or the first row but for one odd argument. */
const callsOver = (width: number): number[][] => [
  ...Array.from({ length: LOTS }, (_, row) => new Array<number>(width).fill(row)),
  ...Array.from({ length: width }, (_, odd) =>
    ODD.map((_value, kind) => Array.from({ length: width }, (__, at) => (at === odd ? LOTS + kind : 0))),
  ).flat(),
];

const letter = (index: number): string => String.fromCharCode(65 + index);
const literal = (value: CellValue): string =>
  value === null ? "" : typeof value === "string" ? `"${value}"` : String(value);

/** How an argument is written: as a cell, or typed into the call. */
const WAYS = [
  { sheet: "cells", system: "IP", write: (_: CellValue, row: number, at: number) => `${letter(at)}${row + 1}` },
  { sheet: "typed", system: "SI", write: (value: CellValue) => literal(value) },
] as const;

const callOf = (name: string, args: readonly string[], units: readonly string[]): string =>
  `=DUCT.${name}(${[...args, ...units.map((one) => `"${one}"`)].join(",")})`;

test.each(samples)("$name: from cells, typed into the call, and over a range", (sample) => {
  const { name, shared = [] } = sample;
  const expected: Expected[] = [];
  const given = WAYS.map(({ sheet, system, write }): Given => {
    const units = sample.units ? [system] : [];
    const rows = rowsOf(sample, system);
    const formulas = callsOver(rows[0]!.length).map((from, index) => {
      const inputs = from.map((row, at) => rows[row]![at]!);
      const isLeftOut = (value: CellValue): boolean => value === null && sheet === "typed";
      const args = inputs.map((value) => (isLeftOut(value) ? null : [[value]]));
      const answer = ours(name, [...args, ...units.map((one) => [[one]])]);
      const [at, call] = [
        `J${index + 1}`,
        callOf(
          name,
          inputs.map((value, at) => write(value, from[at]!, at)),
          units,
        ),
      ];
      expected.push({
        sheet,
        at,
        call: `${call} of ${inputs.join()}`,
        answer: answer === "refused" ? answer : answer[0]![0]!,
      });
      return [at, call] as const;
    });
    return { name: sheet, rows: sheet === "cells" ? rows : [], formulas: Object.fromEntries(formulas) };
  });
  // Over all rows at once: the odd ones stand among them, blank, 0 and wrong.
  const units = sample.units ? ["IP"] : [];
  const { rows } = given[0]!;
  const columns = rows[0]!.map((_, at) =>
    rows.slice(0, shared.includes(at) ? 1 : rows.length).map((row) => [row[at]!]),
  );
  const call = callOf(
    name,
    columns.map(({ length }, at) => `${letter(at)}1:${letter(at)}${length}`),
    units,
  );
  const answers = ours(name, [...columns, ...units.map((one) => [[one]])]) as Answer[][];
  answers.forEach(([answer], row) => expected.push({ sheet: "range", at: `J${row + 1}`, call, answer: answer! }));
  expect(wrongIn([...given, { name: "range", rows, formulas: { J1: call } }], expected)).toEqual([]);
});

const wholes = wholeCalls(0.05);

test.each(wholes.names)("%s", (name) => {
  const given = wholes.given.filter((sheet) => sheet.name.startsWith(`${name} `));
  const expected = wholes.expected.filter((one) => one.name === name);
  expect(
    wrongIn(
      given,
      expected.map((one) => ({ ...one, call: one.inputs.join() })),
      "IP",
    ),
  ).toEqual([]);
});

test("a column beside a row gives a table, and is blank where either is", () => {
  const [flows, sizes] = [
    [400, 0, "wide"],
    [4, null, 6],
  ] as const;
  const rows: CellValue[][] = [[null, ...sizes], ...flows.map((flow) => [flow])];
  const call = "=DUCT.VELOCITY(A2:A4,B1:D1)";
  const answers = ours("VELOCITY", [flows.map((flow) => [flow]), [[...sizes]]]) as Answer[][];
  const expected = answers.flatMap((line, row) =>
    line.map((answer, column) => ({
      sheet: "S",
      at: cellAddress(8 + column, 1 + row),
      call,
      answer,
    })),
  );
  expect(expected.map(({ answer }) => answer)).toEqual([
    expect.any(Number),
    "",
    expect.any(Number),
    "",
    "",
    "",
    "refused",
    "",
    "refused",
  ]);
  expect(wrongIn([{ name: "S", rows, formulas: { H1: call } }], expected)).toEqual([]);
});

/** At the first printed point of each fitting or hood, in SI, and on the way to its last, in I-P. */
test("each fitting by its shape and angle", () => {
  const asked = lossFamilies.flatMap(({ key, points, shape, angle }) =>
    (
      [
        ["SI", 0, 0.001],
        ["IP", 0.4, 0.0254],
      ] as const
    ).map(([system, part, unit]) => {
      const [first, last] = [points[0]!, points.at(-1)!];
      const between = (from: number | null, to: number | null): number | null =>
        from === null || to === null ? null : from + part * (to - from);
      const x = between(first.shape, last.shape);
      const turn = between(first.angle, last.angle) ?? (angle === null ? null : 75);
      return { system, inputs: [key, x !== null && shape?.quantity === "diameter" ? x / unit : x, turn] };
    }),
  );
  const formulas = asked.map(({ system }, index) => {
    const row = index + 1;
    return [`H${row}`, `=DUCT.LOSSCOEFFICIENT(A${row},B${row},C${row},"${system}")`];
  });
  const expected = asked.map(({ system, inputs }, index) => {
    const answer = ours("LOSSCOEFFICIENT", [...inputs.map((value) => [[value]]), [[system]]]);
    const call = `${inputs.join()} ${system}`;
    return { sheet: "S", at: `H${index + 1}`, call, answer: answer === "refused" ? answer : answer[0]![0]! };
  });
  expect(expected.filter(({ answer }) => typeof answer === "number").length).toBeGreaterThan(asked.length / 2);
  const given = {
    name: "S",
    rows: asked.map(({ inputs }) => inputs),
    formulas: Object.fromEntries(formulas) as Record<string, string>,
  };
  expect(wrongIn([given], expected, "IP")).toEqual([]);
});

test("lists that nobody offered, wildcards and counts at their ends", () => {
  const lists = [
    "elbow 1.71 x2; branch 33",
    "elbow*",
    "elb?w 1.5",
    "elbow 1.5~",
    "0.3 x1000",
    "0.3 x1001",
    "0.3 x0",
    "1;1;1;1;1;1;1;1",
    "1;1;1;1;1;1;1;1;1",
    "",
  ];
  const rows = lists.map((list) => [400, 6, list]);
  const answers = rows.map((inputs) =>
    ours("FITTINGLOSS", [...inputs.map((value) => [[value]]), null, null, [["IP"]]]),
  );
  const formulas = rows.map((_, row) => [
    `H${row + 1}`,
    `=DUCT.FITTINGLOSS(A${row + 1},B${row + 1},C${row + 1},,,"IP")`,
  ]);
  const expected = answers.map((answer, row) => ({
    sheet: "S",
    at: `H${row + 1}`,
    call: lists[row]!,
    // The plain formulas read eight entries; the function reads more.
    answer: answer === "refused" || lists[row]!.split(";").length > 8 ? "refused" : answer[0]![0]!,
  }));
  expect(
    wrongIn([{ name: "S", rows, formulas: Object.fromEntries(formulas) as Record<string, string> }], expected, "IP"),
  ).toEqual([]);
});

test.each([2, 3, 4])("a curve of %d points that fills its range to the last row", (count) => {
  const rows: CellValue[][] = [
    [0, 10, 50],
    [300, 9, 300],
    [700, 6, 650],
    [1000, 2, 990],
  ].slice(0, count);
  rows.forEach((row, at) => (row[2] = Number(rows.at(-1)![0]) * (0.2 + 0.25 * at)));
  const [curve, asked] = [rows.map((row) => row.slice(0, 2)), rows.map((row) => [row[2]])];
  const [read, scaled] = [ours("FANPRESSURE", [curve, asked, [["IP"]]]), ours("FANLAW", [curve, [[1.2]], null, null])];
  const formulas = { H1: `=DUCT.FANPRESSURE(A1:B${count},C1:C${count},"IP")`, J1: `=DUCT.FANLAW(A1:B${count},1.2)` };
  const cells = (answers: readonly (readonly Answer[])[], left: number): Expected[] =>
    answers.flatMap((line, row) =>
      line.map((answer, column) => ({
        sheet: "S",
        at: cellAddress(left + column, row + 1),
        call: String(count),
        answer,
      })),
    );
  const expected = [...cells(read as Answer[][], 8), ...cells(scaled as Answer[][], 10)];
  expect(expected.every(({ answer }) => typeof answer === "number")).toBe(true);
  expect(wrongIn([{ name: "S", rows, formulas }], expected, "IP")).toEqual([]);
});
