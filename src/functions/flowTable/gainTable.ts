import { DomainError } from "../../core/errors";
import { plain, unknownName } from "../../core/naming/findNamed";
import { gainColumns, type GainKey, sureGainColumns } from "../../reference/answerColumns";
import { itemAt } from "../../reference/itemAt";
import { sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { answerRow, headerRow, type Value } from "../answerRows";
import { singleCell } from "../arguments";
import { refuseCell } from "../cellErrors";
import { type Cell, CellErrorValue } from "../cells";
import type { RunsTable } from "../runsTable/readRuns";
import { mostAir } from "./mostAir";
import { atHood, type Gain, isOpenEnd } from "./oneChange";
import { type Fan, type SolvedTable, solveRuns } from "./solveRuns";
import { whatWorks } from "./whatWorks";

/** What comes first: most air for the hood, or what makes the hood work. */
export const goals = ["air", "work"] as const;

/** How sure a gain is, in words; asked about what flows now at the place of the hood. */
export type HowSure = (now: SolvedTable, place: number) => (gain: Gain) => string;

/** The answer of GAINS: each single change solved as its own network, best first. */
export function gainTable(
  runs: RunsTable,
  fan: Fan,
  hood: unknown,
  goal: (typeof goals)[number],
  system: UnitSystem,
  howSure: HowSure | null,
): Value[][] {
  const { now, place } = hoodNow(runs, fan, hood);
  const columns = howSure === null ? gainColumns : sureGainColumns;
  const row = (of: Parameters<typeof answerRow<GainKey>>[1]): Value[] => answerRow<GainKey>(columns, of, system);
  const { gains, nothing } = (goal === "air" ? mostAir : whatWorks)(now, place, fan, system);
  const sure = howSure?.(now, place);
  const rows = gains.map((gain) => {
    const { name, words, gained, velocity, note } = gain;
    return row({ run: name, change: words, gained, sure: sure?.(gain) ?? null, newVelocity: velocity, note });
  });
  return [headerRow(columns, system), ...(rows.length > 0 ? rows : [row({ change: sayNote(nothing) })])];
}

/** What flows now, and the place of the run whose hood is asked about. */
export function hoodNow(
  runs: RunsTable,
  fan: Fan,
  hood: unknown,
): { readonly now: SolvedTable; readonly place: number } {
  const now = solveRuns(runs, fan);
  const place = findHood(now, singleCell("hood", hood));
  if (!(atHood(now, place) > 0))
    throw new DomainError("hood", itemAt(now.network.runs, place).name, "an open hood: no air reaches this one");
  return { now, place };
}

function findHood({ network }: SolvedTable, cell: Cell): number {
  if (cell === null || typeof cell === "boolean" || cell instanceof CellErrorValue)
    return refuseCell("hood", cell, "the name of a hood's run");
  const ends = network.runs.filter((run, index) => run.side === "suction" && isOpenEnd(network, index));
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
