import { newWorkspace } from "../../test/support/epanet";
import { colebrookOverHaaland } from "./friction";
import { costPerRun, epanetOverOurs } from "./network";

/** Ratios of times, all taken in this one run, so that they mean the same on any machine. */
async function bench(): Promise<void> {
  const rows: { what: string; ratio: number; goal: string }[] = [];
  const add = (what: string, ratio: number, goal = "") =>
    rows.push({ what, ratio: Number(ratio.toPrecision(3)), goal });

  add("Colebrook-White, exact / Haaland, one evaluation", colebrookOverHaaland(), "at most 3");
  add("solveNetwork, cost per run: 10 runs / 100 runs", costPerRun(10));
  add("solveNetwork, cost per run: 1000 runs / 100 runs", costPerRun(1000));
  add("solveNetwork, cost per run: 10 000 runs / 100 runs", costPerRun(10_000), "at most 1.5");

  const { fromRuns, hydraulics, solver } = epanetOverOurs(await newWorkspace(), 1000);
  add("1000 runs: EPANET, file and hydraulics / buildNetwork and solveNetwork", fromRuns);
  add("1000 runs: EPANET, hydraulics of a loaded model / buildNetwork and solveNetwork", hydraulics, "at least 2");
  add("1000 runs: EPANET, hydraulics of a loaded model / solveNetwork", solver);
  console.table(rows);
}

void bench();
