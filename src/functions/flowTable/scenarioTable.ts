import { DomainError } from "../../core/errors";
import { plain } from "../../core/naming/findNamed";
import type { ScenarioKey } from "../../reference/answerColumns";
import { scenarioColumnsFor } from "../../reference/columnsOfScenarios";
import { sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { blankRow, headerRow, inUnitOf, type Value } from "../answerRows";
import { failureOf } from "../cellErrors";
import type { Matrix } from "../cells";
import { inWords } from "../../reference/inWords";
import type { RunsTable, TableReader } from "../runsTable/readRuns";
import type { RunFlow } from "./flowNotes";
import { totalLeak } from "./flowTable";
import { humpNote } from "./humpNote";
import { requireGates } from "./openRuns";
import { readScenarios, type Scenario } from "./readScenarios";
import { runFlows } from "./runFlows";
import { type Fan, type SolvedTable, solveRuns } from "./solveRuns";

/** The answer of SCENARIOS: one row per set of open gates. A scenario without an answer says why; the others compute. */
export function scenarioTable(runs: TableReader, fan: Fan, sets: Matrix, system: UnitSystem): Value[][] {
  const table = runs.runs(null);
  const hoods = hoodPlaces(table);
  const scenarios = readScenarios(sets, runs.names);
  if (scenarios.every((scenario) => scenario === null))
    throw new DomainError("scenarios", null, "at least one row with the names of open runs");
  const columns = scenarioColumnsFor(hoods);
  const header = columns.map(({ header: words, hood, ...column }) => ({
    ...column,
    header: hood === null ? words : `${table.runs[hood]!.run.name} ${words}`,
  }));
  const rows = scenarios.map((scenario): Value[] => {
    if (scenario === null) return blankRow(columns);
    const row = (of: Of): Value[] =>
      columns.map(({ key, quantity, hood }) => inUnitOf(quantity, of(key, hood) ?? "", system));
    try {
      requireGates(runs);
      return row(scenarioOf(scenario, solveRuns(runs.runs(scenario.open), fan), system));
    } catch (error) {
      const { sentence } = failureOf(error, system, () => undefined);
      return row((key) => (key === "scenario" ? scenario.name : key === "note" ? sentence : null));
    }
  });
  return [headerRow(header, system), ...rows];
}

/** What a scenario has in a column, in SI; of a hood by its place among the runs. */
type Of = (key: ScenarioKey, hood: number | null) => Value | null;

/** The runs that nothing joins: hoods and open pipe ends. */
const hoodPlaces = ({ runs, joined }: RunsTable): number[] =>
  runs.flatMap(({ run }, place) => (run.side === "suction" && !joined.has(plain(run.name)) ? [place] : []));

function scenarioOf(scenario: Scenario, solved: SolvedTable, system: UnitSystem): Of {
  const flows = runFlows(solved);
  const { fanAirflow, fanPressure, leak } = solved.solution;
  const atHood = (place: number, value: (flow: RunFlow) => number): number | null => {
    const flow = flows[place]!;
    return !flow.end || flow.beyondShut ? null : value(flow);
  };
  const of: Readonly<Record<ScenarioKey, (hood: number) => Value | null>> = {
    scenario: () => scenario.name,
    hoodAirflow: (hood) => atHood(hood, (flow) => flow.airflow - flow.leak),
    hoodVelocity: (hood) => atHood(hood, ({ velocity }) => velocity),
    fanAirflow: () => fanAirflow,
    fanPressure: () => fanPressure,
    lost: () => (fanAirflow === 0 ? 0 : (totalLeak(leak) / fanAirflow) * 100),
    slowest: () => slowestRun(solved, flows, system),
    note: () => humpNote(solved.solution, system),
  };
  return (key, hood) => of[key](hood ?? 0);
}

/** The run, of those that carry dust, whose velocity is the smallest share of what its dust needs. */
function slowestRun({ table }: SolvedTable, flows: readonly RunFlow[], system: UnitSystem): string {
  let [slowest, least] = ["", Infinity];
  table.runs.forEach(({ run, dust }, place) => {
    const flow = flows[place]!;
    if (run.side === "discharge" || !flow.fed || flow.beyondShut) return;
    const share = flow.velocity / dust.low;
    if (share >= least) return;
    least = share;
    const said = (velocity: number): string => inWords(velocity, "velocity", system);
    const settles = sayNote("settles", { dust: dust.key, velocity: said(dust.low) });
    const meaning = share < 1 ? settles : sayNote("fastEnough");
    slowest = sayNote("slowest", { run: run.name, velocity: said(flow.velocity), meaning });
  });
  return slowest;
}
