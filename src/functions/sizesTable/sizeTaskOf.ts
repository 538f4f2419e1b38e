import { DomainError } from "../../core/errors";
import type { FanCurve } from "../../core/fan/fanCurve";
import { plain } from "../../core/naming/findNamed";
import { afterDevice } from "../../core/network/afterDevice";
import type { Network, Run } from "../../core/network/network";
import { needsOf } from "../../core/network/sizes/needsOf";
import type { SizedScenario, SizeTask, Taken } from "../../core/network/sizes/sizeTask";
import { inWords } from "../../reference/inWords";
import { itemAt } from "../../reference/itemAt";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { firstGates } from "../flowTable/hoodGates";
import type { Scenario } from "../flowTable/readScenarios";
import type { TableRun } from "../runsTable/readRun";
import type { RunsTable, TableReader } from "../runsTable/readRuns";
import { resized } from "../runsTable/resized";
import { surroundings } from "../runsTable/surroundings";
import type { StockSize } from "./readStock";

/** What sizes are chosen from and for. */
export interface Wish {
  readonly table: TableReader;
  readonly scenarios: readonly Scenario[];
  readonly stock: readonly StockSize[];
  readonly keep: ReadonlySet<string>; // plain names of runs whose diameter stays
  readonly times: number; // [-] of what is needed, 1 for no margin
  readonly fastest: number | null; // [m/s] that no run whose diameter is chosen shall pass
  readonly density: number; // [kg/m3]
  readonly system: UnitSystem;
}

/** The task for the search, and where the runs are now in it. */
export interface Task {
  readonly task: SizeTask;
  readonly present: Taken | null; // null where a present diameter is not in stock
  readonly gates: readonly number[]; // of hoods, by their runs
  readonly withOpen: (scenario: number, gate: number) => SizedScenario; // with one gate more, and those its air passes
}

/** @param curve the fan; without needs of its own, since one that is not known yet is stood for by any */
export function sizeTaskOf(wish: Wish, curve: FanCurve): Task {
  const { table, scenarios, stock, keep, times, density, system } = wish;
  const greatest = wish.fastest ?? Infinity;
  const tables = scenarios.map(({ open }) => table.runs(open));
  const networks = tables.map((runs) => runs.network());
  const first = itemAt(tables, 0);
  const clean = afterDevice(itemAt(networks, 0));
  const keeps = first.runs.map(
    ({ run }) => run.side === "discharge" || run.device !== null || keep.has(plain(run.name)),
  );
  const slowest = first.runs.map(({ run, dust }, index) => (run.side === "discharge" || clean[index] ? 0 : dust.low));
  const fastest = keeps.map((isKept) => (isKept ? Infinity : greatest));
  first.runs.forEach(({ run }, index) => {
    if (itemAt(slowest, index) * times ** 2 > itemAt(fastest, index))
      throw tooSlowForDust(run.name, itemAt(slowest, index), wish);
  });
  const choices = first.runs.map(({ run }, index) =>
    itemAt(keeps, index)
      ? [{ diameter: run.diameter, cost: 0 }]
      : inStock(
          tables.map(({ runs }) => itemAt(runs, index)),
          stock,
        ).map(({ diameter, price }) => ({
          diameter,
          cost: price * fromSI(run.length + run.hoseLength, unitOf("length", system)),
        })),
  );
  const sized = ({ runs }: RunsTable, network: Network): SizedScenario => ({
    network,
    runs: runs.map((entry, index) =>
      itemAt(choices, index).map(({ diameter }): Run => (keeps[index] ? entry.run : resized(entry, diameter))),
    ),
  });
  const { joins } = itemAt(networks, 0);
  const withOpen: Task["withOpen"] = (scenario, gate) => {
    const open = new Set(itemAt(scenarios, scenario).open);
    for (let run = gate; run >= 0; run = itemAt(joins, run)) open.add(plain(itemAt(first.runs, run).run.name));
    const opened = table.runs(open);
    return sized(opened, opened.network());
  };
  const task: SizeTask = {
    scenarios: networks.map((network, place) => sized(itemAt(tables, place), network)),
    ...{ curve, surroundings: surroundings(density), choices, keeps },
    needs: networks.flatMap((network, place) => needsOf(network, place, slowest, times, fastest)),
  };
  if (!task.needs.some(({ kind }) => kind === "airflow"))
    throw new DomainError("scenarios", null, "sets of open gates in which a hood asks for air in the column Airflow");
  const present = first.runs.map(({ run }, index) =>
    itemAt(choices, index).findIndex(({ diameter }) => Math.abs(diameter - run.diameter) <= 1e-9 * run.diameter),
  );
  const gates = firstGates(itemAt(networks, 0));
  return { task, present: present.includes(-1) ? null : present, gates, withOpen };
}

/** A greatest velocity below what the dust of a run needs, each with its margin. */
function tooSlowForDust(run: string, slowest: number, { times, fastest, system }: Wish): DomainError {
  const unit = unitOf("velocity", system);
  const least = Math.ceil(10 * fromSI(slowest * times ** 2, unit)) / 10;
  const needs = `at least ${least} ${unit.label}, since the dust in ${run} needs ${inWords(slowest, "velocity", system)} and the margin is kept from both`;
  return new DomainError("fastest", fastest === null ? null : fromSI(fastest, unit), needs);
}

/** The sizes in which a run has all its values, whatever its gate does. */
function inStock(entries: readonly TableRun[], stock: readonly StockSize[]): StockSize[] {
  const can = stock.filter(({ diameter }) => {
    try {
      for (const entry of entries) resized(entry, diameter);
      return true;
    } catch (error) {
      if (error instanceof DomainError) return false;
      throw error;
    }
  });
  if (can.length === 0)
    throw new DomainError("stock", null, `a list with a diameter that suits ${itemAt(entries, 0).run.label}`);
  return can;
}
