import { shownColumns } from "../../../reference/columnsOfRuns";
import type { ShownRunColumn } from "../../../reference/runColumns";
import type { Frame } from "../frame";
import { runCell, RUNS_HEADER } from "../layout";
import { LOOK } from "./look";

/** No number of what is asked or flows rests on it. */
const NOT_ASKED: ShownRunColumn = "Device clean loss";

/**
 * That columns of the sheet Runs were deleted, each by its name; an empty text where none was. All runs then count as blank there, in silence:
 * no airflow is asked, every gate is open. Without a needed column there is no answer at all, which says so itself.
 */
export function goneColumns(frame: Frame): string {
  const columns = shownColumns.filter((column) => !("needed" in column) && column.name !== NOT_ASKED);
  const heads = columns.map(({ name }) => [name, `COLUMN(${frame.ref("runs", runCell(name, RUNS_HEADER))})`] as const);
  const names = heads.map(([name, head]) => `IF(ISERROR(${head}),"${name}; ","")`).join("&");
  const isAny = `ISERROR(${heads.map(([, head]) => head).join("+")})`;
  return `IF(${isAny},"${LOOK} columns deleted on ${frame.sheet("runs")} count as blank: "&${names}&"undo that","")`;
}
