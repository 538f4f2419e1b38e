import { shownColumns } from "../../../reference/columnsOfRuns";
import type { ChoiceList } from "../../workbook";
import { runsColumnRange } from "../layout";

/** Words to choose from. Only those that admit nothing else are strict: a K, a roughness or an area may stand in place of a name. */
export const runsLists = (): ChoiceList[] =>
  shownColumns.flatMap(({ name, shown: { choices, strict } }) =>
    choices === undefined
      ? []
      : [{ range: runsColumnRange(name).replaceAll("$", ""), choices, strict: strict ?? false }],
  );
