import fc from "fast-check";
import { cutOff, type Run } from "../../../../src/core/network/network";
import type { Cause, Entry, Judged, WrongRun } from "../../../../src/core/network/judged/judged";
import { judgeTree } from "../../../../src/core/network/judged/judgeTree";
import { partPass } from "../../../../src/core/network/judged/partPass";
import { buildNetwork } from "../../../../src/core/network/tree";
import { meetingsOf } from "../../../../src/core/network/junction/meeting";
import { designPass } from "../../../../src/core/network/designPass";
import { DomainError } from "../../../../src/core/errors";
import { AIR, makeRun } from "../../../support/runs";
import { trees } from "../../../support/trees";

const entriesOf = (runs: readonly Run[]): Entry[] => runs.map((run) => ({ run }));
const FAULT = new DomainError("Length", "long", "a number");
const spoilt = (run: Run, facts: Partial<WrongRun> = {}): Entry => {
  const { label, name, to, side, gate } = run;
  return { ...{ label, name, to, side, gate, wrong: FAULT }, ...facts };
};

const causeInWords = (cause: Cause | null): string => {
  if (cause === null) return "nothing";
  if ("label" in cause) return cause.label;
  return "end" in cause ? "a run at the fan" : `${cause.missing}, nearest ${cause.nearest.join(", ") || "none"}`;
};
const inWords = (row: Judged): string => {
  if ("wrong" in row) return row.wrong === FAULT ? "wrong" : row.wrong.message;
  if ("waits" in row) return `waits for ${causeInWords(row.waits)}`;
  return row.path === null ? "sound" : `sound, then ${causeInWords(row.path)}`;
};
const judged = (entries: readonly Entry[]): string[] => {
  const { rows, fan, discharge } = judgeTree(entries);
  return [...rows.map(inWords), `fan: ${causeInWords(fan)}`, `after: ${causeInWords(discharge)}`];
};

const hood = (name: string, to: string, facts: Partial<Run> = {}): Run =>
  makeRun(name, to, { hood: 1, wantedAirflow: 0.1, ...facts });
const [saw, sander, planer] = [hood("saw", "arm"), hood("sander", "arm"), hood("planer", "main")];
const [arm, main] = [makeRun("arm", "main"), makeRun("main", "fan")];
const out = makeRun("out", "", { side: "discharge" });

