/** The reader of runs tables as a parser: whatever stands in the cells, it gives runs or our refusal, and nothing else. */
import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { toMatrix } from "../../../src/functions/cells";
import { readRuns } from "../../../src/functions/runsTable/readRuns";
import { allColumns } from "../../../src/reference/columnsOfRuns";
import { expectRefusal } from "../../support/coreRefusal";
import { NUMBERS, TEXTS } from "../../support/hostile";

const SEED = 20261127;
const TABLES = 2000; // of each kind
const LONGEST = 600; // characters of a sentence: what a user typed is cut, not repeated for pages

/** The runs of a table in the order of their flow, or the sentence of the refusal; anything else that is thrown, or given, fails. */
function outcome(table: unknown, system: "IP" | "SI" = "IP"): readonly string[] | string {
  try {
    const { runs, rows, network: join } = readRuns(toMatrix(table), system).runs(null);
    runs.forEach(({ row, run }, index) => {
      const { diameter, length, roughness, hoseLength, coefficient, hood, wantedAirflow, leakArea } = run;
      const sizes = [diameter, length, roughness, hoseLength, coefficient, hood ?? 0, wantedAirflow, leakArea];
      const isInOrder = row > (runs[index - 1]?.row ?? -1) && row < rows;
      if (!isInOrder || typeof run.name !== "string" || !sizes.every((size) => size >= 0 && size < Infinity))
        throw new Error(`read as ${JSON.stringify(run)}`);
    });
    const network = join();
    return network.order.map((place) => network.runs[place]!.name);
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const isSentence = /^[^]+ must be [^]+; got [^]+$/.test(error.message) && error.message.length <= LONGEST;
    if (!isSentence) throw new Error(`${error.message.length} characters: ${error.message.slice(0, LONGEST)}`);
    return error.message;
  }
}

/** All of it frozen, so that whoever writes into an argument throws. */
const frozen = (rows: unknown[][]): unknown => Object.freeze(rows.map((row) => Object.freeze(row)));

const PROTOTYPE = ["__proto__", "constructor", "toString", "hasOwnProperty", "valueOf"];
const anything = fc.constantFrom<unknown>(
  ...NUMBERS,
  ...TEXTS,
  null,
  undefined,
  true,
  false,
  {},
  [],
  Object.create(null),
);
const heading = fc.constantFrom<unknown>(
  ...allColumns,
  ...PROTOTYPE,
  "run ",
  "RUN (x)",
  "Ru n",
  "",
  null,
  7,
  "x".repeat(10_000),
);
const name = fc.constantFrom<unknown>(
  "a",
  "b",
  "B ",
  "c-d",
  "c d",
  7,
  "7",
  "fan",
  "outside",
  ...PROTOTYPE,
  "x".repeat(10_000),
);
const usual = fc.constantFrom<unknown>(
  4,
  6,
  0.5,
  null,
  "",
  "open",
  "shut",
  "elbow 1.5",
  "flanged end",
  "galvanised steel",
);

const ragged = fc.array(fc.array(fc.oneof(heading, anything), { maxLength: 8 }), { maxLength: 6 });

/** A table whose first row has the headers that it must have, and others; its names join at random, themselves included. */
const likely = fc
  .tuple(fc.array(heading, { maxLength: 8 }), fc.array(fc.tuple(name, name), { minLength: 1, maxLength: 6 }))
  .chain(([more, joins]) => {
    const row = fc.array(fc.oneof({ arbitrary: usual, weight: 9 }, { arbitrary: anything, weight: 1 }), {
      minLength: more.length,
      maxLength: more.length + 1,
    });
    return fc
      .tuple(...joins.map(([run, to]) => row.map((rest) => [run, to, 4, ...rest])))
      .map((rows) => [["Run", "To", "Diameter", ...more], ...rows]);
  });

describe(`${2 * TABLES} tables by seed ${SEED}`, () => {
  test.each([
    ["ragged and without any order", ragged, "refused"],
    ["with the headers of a runs table", likely, "both"],
  ] as const)("%s: runs or a refusal, the table left as it was", (_, tables, expected) => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(tables, fc.constantFrom("IP" as const, "SI" as const), (table, system) => {
        const given = frozen(table);
        const first = outcome(given, system);
        seen.add(typeof first === "string" ? "refused" : "read");
        return JSON.stringify(outcome(given, system)) === JSON.stringify(first);
      }),
      { seed: SEED, numRuns: TABLES },
    );
    expect(seen).toEqual(new Set(expected === "both" ? ["read", "refused"] : ["refused"]));
  });

  test("whatever is no table at all", () => {
    for (const given of [
      undefined,
      null,
      4,
      "Run",
      {},
      [],
      [[]],
      [[], []],
      [null],
      ["Run"],
      [["Run"], null],
      new Map(),
    ])
      expect(outcome(given)).toMatch(/^runs must be a table whose first row has the headers Run, To and Diameter/);
  });
});

const HEADERS = ["Run", "To", "Diameter"];

test("runs may be called like what every object has", () => {
  const rows = PROTOTYPE.map((run, index) => [run, PROTOTYPE[index - 1] ?? "fan", 4]);
  expect(outcome([HEADERS, ...rows])).toEqual([...PROTOTYPE].reverse());
  expect(outcome([[...HEADERS, ...PROTOTYPE], ...rows])).toEqual([...PROTOTYPE].reverse());
});

test("a run that joins itself, a circle, a header twice and a table too long are refused by name", () => {
  const read = (...rows: unknown[][]) => readAll(rows);
  const readAll = (rows: unknown[][]) => readRuns(toMatrix(rows), "IP").runs(null).network();
  const loop = "a way to the fan: these runs join each other in a loop";
  expectRefusal(
    () => read(HEADERS, ["a", "a", 4], ["b", "fan", 4]),
    DomainError,
    `To of run "a" (row 2) must be ${loop}; got "a"`,
  );
  expectRefusal(
    () => read(HEADERS, ["a", "fan", 4], ["b", "c", 4], ["c", "b", 4]),
    DomainError,
    `To of run "b" (row 3) must be ${loop}; got "c"`,
  );
  expectRefusal(
    () => read(["Run", "To", "Diameter", "to (next)"], ["a", "fan", 4, "fan"]),
    DomainError,
    'runs must be headed by each column once, not twice; got "To"',
  );
  const many = Array.from({ length: 200_000 }, (_, index) => [`r${index}`, "fan", 4]);
  expectRefusal(() => readAll([HEADERS, ...many]), DomainError, "runs must be at most 20000 rows; got 200000");
});
