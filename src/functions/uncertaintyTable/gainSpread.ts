import { changeBy, effectOf, gradientOf } from "../../core/network/derivative/gradient";
import type { Input } from "../../core/network/derivative/inputs";
import { linearise } from "../../core/network/derivative/linearise";
import { endPut, putBy } from "../../core/network/derivative/put";
import { type Spread, spreadOf } from "../../core/network/derivative/spread";
import type { Gain } from "../flowTable/oneChange";
import type { Fan, Solved } from "../flowTable/solveRuns";
import { surroundings } from "../runsTable/surroundings";
import type { Deviations } from "./readErrors";
import { inputsOfSolved, uncertainOf } from "./uncertaintyTable";

/**
 * How far each gain at a hood may be off. An input is off by the same factor before and after the change, so what it does to both
 * alike drops out.
 */
export function gainSpreads(now: Solved, place: number, fan: Fan, errors: Deviations): (gain: Gain) => Spread {
  const inputs = inputsOfSolved(now);
  const before = airflowBy(now, fan, place);
  const known = new Set(inputs.map(nameOf));
  return ({ after }) => {
    const there = airflowBy(after, fan, place);
    const all = [...inputs, ...inputsOfSolved(after).filter((input) => !known.has(nameOf(input)))];
    return spreadOf(
      uncertainOf(all, errors, (input) => there(input) - before(input)),
      (change) => change,
    );
  };
}

const nameOf = ({ kind, run }: Input): string => `${kind} ${run}`;

/** How the air that enters at a hood changes with an input, at that hood's suction and by it; asked again, it is known. */
export function airflowBy({ network, solution }: Solved, fan: Fan, place: number): (input: Input) => number {
  const straight = linearise({ network, curve: fan.curve, surroundings: surroundings(fan.density) }, solution);
  const gradient = gradientOf(straight, { run: place, airflow: 0, suction: straight.arrivingRate[place]! });
  const known = new Map<Input, number>();
  return (input) => {
    const before = known.get(input);
    if (before !== undefined) return before;
    const put = putBy(straight, input);
    const change = changeBy(gradient, effectOf(straight, put)) + endPut(straight, place, put);
    known.set(input, change);
    return change;
  };
}
