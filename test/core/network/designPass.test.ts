import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import type { Run } from "../../../src/core/network/network";
import { buildNetwork } from "../../../src/core/network/tree";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";
import { budgetOf, makeRun } from "../../support/runs";
import { tightTrees, trees } from "../../support/trees";

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const close = (ours: number, expected: number): void =>
  expect(Math.abs(ours - expected)).toBeLessThanOrEqual(1e-11 * Math.max(1e-6, Math.abs(expected)));

// Whole published systems stand in test/published/data: wholeSystems (four branches, 684.51 Pa) and exhaustLine.
describe("designPass, on random trees", () => {
  test("keeps the air's balance in every run: what joins it, its hood's air and its own leak", () => {
    fc.assert(
      fc.property(trees, (runs) => {
        const { joining } = buildNetwork(runs);
        const budget = budgetOf(runs);
        runs.forEach((run, index) => {
          const { airflow, leak, state } = budget.runs[index]!;
          const asks = joining[index]!.length === 0 && state === "asked" ? run.wantedAirflow : 0;
          close(airflow, sum(joining[index]!.map((other) => budget.runs[other]!.airflow)) + asks + leak);
        });
        close(budget.leaks, sum(budget.runs.map(({ leak }) => leak)));
      }),
    );
  });

  test("without leaks asks the fan for exactly what the open hoods want", () => {
    fc.assert(
      fc.property(tightTrees, (runs) => {
        const { joining } = buildNetwork(runs);
        const wanted = runs.filter((run, index) => joining[index]!.length === 0 && run.gate !== "shut");
        close(budgetOf(runs).airflow, sum(wanted.map((run) => run.wantedAirflow)));
      }),
    );
  });

  test("takes the largest suction of the asked paths at a junction, and the ratio of each to it", () => {
    fc.assert(
      fc.property(trees, (runs) => {
        const { joining, last } = buildNetwork(runs);
        const budget = budgetOf(runs);
        joining.forEach((list, index) => {
          const asked = list.map((other) => budget.runs[other]!).filter(({ state }) => state === "asked");
          if (asked.length === 0) return;
          const suction = Math.max(...asked.map(({ suctionAtEnd }) => suctionAtEnd));
          const { cost, suctionAtEnd } = budget.runs[index]!;
          close(suctionAtEnd, suction + cost!.friction + cost!.fittings + cost!.device);
          expect(asked.filter(({ governs }) => governs).length).toBeGreaterThan(0);
          for (const path of asked) {
            if (path.suctionAtEnd > 0) close(path.junctionRatio! * path.suctionAtEnd, suction);
            if (path.governs && path.suctionAtEnd > 0) expect(relative(path.junctionRatio!, 1)).toBeLessThan(2e-9);
            else if (path.suctionAtEnd > 0) expect(path.junctionRatio!).toBeGreaterThan(1);
          }
          const others = list.map((other) => budget.runs[other]!).filter(({ state }) => state !== "asked");
          for (const idle of others) expect(idle).toMatchObject({ suctionAtEnd: suction, governs: false, cost: null });
        });
        if (budget.runs[last]!.state === "asked")
          expect(budget.runs[last]).toMatchObject({ governs: true, junctionRatio: 1 });
      }),
    );
  });

  test("adds up each path's losses, and the governing path's are the suction at the fan", () => {
    fc.assert(
      fc.property(trees, (runs) => {
        const { joins, joining } = buildNetwork(runs);
        const budget = budgetOf(runs);
        runs.forEach((_, index) => {
          const { cost } = budget.runs[index]!;
          if (cost === null) return;
          close(cost.total, cost.entry + cost.friction + cost.fittings + cost.device);
          const way: number[] = [];
          for (let run = index; run >= 0; run = joins[run]!) way.push(run);
          close(cost.toFan, sum(way.map((run) => budget.runs[run]!.cost!.total)));
          const governing = way.every((run) => budget.runs[run]!.governs);
          if (joining[index]!.length === 0 && governing)
            expect(Math.abs(cost.toFan - budget.suction)).toBeLessThanOrEqual(1e-8 * budget.suction);
          if (joining[index]!.length === 0) expect(cost.toFan).toBeLessThanOrEqual(budget.suction * (1 + 1e-8));
        });
      }),
    );
  });

  test("does not care in which order the runs stand", () => {
    fc.assert(
      fc.property(trees, (runs) => {
        const [there, back] = [budgetOf(runs), budgetOf([...runs].reverse())];
        close(back.airflow, there.airflow);
        close(back.staticPressure, there.staticPressure);
        for (const run of runs) close(back.of(run.name).airflow, there.of(run.name).airflow);
      }),
    );
  });

  test("never asks for less pressure when every run is longer", () => {
    fc.assert(
      fc.property(trees, fc.double({ min: 1, max: 3, noNaN: true }), (runs, factor) => {
        const longer = runs.map((run) => ({
          ...run,
          length: factor * run.length,
          hoseLength: factor * run.hoseLength,
        }));
        const before = budgetOf(runs).staticPressure;
        expect(budgetOf(longer).staticPressure).toBeGreaterThanOrEqual(before * (1 - 1e-12));
      }),
    );
  });

  test("asks nothing of the fan where no hood asks for air", () => {
    fc.assert(
      fc.property(trees, (runs) => {
        const budget = budgetOf(runs.map((run) => ({ ...run, wantedAirflow: 0 })));
        expect([budget.airflow, budget.staticPressure, budget.leaks]).toEqual([0, 0, 0]);
        for (const run of budget.runs)
          expect(run).toMatchObject({ airflow: 0, velocity: 0, cost: null, governs: false, junctionRatio: null });
      }),
    );
  });
});

