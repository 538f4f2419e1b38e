import { DomainError, NoAnswerError } from "../../core/errors";
import { DISCHARGE_COEFFICIENT, leakArea } from "../../core/leaks/openingLeak";
import { plain, unknownName } from "../../core/naming/findNamed";
import type { Network } from "../../core/network/network";
import { sectionArea } from "../../core/section/section";
import { leakGainColumns } from "../../reference/answerColumns";
import { AS_SOLVED } from "../../reference/foundWords";
import { inWords } from "../../reference/inWords";
import { itemAt } from "../../reference/itemAt";
import { joinNotes, sayNote } from "../../reference/notes";
import { type UnitSystem, unitOf } from "../../reference/quantities";
import { STILL } from "../../reference/zeroWords";
import { answerRow, blankRow, headerRow, type Value } from "../answerRows";
import { readWithin } from "../arguments";
import { failureOf, refuseCell } from "../cellErrors";
import { type Cell, CellErrorValue, cellAt, isNothing, type Range, rangeOf } from "../cells";
import type { RunsTable } from "../runsTable/readRuns";
import { humpNote } from "./humpNote";
import { atHood, isOpenEnd } from "./oneChange";
import { runFlows } from "./runFlows";
import { type Fan, type Solved, solved, solvedWith } from "./solveRuns";
import { staticSuction } from "./staticSuction";

/** The columns of a leak log as the host handed them over. */
export interface LeakLog {
  readonly gates: unknown;
  readonly before: unknown;
  readonly after: unknown;
  readonly suction: unknown;
}

const MOST_READINGS = 500; // each is solved twice

/**
 * The answer of LEAKGAINS: a row for each row of the log, solved with the leak of that run as it was read before and as it was
 * read after, all else as the table has it. A row that cannot be judged says why; the others compute.
 */
export function leakGainTable(table: RunsTable, fan: Fan, log: LeakLog, system: UnitSystem): Value[][] {
  const network = table.network();
  const { columns, count } = columnsOf(log);
  let solver: ReturnType<typeof solvedWith> | null = null; // made where a row asks for it
  let known: { readonly flow: Solved | null } | null = null; // likewise
  const now = (): Solved | null => (known ??= { flow: flowNow(network, fan) }).flow;
  const rows = Array.from({ length: count }, (_, row): Value[] => {
    const [gate, before, after, suction] = columns.map((column) => cellAt(column, row, 0)) as [Cell, Cell, Cell, Cell];
    if ([gate, before, after].every(isNothing)) return blankRow(leakGainColumns);
    const run = gate === null || gate instanceof CellErrorValue ? "" : String(gate);
    try {
      const place = findRun(network, gate);
      const asItIs = itemAt(network.runs, place);
      const isSolved = typeof suction === "string" && plain(suction) === AS_SOLVED;
      const there = isSolved ? solvedSuction(suction, now(), place, fan) : null;
      const pressure = there ?? readWithin("suction", suction, "pressure", { above: 0 }, system);
      const areas = [before, after].map((cell, index) =>
        readArea(index === 0 ? "leak before" : "leak after", cell, pressure, asItIs.diameter, fan, system),
      );
      const solve = (solver ??= solvedWith(network, fan, now()?.solution ?? null));
      const [then, mended] = areas.map((leakArea) => solve(place, { ...asItIs, leakArea })) as [Solved, Solved];
      const [had, has] = [airAtHoods(then), airAtHoods(mended)];
      const said = there === null ? "" : sayNote("suctionSolved", { suction: inWords(there, "pressure", system) });
      const note = joinNotes([said, humpNote(mended.solution, system)].filter((one) => one !== ""));
      return answerRow(leakGainColumns, { run, before: had, after: has, gained: has - had, note }, system);
    } catch (error) {
      return answerRow(leakGainColumns, { run, note: failureOf(error, system, () => undefined).sentence }, system);
    }
  });
  return [headerRow(leakGainColumns, system), ...rows];
}

/** The log's columns, which are equally high; one cell goes with every row. */
function columnsOf({ gates, before, after, suction }: LeakLog): {
  readonly columns: readonly Range[];
  readonly count: number;
} {
  const given = { gates, before, after, suction };
  const columns = Object.entries(given).map(([name, argument]) => ({ name, ...rangeOf(argument) }));
  const high = Math.max(...columns.map((column) => column.high));
  for (const column of columns) {
    if (column.wide > 1) throw new DomainError(column.name, `${column.wide} columns`, "one column of the log");
    if (column.high !== 1 && column.high !== high)
      throw new DomainError(column.name, `${column.high} rows`, `as many rows as the others, ${high}, or one cell`);
  }
  const count = Math.max(...columns.map(({ rows }) => rows.length));
  if (count > MOST_READINGS) throw new DomainError("gates", count, `at most ${MOST_READINGS} rows`);
  return { columns, count };
}

function findRun({ runs }: Network, cell: Cell): number {
  if (isNothing(cell) || typeof cell === "boolean" || cell instanceof CellErrorValue)
    return refuseCell("gate", cell, "the name of a run in the table");
  const name = String(cell);
  const place = runs.findIndex((run) => plain(run.name) === plain(name));
  if (place < 0) {
    const known = runs.map((run) => ({ key: run.name }));
    throw unknownName("gate", known, name, "the name of a run in the table");
  }
  if (itemAt(runs, place).side === "discharge")
    throw new DomainError("gate", name, "a run before the fan: after it air leaks out, not in");
  return place;
}

/** The opening that passes what was read. Neither a blank nor a 0 is taken for a leak of none, which a word says. [m2] */
function readArea(name: string, cell: Cell, pressure: number, diameter: number, fan: Fan, system: UnitSystem): number {
  const isNone = typeof cell === "string" && STILL.includes(plain(cell));
  if (isNothing(cell))
    return refuseCell(name, cell, `a reading (${unitOf("airflow", system).label}), or "${STILL[0]!}" for no leak`);
  const airflow = isNone ? 0 : readWithin(name, cell, "airflow", { atLeast: 0 }, system);
  const area = leakArea(airflow, pressure, DISCHARGE_COEFFICIENT, fan.density);
  if (DISCHARGE_COEFFICIENT * area >= sectionArea(diameter, null))
    throw new DomainError(name, cell, "less than what the open duct itself would draw at that suction");
  return area;
}

/** What SOLVE has as the suction of a run, which stands for one that was not read. [Pa] */
function solvedSuction(word: string, now: Solved | null, place: number, fan: Fan): number {
  const there = now === null ? null : staticSuction(now, itemAt(runFlows(now), place), place, fan.density);
  if (there === null || !(there > 0))
    throw new DomainError("suction", word, "typed here: SOLVE has none above 0 for this run");
  return there;
}

/** What flows as the table has it, from which each reading is found sooner; null where that has no answer. */
function flowNow(network: Network, fan: Fan): Solved | null {
  try {
    return solved(network, fan);
  } catch (error) {
    if (error instanceof DomainError || error instanceof NoAnswerError) return null;
    throw error;
  }
}

/** What enters at all open ends, leaks not counted. [m3/s] */
const airAtHoods = (now: Solved): number =>
  now.network.runs.reduce(
    (sum, { side }, place) => (side === "suction" && isOpenEnd(now.network, place) ? sum + atHood(now, place) : sum),
    0,
  );
