import { newWorkspace } from "../../test/support/epanet";
import { cells } from "./cells";
import { colebrookOverHaaland } from "./friction";
import { costPerRun, epanetOverOurs } from "./network";
import { ratio, type Row } from "./row";
import { sizesSearch } from "./sizesSearch";
import { tables } from "./tables";

/** What is computed without a sheet, bundled before it is run so that nothing stands between the loops and the engine. */
async function core(dist: string, before: string | null): Promise<Row[]> {
  const workspace = await newWorkspace();
  const sizes = [40, 100, 1000];
  return [
    ratio("Colebrook-White, exact", "Haaland's formula, one evaluation", colebrookOverHaaland(), { atMost: 1 }),
    ...sizes.map((count) => epanetOverOurs(workspace, count, "plainly")),
    ...sizes.map((count) => epanetOverOurs(workspace, count, "by airflows")),
    costPerRun(10, 100),
    costPerRun(1000, 100),
    costPerRun(10_000, 100, { atMost: 1.2 }),
    ...cells(dist),
    ...tables(dist, before),
    ...sizesSearch(),
  ];
}

void core(process.argv[2]!, process.argv[3] ?? null).then((rows) => process.stdout.write(JSON.stringify(rows)));