describe("designPass", () => {
  const hood = (name: string, facts: Partial<Run> = {}): Run =>
    makeRun(name, "main", { hood: 0.5, wantedAirflow: 0.1, ...facts });
  const main = makeRun("main", "fan", { diameter: 0.15, length: 5 });

  test("lets equal paths both govern", () => {
    const budget = budgetOf([hood("left"), hood("right"), main]);
    expect([budget.of("left").governs, budget.of("right").governs]).toEqual([true, true]);
    expect([budget.of("left").junctionRatio, budget.of("right").junctionRatio]).toEqual([1, 1]);
  });

  test("takes a pipe end that asks for air and names no hood as a plain end", () => {
    const plain = budgetOf([hood("end", { hood: null }), main]);
    close(plain.of("end").cost!.entry, 0.93 * plain.of("end").velocityPressure);
  });

  test("gives a path that costs nothing no ratio", () => {
    const budget = budgetOf([hood("free", { hood: 0 }), hood("other"), main]);
    expect(budget.of("free")).toMatchObject({ suctionAtEnd: 0, junctionRatio: null, governs: false });
  });

  test("lets paths that all cost nothing govern together, without a ratio", () => {
    const budget = budgetOf([hood("left", { hood: 0 }), hood("right", { hood: 0 }), main]);
    for (const name of ["left", "right"])
      expect(budget.of(name)).toMatchObject({ suctionAtEnd: 0, governs: true, junctionRatio: null });
  });

  test("lets a run that others join ask in vain: it carries what they bring", () => {
    close(budgetOf([hood("saw"), hood("sander"), { ...main, wantedAirflow: 0.5 }]).airflow, 0.2);
  });

  // A shut gate lets nothing in but its leak: a hood beyond it gets no air and costs nothing, whatever it asks for.
  test.each([
    ["while another hood is open", [hood("other")]],
    ["while nothing else is open", []],
  ])("lets a hood beyond a shut gate ask in vain, %s", (_, others) => {
    const limb = makeRun("limb", "main", { gate: "shut" });
    const budget = budgetOf([
      makeRun("far", "limb", { hood: 0.5, wantedAirflow: 0.2, leakArea: 1e-4 }),
      limb,
      ...others,
      main,
    ]);
    close(budget.airflow, 0.1 * others.length);
    expect(budget.leaks).toBe(0);
    expect(budget.of("far")).toMatchObject({
      state: "cut",
      airflow: 0,
      velocity: 0,
      leak: 0,
      cost: null,
      governs: false,
    });
    expect(budget.of("limb")).toMatchObject({ state: "shut", airflow: 0, cost: null });
  });

  test.each([
    [
      "at a hood",
      [hood("saw", { leakArea: 0.02 }), main],
      'Leak of run "saw" must be smaller than the duct itself (area in m²); got 0.02',
    ],
    [
      "on the way",
      [hood("saw"), { ...main, leakArea: 0.1 }],
      'Leak of run "main" must be smaller than the duct itself (area in m²); got 0.1',
    ],
  ])("refuses a leak as large as its duct %s", (_, runs, message) => {
    expectRefusal(() => budgetOf(runs), DomainError, message);
  });

  test("refuses air that is no air", () => {
    expectRefusal(
      () => budgetOf([hood("saw"), main], { density: 0, hoseRoughness: 0.003, plainEnd: 0.93 }),
      DomainError,
      "density must be from 0.2 to 5 kg/m³; got 0",
    );
  });

  test("passes a chain of 2000 runs", () => {
    const length = 2000;
    const chain = Array.from({ length }, (_, index) =>
      makeRun(`r${index}`, index === 0 ? "fan" : `r${index - 1}`, { coefficient: 0.1 }),
    );
    const end = { ...chain.at(-1)!, wantedAirflow: 0.1, hood: 0.5 };
    const { suction, of } = budgetOf([...chain.slice(0, -1), end]);
    // every run costs 0.1 velocity pressures, the hood 0.5: 200.5 of them
    expect(relative(suction, 200.5 * of("r0").velocityPressure)).toBeLessThan(1e-9);
  });
});