describe("judgeTree", () => {
  const waiting = 'fan: run "arm"';

  test("a table without mistakes waits for nothing", () => {
    expect(judged(entriesOf([saw, sander, arm, planer, main, out]))).toEqual([
      ...Array<string>(6).fill("sound"),
      "fan: nothing",
      "after: nothing",
    ]);
  });

  test("what lies upstream of a wrong row or beside it is sound, what lies downstream waits for it by name", () => {
    expect(judged([...entriesOf([saw, planer, main, out]), spoilt(arm)])).toEqual([
      'sound, then run "arm"',
      'sound, then run "arm"', // its junction is the main's start
      'waits for run "arm"',
      "sound",
      "wrong",
      waiting,
      'after: run "arm"',
    ]);
  });

  test.each<[string, Entry[], string[]]>([
    [
      "a name without a To may join every run but a hood, and no run that comes before it",
      [...entriesOf([saw, arm, planer, main]), spoilt(makeRun("new", ""), { to: null })],
      [
        'sound, then run "new"',
        'waits for run "new"',
        'sound, then run "new"',
        'waits for run "new"',
        "wrong",
        'fan: run "new"',
        'after: run "new"',
      ],
    ],
    [
      "a To that no row has",
      entriesOf([hood("saw", "mian"), planer, main]),
      [
        "sound, then mian, nearest main",
        'sound, then run "saw"',
        'waits for run "saw"',
        'fan: run "saw"',
        'after: run "saw"',
      ],
    ],
    [
      "hoods first, as one types them",
      entriesOf([saw, sander]),
      [
        "sound, then arm, nearest none",
        "sound, then arm, nearest none",
        "fan: a run at the fan",
        "after: a run at the fan",
      ],
    ],
    [
      "no row at the fan yet",
      entriesOf([saw, arm, makeRun("main", "trunk")]),
      [
        'sound, then run "main"',
        'sound, then run "main"',
        "sound, then trunk, nearest arm",
        "fan: a run at the fan",
        "after: a run at the fan",
      ],
    ],
    [
      "a name twice: the second is wrong, and nobody knows which of them a hood joins",
      entriesOf([saw, arm, { ...arm, label: "the second arm" }, main]),
      [
        "sound, then the second arm",
        "waits for the second arm",
        'Run of the second arm must be a name of its own: run "arm" has it too; got "arm"',
        "waits for the second arm",
        "fan: the second arm",
        "after: the second arm",
      ],
    ],
    [
      "a loop",
      entriesOf([saw, makeRun("arm", "b"), makeRun("b", "arm"), planer, main]),
      [
        'sound, then run "arm"',
        'To of run "arm" must be a way to the fan: these runs join each other in a loop; got "b"',
        'To of run "b" must be a way to the fan: these runs join each other in a loop; got "arm"',
        'sound, then run "arm"',
        'waits for run "arm"',
        'fan: run "arm"',
        'after: run "arm"',
      ],
    ],
    [
      "a hood that another run joins",
      entriesOf([saw, { ...arm, hood: 1 }, planer, main]),
      [
        'sound, then run "arm"',
        'Hood of run "arm" must be left blank: a hood is an open end, and another run joins this one; got "saw"',
        'sound, then run "arm"',
        'waits for run "arm"',
        'fan: run "arm"',
        'after: run "arm"',
      ],
    ],
    [
      "two runs at the fan: the second one is asked to join",
      entriesOf([planer, main, hood("saw", "fan")]),
      [
        'sound, then run "saw"',
        'waits for run "saw"',
        'To must be "fan" in one row only: run "main" and run "saw" both end there, so let one join the other; got "fan"',
        'fan: run "saw"',
        'after: run "saw"',
      ],
    ],
    [
      "a wrong row after the fan leaves all before it standing",
      [...entriesOf([planer, main, out]), spoilt(makeRun("box", "out", { side: "discharge" }))],
      ["sound", "sound", "sound", "wrong", "fan: nothing", 'after: run "box"'],
    ],
    [
      "a discharge run to nowhere",
      entriesOf([planer, main, makeRun("box", "roof", { side: "discharge" })]),
      [
        "sound",
        "sound",
        'To of run "box" must be blank, "outside" or another discharge run; got "roof"',
        "fan: nothing",
        'after: run "box"',
      ],
    ],
    [
      "a suction run that joins the discharge side",
      entriesOf([hood("saw", "out"), planer, main, out]),
      [
        'To of run "saw" must be a suction run or "fan": that run is on the discharge side; got "out"',
        'sound, then run "saw"',
        'waits for run "saw"',
        'waits for run "saw"',
        'fan: run "saw"',
        'after: run "saw"',
      ],
    ],
    [
      "a run called fan",
      entriesOf([planer, main, hood("Fan", "main")]),
      [
        'sound, then run "Fan"',
        'waits for run "Fan"',
        'Run of run "Fan" must be another word: "fan" is where the last run ends; got "Fan"',
        'fan: run "Fan"',
        'after: run "Fan"',
      ],
    ],
  ])("%s", (_, entries, expected) => expect(judged(entries)).toEqual(expected));

  test("a sound tree is judged sound, and what the tree refuses is the fault of a row or waits at the fan", () => {
    const names = fc.constantFrom("a", "b", "c", "d", "fan", "");
    const anyRuns = fc.array(
      fc.tuple(names, names, fc.boolean(), fc.constantFrom<Run["side"]>("suction", "suction", "discharge")),
      { minLength: 1, maxLength: 6 },
    );
    const seen = new Set<boolean>();
    fc.assert(
      fc.property(
        fc.oneof(
          trees,
          anyRuns.map((list) => list.map(([name, to, end, side]) => makeRun(name, to, { side, hood: end ? 1 : null }))),
        ),
        (runs) => {
          let isSound = true;
          try {
            buildNetwork(runs);
          } catch {
            isSound = false;
          }
          seen.add(isSound);
          const { rows, discharge } = judgeTree(entriesOf(runs));
          expect(discharge === null && rows.every((row) => "run" in row && row.path === null)).toBe(isSound);
        },
      ),
    );
    expect(seen.size).toBe(2);
  });
});

