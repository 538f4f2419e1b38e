import { DomainError } from "../../core/errors";
import { plain } from "../../core/naming/findNamed";
import { fromSI, type Quantity, type UnitSystem, unitOf } from "../../reference/quantities";
import { failureOf } from "../cellErrors";
import type { Matrix } from "../cells";
import { inUnit } from "../runsTable/inUnit";
import { joinedNames, readRuns } from "../runsTable/readRuns";
import { totalLeak } from "./flowTable";
import { withOpenGates } from "./openRuns";
import { readScenarios, type Scenario } from "./readScenarios";
import { runFlows } from "./runFlows";
import { type Fan, type SolvedTable, solveRuns } from "./solveRuns";

type Value = string | number;

/** The answer of SCENARIOS: one row per set of open gates. A scenario without an answer says why; the others compute. */
export function scenarioTable(runs: Matrix, fan: Fan, sets: Matrix, system: UnitSystem): Value[][] {
  const table = readRuns(runs, system);
  const hoods = hoodPlaces(table.runs.map(({ run }) => run));
  const scenarios = readScenarios(sets, runs);
  if (scenarios.every((scenario) => scenario === null))
    throw new DomainError("scenarios", null, "at least one row with the names of open runs");
  const unit = (quantity: Quantity): string => unitOf(quantity, system).label;
  const header = [
    "Scenario",
    ...hoods.flatMap((place) => {
      const { name } = table.runs[place]!.run;
      return [`${name} airflow (${unit("airflow")})`, `${name} velocity (${unit("velocity")})`];
    }),
    `Fan airflow (${unit("airflow")})`,
    `Fan pressure (${unit("pressure")})`,
    "Lost to leaks (%)",
    "Slowest run",
    "Note",
  ];
  const rows = scenarios.map((scenario): Value[] => {
    if (scenario === null) return new Array<Value>(header.length).fill("");
    try {
      return scenarioRow(scenario, solveRuns(withOpenGates(runs, scenario.open), fan, system), hoods, system);
    } catch (error) {
      const { sentence } = failureOf(error, system, () => undefined);
      return [scenario.name, ...new Array<Value>(header.length - 2).fill(""), sentence];
    }
  });
  return [header, ...rows];
}

/** The runs that nothing joins: hoods and open pipe ends. */
function hoodPlaces(runs: readonly { name: string; to: string; side: string }[]): number[] {
  const joined = joinedNames(runs);
  return runs.flatMap((run, place) => (run.side === "suction" && !joined.has(plain(run.name)) ? [place] : []));
}

function scenarioRow(scenario: Scenario, solved: SolvedTable, hoods: readonly number[], system: UnitSystem): Value[] {
  const flows = runFlows(solved);
  const shown = (value: number, quantity: Quantity): number => fromSI(value, unitOf(quantity, system));
  const { fanAirflow, fanPressure, leak, crossings } = solved.solution;
  const atHoods = hoods.flatMap((place): Value[] => {
    const flow = flows[place]!;
    if (!flow.end || flow.beyondShut) return ["", ""];
    return [shown(flow.airflow - flow.leak, "airflow"), shown(flow.velocity, "velocity")];
  });
  return [
    scenario.name,
    ...atHoods,
    shown(fanAirflow, "airflow"),
    shown(fanPressure, "pressure"),
    fanAirflow === 0 ? 0 : (totalLeak(leak) / fanAirflow) * 100,
    ...slowestRun(solved, flows, system),
    crossings > 1 ? `the curve has a hump: ${crossings} points meet, this is the stable one` : "",
  ].flat();
}

/** The run, of those that carry dust, whose velocity is the smallest share of what its dust needs. */
function slowestRun({ table }: SolvedTable, flows: ReturnType<typeof runFlows>, system: UnitSystem): [string] {
  let [slowest, least] = ["", Infinity];
  table.runs.forEach(({ run, dust }, place) => {
    const flow = flows[place]!;
    if (run.side === "discharge" || !flow.fed || flow.beyondShut) return;
    const share = flow.velocity / dust.low;
    if (share >= least) return;
    least = share;
    const settles =
      share < 1 ? `dust settles: "${dust.key}" needs ${inUnit(dust.low, "velocity", system)}` : "fast enough";
    slowest = `${run.name}: ${inUnit(flow.velocity, "velocity", system)}, ${settles}`;
  });
  return [slowest];
}
