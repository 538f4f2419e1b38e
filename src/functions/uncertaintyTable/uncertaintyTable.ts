import { velocityPressure } from "../../core/air/velocityPressure";
import { DomainError } from "../../core/errors";
import { asMeant } from "../../core/measuring/asMeant";
import type { System } from "../../core/network/derivative/changed";
import { type Direction, direction } from "../../core/network/derivative/direction";
import { drawn, DRAWS, halfRange } from "../../core/network/derivative/draws";
import { type Input, inputsOf } from "../../core/network/derivative/inputs";
import { linearise } from "../../core/network/derivative/linearise";
import { type Spread, spreadOf, type Uncertain } from "../../core/network/derivative/spread";
import type { Solution } from "../../core/network/solve/solveNetwork";
import { sectionArea } from "../../core/section/section";
import { uncertaintyColumns, type UncertaintyKey } from "../../reference/answerColumns";
import { itemAt } from "../../reference/itemAt";
import { joinNotes, sayNote } from "../../reference/notes";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { answerRow, blankRow, headerRow, type Value } from "../answerRows";
import { type Fan, type Solved, type SolvedTable, solveRuns } from "../flowTable/solveRuns";
import { runFlows } from "../flowTable/runFlows";
import type { RunsTable } from "../runsTable/readRuns";
import { surroundings } from "../runsTable/surroundings";
import { inputInWords } from "./inputInWords";
import type { Deviations } from "./readErrors";

/** What is written is two standard deviations: 19 of 20 true values lie within it, where the answer goes straight with its inputs. */
export const COVERAGE = 2;

/** Where leaks make more of an answer's variance than this it does not go straight, and draws tell its range. */
const STRAIGHT_ENOUGH = 0.05;

const MOST_ROWS = 200;

/** Draws without an answer that are worth a word. */
const MANY_LOST = 0.05;

/** One answer of a solved system, read from what flows there or from how that changes. */
type Answer = (of: Direction) => number;

/** The answer of UNCERTAINTY: a header row, a row per row of the table as SOLVE has them, and the fan. */
export function uncertaintyTable(runs: RunsTable, fan: Fan, errors: Deviations, system: UnitSystem): Value[][] {
  const solved = solveRuns(runs, fan);
  const count = solved.network.runs.length;
  if (count > MOST_ROWS) throw new DomainError("runs", count, `at most ${MOST_ROWS} rows`);
  const asTold: System = { network: solved.network, curve: fan.curve, surroundings: surroundings(fan.density) };
  const straight = linearise(asTold, solved.solution);
  const flows = runFlows(solved);
  const uncertain = uncertainOf(inputsOfSolved(solved), errors, (input) => direction(straight, input));
  const told = tell(asTold, solved.solution, uncertain);
  const words = ({ kind, run }: Input): string => inputInWords(kind, solved.network.runs[run]?.name ?? "");
  const rows = Array.from({ length: solved.table.rows }, () => blankRow(uncertaintyColumns));
  solved.table.runs.forEach((entry, index) => {
    const flow = itemAt(flows, index);
    const isAfter = entry.run.side === "discharge";
    const area = sectionArea(entry.run.diameter, null);
    const byLeaks = !isAfter && flow.airflow !== 0 && !flow.fed; // all its air comes from leaks, its own and those before it
    const ofLeaks = byLeaks ? leakFactor(flow.airflow, spreadOf(uncertain, airflowOf(index))) : null;
    const isLeak = ofLeaks !== null;
    const bends = byLeaks && !isLeak; // at a suction that may as well be none it goes by a root of nearly 0
    const airflow = isLeak
      ? onlyLeaks(uncertain, index, flow.airflow, ofLeaks)
      : told(isAfter ? FAN_AIRFLOW : airflowOf(index), bends);
    const velocity = isLeak ? airflow.error / area : told(velocityOf(index), bends).error;
    const suction = isAfter || flow.beyondShut ? null : told(suctionOf(index), bends);
    const leak = isAfter || flow.leak === 0 ? null : spreadOf(uncertain, (one) => one.leak[index]!);
    const factor = leak && leakFactor(flow.leak, leak);
    const pressure = itemAt(solved.solution.suction, index) + velocityPressure(Math.abs(flow.velocity), fan.density);
    rows[entry.row] = row(
      {
        run: entry.run.name,
        airflow: flow.airflow,
        airflowError: airflow.error,
        velocity: flow.velocity,
        velocityError: velocity,
        staticSuction: suction === null ? null : pressure,
        suctionError: suction?.error ?? null,
        leak: isAfter ? null : flow.leak,
        leakFactor: factor,
        ...mostly(airflow.spread, words),
        inWords: isLeak ? leakInWords(flow.airflow, ofLeaks, system) : inWords(flow.airflow, airflow.error, system),
      },
      system,
    );
  });
  return [headerRow(uncertaintyColumns, system), ...rows, fanRow(solved, told, uncertain, words, system)];
}

/** Every input of a solved network that may be off. */
export const inputsOfSolved = (solved: Solved): Input[] => {
  const flows = runFlows(solved);
  return inputsOf(solved.network, (run) => itemAt(flows, run).end);
};

