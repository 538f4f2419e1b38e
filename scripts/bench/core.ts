import { newWorkspace } from "../../test/support/epanet";
import { calibration } from "./calibration";
import { colebrookOverHaaland } from "./friction";
import { costPerRun, epanetOverOurs } from "./network";
import { ratio, type Row } from "./row";
import { wholeColumn } from "./wholeColumn";

/** What is computed without a sheet, bundled before it is run so that nothing stands between the loops and the engine. */
async function core(): Promise<Row[]> {
  const ours = [
    ratio("Colebrook-White, exact / Haaland, one evaluation", colebrookOverHaaland(), { atMost: 3 }),
    ratio("solveNetwork, cost per run: 10 runs / 100 runs", costPerRun(10)),
    ratio("solveNetwork, cost per run: 1000 runs / 100 runs", costPerRun(1000)),
    ratio("solveNetwork, cost per run: 10 000 runs / 100 runs", costPerRun(10_000), { atMost: 1.5 }),
  ];
  const { fromRuns, hydraulics, solver } = epanetOverOurs(await newWorkspace(), 1000);
  return [
    ...ours,
    ratio("1000 runs: EPANET, file and hydraulics / buildNetwork and solveNetwork", fromRuns),
    ratio("1000 runs: EPANET, hydraulics of a loaded model / buildNetwork and solveNetwork", hydraulics, {
      atLeast: 2,
    }),
    ratio("1000 runs: EPANET, hydraulics of a loaded model / solveNetwork", solver),
    ...wholeColumn(process.argv[2]!),
    calibration(process.argv[2]!),
  ];
}

void core().then((rows) => process.stdout.write(JSON.stringify(rows)));
