import { DomainError } from "../../core/errors";
import { plain } from "../../core/naming/findNamed";
import { afterDevice } from "../../core/network/afterDevice";
import { togetherColumns, type TogetherKey } from "../../reference/answerColumns";
import { itemAt } from "../../reference/itemAt";
import { ENOUGH_AIR } from "../../reference/noteLimits";
import { joinNotes, sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, headerRow, type Value } from "../answerRows";
import { readOptional, singleCell } from "../arguments";
import { failureOf } from "../cellErrors";
import type { RunsTable, TableReader } from "../runsTable/readRuns";
import { humpNote } from "./humpNote";
import { requireGates } from "./openRuns";
import { runFlows } from "./runFlows";
import { gatesOf, gateWith, opened, type OpenSet, openSets } from "./hoodGates";
import { type Fan, solveRuns } from "./solveRuns";

const USUAL_MOST = 2; // machines that one or two people run

/** What a set of open gates gives; `failed` says why there is no answer. */
interface Judged extends OpenSet {
  readonly hood: Served | null; // the one that gets least of what it wants
  readonly slowest: Served | null; // the run that is slowest for its dust
  readonly short: readonly string[]; // hoods that get too little
  readonly slow: readonly string[]; // runs in which dust settles
  readonly isOne: boolean; // a single hood is judged, and no other that the same gate serves or that is always open
  readonly hump: string;
  readonly failed: string | null;
}

interface Served {
  readonly name: string;
  readonly value: number; // SI
  readonly share: number; // of what it wants
}

/** The answer of TOGETHER: a row for each set of up to so many open gates. A set without an answer says why. */
export function togetherTable(runs: TableReader, fan: Fan, given: unknown, system: UnitSystem): Value[][] {
  requireGates(runs);
  const table = runs.runs(null);
  const gates = gatesOf(table);
  const judged = openSets(table, gates, readMost(given, system)).map((one) => {
    try {
      return { ...judge(runs.runs(new Set(one.open.map(plain))), fan, system), ...one, failed: null };
    } catch (error) {
      const { sentence } = failureOf(error, system, () => undefined);
      return { ...NOTHING, ...one, failed: sentence };
    }
  });
  const working = new Set(judged.filter(works).map(({ open }) => open.join(";")));
  const rows = judged.map((one) => {
    const of: Readonly<Record<TogetherKey, Value | null>> = {
      open: one.open.join("; "),
      hood: one.hood && one.hood.name,
      hoodAirflow: one.hood && one.hood.value,
      hoodShare: one.hood && 100 * one.hood.share,
      slowest: one.slowest && one.slowest.name,
      velocity: one.slowest && one.slowest.value,
      velocityShare: one.slowest && 100 * one.slowest.share,
      verdict: one.failed ?? verdict(one, bleeds(one, working, table, gates)),
    };
    return answerRow(togetherColumns, of, system);
  });
  return [headerRow(togetherColumns, system), ...rows];
}

function readMost(given: unknown, system: UnitSystem): number {
  const rule = {
    kind: "number",
    needed: false,
    quantity: "ratio",
    limits: {},
    usual: USUAL_MOST,
    zero: "usual",
  } as const;
  const most = readOptional("most", singleCell("most", given), rule, system);
  if (!(most >= 1 && Number.isInteger(most))) throw new DomainError("most", most, "a whole number of gates from 1");
  return most;
}

type Found = Omit<Judged, keyof OpenSet | "failed">;

const NOTHING: Found = { hood: null, slowest: null, short: [], slow: [], isOne: false, hump: "" };

function judge(table: RunsTable, fan: Fan, system: UnitSystem): Found {
  const solved = solveRuns(table, fan);
  const clean = afterDevice(solved.network);
  const flows = runFlows(solved);
  const hoods: Served[] = [];
  const carriers: Served[] = [];
  table.runs.forEach(({ run, dust }, index) => {
    const { airflow, leak, velocity, end, fed, beyondShut } = itemAt(flows, index);
    if (run.side === "discharge" || beyondShut || !fed) return;
    const atHood = airflow - leak;
    if (end && run.wantedAirflow > 0) hoods.push({ name: run.name, value: atHood, share: atHood / run.wantedAirflow });
    if (!clean[index] && dust.low > 0) carriers.push({ name: run.name, value: velocity, share: velocity / dust.low });
  });
  const below = (served: readonly Served[], share: number): string[] =>
    served.filter((one) => one.share < share).map(({ name }) => name);
  return {
    hood: least(hoods),
    slowest: least(carriers),
    short: below(hoods, ENOUGH_AIR),
    slow: below(carriers, 1),
    isOne: hoods.length === 1,
    hump: humpNote(solved.solution, system),
  };
}

/** The one with the smallest share, the first of equal ones. */
const least = (served: readonly Served[]): Served | null =>
  served.reduce<Served | null>((worst, one) => (worst === null || one.share < worst.share ? one : worst), null);

const works = (one: Judged): boolean =>
  one.failed === null && one.hood !== null && one.short.length === 0 && one.slow.length === 0;

/** Gates of which one more, left open, makes a set work, as far as the set with it was tried. */
function bleeds(one: Judged, working: ReadonlySet<string>, table: RunsTable, gates: readonly string[]): string[] {
  if (works(one)) return [];
  return gates.flatMap((gate, place) => {
    const open = opened(table, [...one.set, place], gates);
    if (one.open.includes(gate) || !working.has(open.join(";"))) return [];
    return [
      gateWith(
        gate,
        open.filter((name) => name !== gate && !one.open.includes(name)),
      ),
    ];
  });
}

function verdict(one: Judged, more: readonly string[]): string {
  const notes = [
    ...(works(one) ? [sayNote(one.set.length === 1 && one.isOne ? "worksAlone" : "worksTogether")] : []),
    ...(one.hood === null ? [sayNote("noneWanted")] : []),
    ...(one.short.length > 0 ? [sayNote("tooLittleAir", { hoods: one.short.join(", ") })] : []),
    ...(one.slow.length > 0 ? [sayNote("tooSlow", { runs: one.slow.join(", ") })] : []),
    ...(more.length > 0 ? [sayNote("bleed", { gates: more.join(", ") })] : []),
    ...(one.hump === "" ? [] : [one.hump]),
  ];
  return joinNotes(notes);
}
