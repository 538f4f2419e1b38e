import type { SizeTask, Taken } from "../../core/network/sizes/sizeTask";
import { itemAt } from "../../reference/itemAt";
import { sayNote } from "../../reference/notes";
import type { RunsTable } from "../runsTable/readRuns";
import type { SizesCells } from "./sizesRow";

/** What to type where a pipe behind a machine's port gets another width; in the run's own row the port would get it, too. */
export function portRows({ runs }: RunsTable, { choices }: SizeTask, taken: Taken): SizesCells[] {
  const stay = runs.filter(({ run, isPort }, index) => {
    const { diameter } = itemAt(itemAt(choices, index), itemAt(taken, index));
    return isPort && diameter !== run.diameter;
  });
  const names = stay.map(({ run }) => run.name).join(", ");
  return names === "" ? [] : [{ run: "a port", need: sayNote("portStays", { runs: names }) }];
}
