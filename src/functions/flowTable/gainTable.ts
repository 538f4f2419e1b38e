import { DomainError } from "../../core/errors";
import { plain, unknownName } from "../../core/naming/findNamed";
import type { Network, Run } from "../../core/network/network";
import { type AnswerColumn, gainColumns, type GainKey, sureGainColumns } from "../../reference/answerColumns";
import { FOR_HOOD, NEEDIEST } from "../../reference/foundWords";
import { itemAt } from "../../reference/itemAt";
import { sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, headerRow, type Value } from "../answerRows";
import { singleCell } from "../arguments";
import { refuseCell } from "../cellErrors";
import { type Cell, CellErrorValue } from "../cells";
import type { RunsTable } from "../runsTable/readRuns";
import { mostAir } from "./mostAir";
import { neediest } from "./neediest";
import { atHood, type Gain, isOpenEnd } from "./oneChange";
import { type Fan, type SolvedTable, solveRuns } from "./solveRuns";
import { whatWorks } from "./whatWorks";

/** What comes first: most air for the hood, or what makes the hood work. */
export const goals = ["air", "work"] as const;

/** How sure a gain is, in words; asked about what flows now at the place of the hood. */
export type HowSure = (now: SolvedTable, place: number) => (gain: Gain) => string;

/**
 * The answer of GAINS: each single change solved as its own network, best first. Where the hood is the neediest one, the header of the
 * changes says which that is.
 */
export function gainTable(
  runs: RunsTable,
  fan: Fan,
  hood: unknown,
  goal: (typeof goals)[number],
  system: UnitSystem,
  howSure: HowSure | null,
): Value[][] {
  const now = solveRuns(runs, fan);
  const cell = singleCell("hood", hood);
  const finds = asksForNeediest(now, cell);
  const place = finds ? neediest(now) : findHood(now, cell);
  const columns = howSure === null ? gainColumns : sureGainColumns;
  const row = (of: Parameters<typeof answerRow<GainKey>>[1]): Value[] => answerRow<GainKey>(columns, of, system);
  if (typeof place === "string") return [headerRow(columns, system), row({ change: sayNote(place) })];
  requireAir(now, place);
  const { gains, nothing } = (goal === "air" ? mostAir : whatWorks)(now, place, fan, system);
  const sure = howSure?.(now, place);
  const rows = gains.map((gain) => {
    const { name, words, gained, velocity, note } = gain;
    return row({ run: name, change: words, gained, sure: sure?.(gain) ?? null, newVelocity: velocity, note });
  });
  const named = finds ? columns.map((column) => sayingFor(itemAt(now.network.runs, place).name, column)) : columns;
  return [headerRow(named, system), ...(rows.length > 0 ? rows : [row({ change: sayNote(nothing) })])];
}

const sayingFor = (hood: string, column: AnswerColumn): AnswerColumn =>
  column.key === "change"
    ? { ...column, header: `${column.header}${FOR_HOOD.before}${hood}${FOR_HOOD.after}` }
    : column;

/** What flows now, and the place of the run whose hood is asked about. */
export function hoodNow(
  runs: RunsTable,
  fan: Fan,
  hood: unknown,
): { readonly now: SolvedTable; readonly place: number } {
  const now = solveRuns(runs, fan);
  const place = findHood(now, singleCell("hood", hood));
  requireAir(now, place);
  return { now, place };
}

function requireAir(now: SolvedTable, place: number): void {
  if (!(atHood(now, place) > 0))
    throw new DomainError("hood", itemAt(now.network.runs, place).name, "an open hood: no air reaches this one");
}

/** Whether the word stands there, and no hood is called so. */
const asksForNeediest = ({ network }: SolvedTable, cell: Cell): boolean =>
  typeof cell === "string" &&
  plain(cell) === NEEDIEST &&
  !hoodsOf(network).some(({ name }) => plain(name) === NEEDIEST);

const hoodsOf = (network: Network): readonly Run[] =>
  network.runs.filter((run, index) => run.side === "suction" && isOpenEnd(network, index));

function findHood({ network }: SolvedTable, cell: Cell): number {
  if (cell === null || typeof cell === "boolean" || cell instanceof CellErrorValue)
    return refuseCell("hood", cell, "the name of a hood's run");
  const ends = hoodsOf(network);
  const found = ends.find((run) => plain(run.name) === plain(String(cell)));
  if (found === undefined) {
    throw unknownName(
      "hood",
      ends.map((run) => ({ key: run.name })),
      String(cell),
      "the name of a hood's run",
    );
  }
  return network.runs.indexOf(found);
}
