import { changeBy, effectOf, gradientOf } from "../../core/network/derivative/gradient";
import type { Input } from "../../core/network/derivative/inputs";
import { linearise } from "../../core/network/derivative/linearise";
import { endPut, putBy } from "../../core/network/derivative/put";
import { type Spread, spreadOf } from "../../core/network/derivative/spread";
import { gainUncertaintyColumns, type GainUncertaintyKey } from "../../reference/answerColumns";
import { sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, headerRow, type Value } from "../answerRows";
import { hoodNow } from "../flowTable/gainTable";
import { solvedGains } from "../flowTable/mostAir";
import type { Fan, Solved } from "../flowTable/solveRuns";
import type { RunsTable } from "../runsTable/readRuns";
import { surroundings } from "../runsTable/surroundings";
import { inputInWords } from "./inputInWords";
import type { Deviations } from "./readErrors";
import { COVERAGE, inputsOfSolved, inWords, leakInWords, uncertainOf } from "./uncertaintyTable";

/** A gain of which leaks make more than this part of the variance is told as times or over: a ± would reach below nothing. */
const MOSTLY_LEAKS = 0.5;

/**
 * The answer of GAINUNCERTAINTY: the rows of GAINS, each with its ±. An input is off by the same factor before and after the change,
 * so what it does to both alike drops out.
 */
export function gainUncertainty(
  runs: RunsTable,
  fan: Fan,
  hood: unknown,
  errors: Deviations,
  system: UnitSystem,
): Value[][] {
  const { now, place } = hoodNow(runs, fan, hood);
  const inputs = inputsOfSolved(now);
  const names = now.network.runs.map(({ name }) => name);
  const before = airflowBy(now, fan, place);
  const row = (of: Partial<Record<GainUncertaintyKey, Value | null>>): Value[] =>
    answerRow(gainUncertaintyColumns, of, system);
  const rows = solvedGains(now, place, fan, system).map(({ name, words, gained, after }) => {
    const there = airflowBy(after, fan, place);
    const all = [...inputs, ...inputsOfSolved(after).filter((input) => !inputs.some((one) => isSame(one, input)))];
    const uncertain = uncertainOf(all, errors, (input) => there(input) - before(input));
    const spread = spreadOf(uncertain, (change) => change);
    return row({ run: name, change: words, gained, ...told(gained, spread, names, system) });
  });
  return [
    headerRow(gainUncertaintyColumns, system),
    ...(rows.length > 0 ? rows : [row({ change: sayNote("nothingGains") })]),
  ];
}

const isSame = (one: Input, other: Input): boolean => one.kind === other.kind && one.run === other.run;

/** How the air that enters at a hood changes with an input, at that hood's suction and by it; asked again, it is known. */
function airflowBy({ network, solution }: Solved, fan: Fan, place: number): (input: Input) => number {
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

function told(
  gained: number,
  { deviation, byLeaks, largest }: Spread,
  names: readonly string[],
  system: UnitSystem,
): Partial<Record<GainUncertaintyKey, Value>> {
  const mostlyFrom = largest === null ? "" : inputInWords(largest.kind, names[largest.run] ?? "");
  const error = COVERAGE * deviation;
  if (byLeaks <= MOSTLY_LEAKS) return { error, mostlyFrom, inWords: inWords(gained, error, system) };
  const factor = Math.exp(error / gained);
  return { factor, mostlyFrom, inWords: leakInWords(gained, factor, system) };
}