describe("partPass, on random trees of which one row is spoilt", () => {
  /** A tree with a gate anywhere, one of its rows, and what is left to read of that. */
  const cases = trees.chain((runs) =>
    fc
      .tuple(
        fc.option(fc.nat(runs.length - 1)),
        fc.nat(runs.length - 1),
        fc.constantFrom<Partial<WrongRun>>({}, { to: null }, { gate: null }),
      )
      .map(
        ([shut, row, facts]) =>
          [runs.map((run, index): Run => (index === shut ? { ...run, gate: "shut" } : run)), row, facts] as const,
      ),
  );

  test("whatever is not downstream keeps its numbers, or says what it waits for; all downstream waits", () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(cases, ([runs, spoiltRow, facts]) => {
        const network = buildNetwork(runs);
        const whole = designPass(network, AIR).runs;
        const tree = judgeTree(runs.map((run, index) => (index === spoiltRow ? spoilt(run, facts) : { run })));
        const parts = partPass(tree, AIR);
        const cut = cutOff(network);
        const legs = new Set(meetingsOf(network, AIR.density).flatMap((meeting) => meeting?.legs ?? []));
        const downstream = new Set<number>();
        for (let at = spoiltRow; at >= 0; at = network.joins[at]!) downstream.add(at);
        expect(tree.fan).toEqual({ label: runs[spoiltRow]!.label });
        runs.forEach((run, index) => {
          const row = tree.rows[index]!;
          if (index === spoiltRow) return expect(row).toEqual({ wrong: FAULT });
          if (downstream.has(index)) return expect(row).toEqual({ waits: tree.fan });
          if ("waits" in row) {
            // only where nobody knows where the spoilt row goes, and never at an open end
            expect(
              facts.to === null &&
                !(network.joining[index]!.length === 0 && (run.hood !== null || run.wantedAirflow > 0)),
            ).toBe(true);
            return seen.add("may be joined");
          }
          const { budget, air, suction } = parts[index]!;
          const before = whole[index]!;
          const { path, junction } = row as Extract<Judged, { run: Run }>;
          const mayBeShutOff = path !== null && (facts.to === null || facts.gate === null);
          if (mayBeShutOff && cut[index] && budget.state !== "cut") return seen.add("perhaps cut"); // one that is shut itself, too
          expect(budget.state).toBe(before.state);
          seen.add(budget.state);
          if (air === null)
            for (const key of ["airflow", "velocity", "velocityPressure", "leak"] as const)
              expect(budget[key]).toBe(before[key]);
          else seen.add("air waits");
          // what its junction costs it is not known before all that meet there are: the cells say so in its place
          if (junction !== null && legs.has(index)) return;
          if (suction === null) expect(budget.suctionAtEnd).toBe(before.suctionAtEnd);
          for (const key of ["entry", "friction", "fittings", "device", "total"] as const)
            expect(budget.cost?.[key]).toBe(before.cost?.[key]);
          if (path === null) expect(budget.cost?.toFan).toBe(before.cost?.toFan);
          if (junction === null)
            expect(budget).toMatchObject({ governs: before.governs, junctionRatio: before.junctionRatio });
        });
      }),
      { numRuns: 100 }, // in the fast loop, too: what is seen least comes in one of eight
    );
    expect([...seen].sort()).toEqual(["air waits", "asked", "cut", "idle", "may be joined", "perhaps cut", "shut"]);
  });
});
