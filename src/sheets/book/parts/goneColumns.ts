import { shownColumns } from "../../../reference/columnsOfRuns";
import type { Frame } from "../frame";
import { runCell, RUNS_HEADER } from "../layout";
import { LOOK } from "./look";

/**
 * That columns of the sheet Runs were deleted, each by its name; an empty text where none was. All runs then count as blank there, in silence:
 * no airflow is asked, every gate is open. Without a needed column there is no answer at all, which says so itself.
 */
export function goneColumns(frame: Frame): string {
  const columns = shownColumns.filter((column) => !("needed" in column));
  const heads = columns.map(({ name }) => `COLUMN(${frame.ref("runs", runCell(name, RUNS_HEADER))})`);
  const names = columns.map(({ name }, index) => `IF(ISERROR(${heads[index]!}),"${name}; ","")`).join("&");
  const isAny = `ISERROR(${heads.join("+")})`;
  return `IF(${isAny},"${LOOK} columns deleted on ${frame.sheet("runs")} count as blank: "&${names}&"undo that","")`;
}
