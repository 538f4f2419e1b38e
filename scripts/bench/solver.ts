// Printed as rows: what is asked of the core's sources themselves.
import { newWorkspace } from "../../test/support/epanet";
import { colebrookOverHaaland } from "./friction";
import { costPerRun, epanetOverOurs, epanetOverSolve, exactEpanetOverOurs } from "./network";
import { ratio, type Row } from "./row";

async function solver(): Promise<Row[]> {
  const workspace = await newWorkspace();
  const sizes = [40, 100, 1000];
  return [
    ratio("Colebrook-White, exact", "Haaland's formula, one evaluation", colebrookOverHaaland(), { atMost: 1 }),
    ...sizes.flatMap((count) => epanetOverOurs(workspace, count, "plainly")),
    ...sizes.flatMap((count) => epanetOverOurs(workspace, count, "by airflows")),
    ...sizes.map((count) => epanetOverSolve(workspace, count)),
    ...sizes.map((count) => exactEpanetOverOurs(workspace, count)),
    costPerRun(10, 100),
    costPerRun(1000, 100),
    costPerRun(10_000, 100, { atMost: 1.2 }),
  ];
}

void solver().then((rows) => process.stdout.write(JSON.stringify(rows)));
