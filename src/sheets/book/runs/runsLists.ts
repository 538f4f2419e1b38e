import { shownColumns } from "../../../reference/columnsOfRuns";
import type { ChoiceList } from "../../workbook";
import { runCell, RUNS_FIRST, RUNS_LAST } from "../layout";

/** Words to choose from. Only those that admit nothing else are strict: a K, a roughness or an area may stand in place of a name. */
export const runsLists = (): ChoiceList[] =>
  shownColumns.flatMap(({ name, shown: { choices, strict } }) =>
    choices === undefined
      ? []
      : [{ range: `${runCell(name, RUNS_FIRST)}:${runCell(name, RUNS_LAST)}`, choices, strict: strict ?? false }],
  );
