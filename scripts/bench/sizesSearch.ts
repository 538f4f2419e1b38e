import { chooseSizes } from "../../src/core/network/sizes/chooseSizes";
import { finished } from "../../src/core/network/sizes/finished";
import { mostSolved } from "../../src/taskpane/build/sizes/searchSizes";
import { plantedTask } from "../../test/core/network/sizes/plantedTasks";
import { jobTimes } from "./measure";
import { ratio, type Row, seconds } from "./row";

const ROUNDS = 4; // the first warms up
const SEED = 2;

/** How long the pane searches sizes, and how far it comes, in systems of which it is known that every need can be met. */
export function sizesSearch(): Row[] {
  return [
    { runs: 15, sets: 8, atMost: 2 },
    { runs: 40, sets: 18, atMost: 10 },
  ].flatMap(({ runs, sets, atMost }) => {
    const { task, cost } = plantedTask(SEED, runs, sets);
    const most = mostSolved([Array.from({ length: runs + 1 }, () => [])]);
    const search = () => finished(chooseSizes(task, null, most));
    const { atLeast, judged } = search();
    const same = (value: number) => ({ middle: value, from: value, to: value });
    const what = `sizes of ${runs} runs for ${sets} sets of gates`;
    return [
      seconds(`${what}, searched as in the pane`, jobTimes([() => void search()], ROUNDS)[0]!, { atMost }),
      ratio(`${what}: the need that is met worst`, "what it asks for; 1 can be had", same(judged.share)),
      ratio(`${what}: the price that no choice undercuts, proved`, "that of sizes known to do", same(atLeast / cost)),
    ];
  });
}
