import { type FanCurve, fanCurve } from "../../core/fan/fanCurve";
import { finished } from "../../core/network/sizes/finished";
import type { ChosenSizes } from "../../core/network/sizes/chooseSizes";
import { judging, MET } from "../../core/network/sizes/judging";
import { localSearch } from "../../core/network/sizes/localSearch";
import type { SizeTask, Taken } from "../../core/network/sizes/sizeTask";
import { sayNote } from "../../reference/notes";

const SPEEDS = Array.from({ length: 25 }, (_, step) => (104 + 4 * step) / 100); // 1.04 to 2

/**
 * A speed of the fan at which sizes were found that do it all: not proved the least. By the fan laws airflow goes with the
 * speed and pressure with its square.
 *
 * @param most runs solved at which it stops
 */
export function strongerFan(task: SizeTask, { taken }: ChosenSizes, most: number): string {
  let start: Taken = taken;
  let work = 0;
  for (const speed of SPEEDS) {
    if (work >= most) break;
    const judge = judging({ ...task, curve: atSpeed(task.curve, speed) });
    const found = finished(localSearch(judge, start, most - work, true));
    work += judge.work();
    start = found.taken;
    if (found.judged.share >= MET) return sayNote("strongerFan", { speed });
  }
  return sayNote("noStrongerFan");
}

const atSpeed = ({ points }: FanCurve, speed: number): FanCurve =>
  fanCurve(points.map(({ airflow, pressure }) => ({ airflow: airflow * speed, pressure: pressure * speed ** 2 })));
