import { fanCurve } from "../../core/fan/fanCurve";
import { designPass } from "../../core/network/designPass";
import { firstGuess } from "../../core/network/sizes/firstGuess";
import { costOf, shareOf } from "../../core/network/sizes/sizeTask";
import { sizesColumns } from "../../reference/answerColumns";
import { inWords } from "../../reference/inWords";
import { itemAt } from "../../reference/itemAt";
import { sayNote } from "../../reference/notes";
import { headerRow, type Value } from "../answerRows";
import { needWords } from "./needWords";
import { portRows } from "./portRows";
import { type SizesCells, sizesRow } from "./sizesRow";
import { sizeTaskOf, type Wish } from "./sizeTaskOf";

/** Stands for a fan that is not known: nothing here asks it. */
const NO_FAN = fanCurve([
  { airflow: 0, pressure: 1 },
  { airflow: 1, pressure: 0 },
]);

/**
 * The answer of SIZES without a fan: each run by velocity alone, in the least air that any scenario asks of it, and what the
 * fan must give in each scenario with those sizes, as BUDGET finds it.
 */
export function withoutFan(wish: Wish): Value[][] {
  const { table, scenarios, system, times } = wish;
  const { task } = sizeTaskOf({ ...wish, times: 1 }, NO_FAN);
  const taken = firstGuess(task, times);
  const passes = task.scenarios.map(({ network, runs }) =>
    designPass({ ...network, runs: runs.map((ofRun, run) => itemAt(ofRun, itemAt(taken, run))) }, task.surroundings),
  );
  const row = (of: SizesCells): Value[] => sizesRow(of, system);
  const rows = table.runs(null).runs.map(({ run }, index) => {
    const { diameter, cost } = itemAt(itemAt(task.choices, index), itemAt(taken, index));
    const velocityIn = (scenario: number): number => itemAt(itemAt(passes, scenario).runs, index).velocity;
    const needs = task.needs.filter((need) => need.run === index);
    const velocities = needs.map(({ scenario }) => velocityIn(scenario));
    const held = needs.flatMap((need) =>
      need.kind === "airflow" ? [] : [{ need, share: shareOf(need, velocityIn(need.scenario)) }],
    );
    const worst = held.sort((a, b) => a.share - b.share)[0];
    return row({
      ...{ run: run.name, now: run.diameter, buy: diameter, length: run.length + run.hoseLength },
      price: itemAt(task.keeps, index) ? null : cost,
      slowest: velocities.length === 0 ? null : Math.min(...velocities),
      fastest: velocities.length === 0 ? null : Math.max(...velocities),
      need: worst === undefined ? null : needWords(worst.need, itemAt(scenarios, worst.need.scenario).name),
      share: worst === undefined ? null : 100 * worst.share,
    });
  });
  const fans = passes.map(({ airflow, staticPressure }, place) => {
    const asked = {
      airflow: inWords(airflow, "airflow", system),
      pressure: inWords(staticPressure, "pressure", system),
    };
    return row({ run: "fan", need: sayNote("fanFor", { scenario: itemAt(scenarios, place).name, ...asked }) });
  });
  const percent = Number((100 * times - 100).toPrecision(6));
  const all = { run: "all together", price: costOf(task, taken), need: sayNote("sizesByVelocity", { percent }) };
  const ends = [...portRows(table.runs(null), task, taken), { run: "before you buy", need: sayNote("measureFirst") }];
  return [headerRow(sizesColumns, system), ...rows, row(all), ...fans, ...ends.map(row)];
}
