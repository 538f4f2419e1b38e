// Printed: what flows in each of the seeded networks, by the sources that it is bundled with.
import { solveNetwork } from "../../src/core/network/solve/solveNetwork";
import { buildNetwork } from "../../src/core/network/tree";
import { AIR } from "../../test/support/runs";
import { seededTree } from "../../test/support/seededTree";
import { seededNetworks } from "./seededNetworks";

const answers = seededNetworks.map(({ seed, count, losses }) => {
  const { runs, curve } = seededTree(seed, count, losses);
  const { status, airflow, leak, suction } = solveNetwork(buildNetwork(runs), curve, AIR);
  return { status, airflow: [...airflow], leak: [...leak], suction: [...suction] };
});
process.stdout.write(JSON.stringify(answers));
