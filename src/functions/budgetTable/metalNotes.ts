import { dustOfRun } from "../../core/dust/dustOfRun";
import { sparksMeetDust } from "../../core/dust/sparksMeetDust";
import type { Network } from "../../core/network/network";
import { sayNote } from "../../reference/notes";
import type { TableRun } from "../runsTable/readRun";
import { itemAt } from "../../reference/itemAt";

/** For each run of the table what there is to say of sparks in dust that burns: one note at most, where both first meet. */
export function metalNotes(
  runs: readonly TableRun[],
  { joins, joining }: Pick<Network, "joins" | "joining">,
): string[][] {
  const own = runs.map(({ run, typed }, place) =>
    dustOfRun({ name: run.name, ...typed, isEnd: itemAt(joining, place).length === 0 }),
  );
  return sparksMeetDust(own, joins).map((meeting) =>
    meeting === null ? [] : [sayNote(meeting.certain ? "metalWithWood" : "likelyMetal")],
  );
}
