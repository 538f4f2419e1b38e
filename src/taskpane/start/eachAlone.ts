import { gainColumns, solveColumns, type SolveKey, togetherColumns } from "../../reference/answerColumns";
import { placeOfColumn } from "../../reference/columnsOfAnswers";
import { itemAt } from "../../reference/itemAt";
import { ENOUGH_AIR } from "../../reference/noteLimits";
import { notesIn, sayNote } from "../../reference/notes";
import { fromSI, type UnitSystem, unitOf } from "../../reference/quantities";
import { roundedVelocity, wholeAir } from "../check/picture/shortWords";
import { type BookRuns, sameName } from "../check/runs";
import type { Seen } from "../check/seenIn";
import { textIn } from "../check/tablesIn";
import { tooSlowIn } from "../check/tooSlowIn";
import type { Calculate } from "../functions/askWorker";
import type { Cell } from "../functions/callFunction";
import { type AskedOfSets, argumentsOfSets } from "./argumentsOfSets";

/** A machine with every other gate shut. Numbers are in the budget's units. */
export interface MachineAlone {
  readonly machine: string; // the run of its hood
  readonly gets: number | null; // at the hood; null where nothing is known of it
  readonly wants: number | null; // null where no airflow is typed
  readonly isShort: boolean;
  readonly velocity: number | null; // in its own duct
  readonly settlesIn: readonly string[]; // runs on its way in which dust settles
  readonly advice: string; // a sentence
}

/** Each machine by itself, as TOGETHER, SOLVE and GAINS have it; a sentence where there is none. */
export async function eachAlone(seen: Seen, calculate: Calculate): Promise<readonly MachineAlone[] | string> {
  const [runs] = seen.runs;
  const asked = argumentsOfSets(seen);
  if (runs === undefined || asked === null)
    return "Type two points or more of your fan's curve: then here stands what each machine gets alone.";
  if (runs.table.rows.every((row) => textIn(runs.table.value(row, "Gate")) === ""))
    return "No run has a gate: type open or shut under Gate, beside each machine that has one; then here stands what each gets alone.";
  const answer = await calculate({ id: "TOGETHER", args: asked.args(1) });
  if ("error" in answer) return `What each machine gets alone has no answer: ${answer.message || answer.error}.`;
  const machines: MachineAlone[] = [];
  for (const row of answer.rows.slice(1)) {
    const open = String(row[placeOfColumn(togetherColumns, "open")] ?? "");
    const verdict = String(row[placeOfColumn(togetherColumns, "verdict")] ?? "");
    machines.push(await machineAlone(runs, asked, open, verdict, calculate));
  }
  return machines;
}

async function machineAlone(
  { runs, system }: BookRuns,
  { table, curve, density, units }: AskedOfSets,
  open: string,
  verdict: string,
  calculate: Calculate,
): Promise<MachineAlone> {
  const names = open.split("; ");
  const machine = names.find((name) => !runs.some(({ to }) => sameName(to, name))) ?? open;
  const run = runs.find(({ name }) => sameName(name, machine));
  const wants = run === undefined || run.airflow === 0 ? null : fromSI(run.airflow, unitOf("airflow", system));
  const solved = await calculate({ id: "SOLVE", args: [table, curve, [[open]], density, units] });
  const rows = "error" in solved ? [] : solved.rows;
  const own = rows.find((row) => sameName(String(row[placeOfColumn(solveColumns, "run")] ?? ""), machine));
  const number = (key: SolveKey): number | null => {
    const cell = own?.[placeOfColumn(solveColumns, key)];
    return typeof cell === "number" ? cell : null;
  };
  const [airflow, leak] = [number("airflow"), number("leak")];
  const gets = airflow === null ? null : airflow - (leak ?? 0);
  const gains = await calculate({
    id: "GAINS",
    args: [table, curve, [[machine]], [[open]], density, units, [["work"]]],
  });
  return {
    machine,
    gets,
    wants,
    isShort: gets !== null && wants !== null && gets < ENOUGH_AIR * wants,
    velocity: number("velocity"),
    settlesIn: tooSlowIn(verdict),
    advice: "error" in gains ? `${gains.message || gains.error}.` : adviceOf(gains.rows, machine, gets, system),
  };
}

/** The first change as a person says it: "Narrower pipe, 4 in: then 352 cfm, 4,031 fpm." */
function adviceOf(
  rows: readonly (readonly Cell[])[],
  machine: string,
  gets: number | null,
  system: UnitSystem,
): string {
  const [run, change, gained, velocity, note] = gainColumns.map(({ key }) => itemAt(rows, 1)[placeOfColumn(gainColumns, key)]); // prettier-ignore
  if (change === sayNote("worksNow") || change === sayNote("carriedNow")) return "Nothing: it works.";
  if (typeof gained !== "number") return `${capital(String(change))}.`;
  const where = sameName(String(run), machine) ? "" : `${String(run)}: `;
  const then = [
    ...(gets === null ? [] : [`${wholeAir(gets + gained, system)} at the hood`]),
    ...(typeof velocity === "number"
      ? [`${roundedVelocity(velocity, system)} in ${sameName(String(run), machine) ? "its duct" : String(run)}`]
      : []),
  ];
  const rest = notesIn(String(note ?? "")).map(
    ({ words }) => `; ${words === sayNote("worksThen") ? "then it works" : words}`,
  );
  return `${capital(where + String(change))}: ${then.join(", ")}${rest.join("")}.`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