/** Those of which something is unsure, with what each does. */
export const uncertainOf = <Effect>(
  inputs: readonly Input[],
  errors: Deviations,
  effectOf: (input: Input) => Effect,
): Uncertain<Effect>[] =>
  inputs.flatMap((input): Uncertain<Effect>[] => {
    const deviation = errors.get(input.kind === "junction" ? "fittings" : input.kind) ?? 0;
    return deviation === 0 ? [] : [{ input, deviation, effect: effectOf(input) }];
  });

const row = (of: Partial<Record<UncertaintyKey, Value | null>>, system: UnitSystem): Value[] =>
  answerRow(uncertaintyColumns, of, system);

type Tell = (
  answer: Answer,
  bends?: boolean,
) => { readonly spread: Spread; readonly error: number; readonly lost: number };

/** Tells each answer's ±; what does not go straight (leaks show it, else it is said) is solved with drawn inputs, once for all answers that need it. */
function tell(system: System, solution: Solution, uncertain: readonly Uncertain[]): Tell {
  let draws: ReturnType<typeof drawn> | null = null;
  return (answer, bends = false) => {
    const spread = spreadOf(uncertain, answer);
    const error = COVERAGE * spread.deviation;
    if (!bends && spread.byLeaks <= STRAIGHT_ENOUGH) return { spread, error, lost: 0 };
    draws ??= drawn(
      system,
      solution,
      uncertain.map(({ input }) => input),
      uncertain.map(({ deviation }) => deviation),
    );
    const lost = 1 - draws.length / DRAWS;
    if (lost > 0.5) return { spread, error, lost };
    return { spread, error: halfRange(draws.map(answer)), lost };
  };
}

/** Of what is leaks alone: half of the range from its value over the factor to its value times the factor. */
function onlyLeaks(uncertain: readonly Uncertain[], run: number, airflow: number, factor: number): ReturnType<Tell> {
  return {
    spread: spreadOf(uncertain, airflowOf(run)),
    error: (Math.abs(airflow) * (factor - 1 / factor)) / 2,
    lost: 0,
  };
}

/** The factor by which a leak is told, which no leak's area turns round; null where its suction is so near to none that it may as well blow out. */
export function leakFactor(leak: number, spread: Pick<Spread, "deviation" | "byLeaks">): number | null {
  const bySuction = COVERAGE * spread.deviation * Math.sqrt(Math.max(0, 1 - spread.byLeaks));
  return leak !== 0 && bySuction < Math.abs(leak) ? timesOrOver(Math.abs(leak), spread) : null;
}

/** The factor by which what is above nothing is told. */
export const timesOrOver = (value: number, { deviation }: Pick<Spread, "deviation">): number =>
  Math.exp((COVERAGE * deviation) / value);

const airflowOf =
  (run: number): Answer =>
  ({ airflow }) =>
    airflow[run]!;
const velocityOf =
  (run: number): Answer =>
  ({ velocity }) =>
    velocity[run]!;
const suctionOf =
  (run: number): Answer =>
  ({ staticSuction }) =>
    staticSuction[run]!;
const FAN_AIRFLOW: Answer = ({ fanAirflow }) => fanAirflow;
const FAN_PRESSURE: Answer = ({ fanPressure }) => fanPressure;

function fanRow(
  { solution }: SolvedTable,
  told: Tell,
  uncertain: readonly Uncertain[],
  words: (input: Input) => string,
  system: UnitSystem,
): Value[] {
  const [airflow, pressure] = [told(FAN_AIRFLOW), told(FAN_PRESSURE)];
  const sum = (leak: Float64Array): number => leak.reduce((total, one) => total + one, 0);
  const leaks = sum(solution.leak);
  const leak = spreadOf(uncertain, (one) => sum(one.leak)); // a factor, which goes straight: no draws
  const isLost = Math.max(airflow.lost, pressure.lost) > MANY_LOST;
  return row(
    {
      run: "Fan",
      airflow: solution.fanAirflow,
      airflowError: airflow.error,
      staticSuction: solution.fanPressure,
      suctionError: pressure.error,
      leak: leaks,
      leakFactor: leakFactor(leaks, leak),
      ...mostly(airflow.spread, words),
      inWords: inWords(solution.fanAirflow, airflow.error, system),
      beside: joinNotes([
        sayNote("errorsFrom"),
        ...(solution.crossings > 1 ? [sayNote("errorsAtHump")] : []),
        ...(isLost ? [sayNote("errorsPastCurve")] : []),
      ]),
    },
    system,
  );
}

const mostly = ({ largest, share }: Spread, words: (input: Input) => string): Partial<Record<UncertaintyKey, Value>> =>
  largest === null ? {} : { mostlyFrom: words(largest), share: 100 * share };

/** 340 ± 40 cfm. */
export function inWords(airflow: number, error: number, system: UnitSystem): string {
  const unit = unitOf("airflow", system);
  const meant = asMeant(fromSI(airflow, unit), fromSI(error, unit));
  if (error === 0) return `${meant.value} ${unit.label}`;
  return `${meant.value} ± ${meant.error} ${unit.label}`;
}

/** 15 cfm, times or over 6. */
export function leakInWords(leak: number, factor: number, system: UnitSystem): string {
  const unit = unitOf("airflow", system);
  return `${Number(fromSI(leak, unit).toPrecision(2))} ${unit.label}, times or over ${Number(factor.toPrecision(2))}`;
}
