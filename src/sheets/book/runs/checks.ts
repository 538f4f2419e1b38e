import { DEFAULT_DUST } from "../../../reference/transport";
import { columnLetters } from "../../address";
import { shownColumns } from "../../../reference/columnsOfRuns";
import type { ShownRunColumn } from "../../../reference/runColumns";
import { formula } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import {
  BUDGET_BESIDE,
  BUDGET_HEADER,
  BUDGET_LAST,
  BUDGET_NAMES,
  BUDGET_NONE_CELL,
  BUDGET_WRONG_CELL,
  RUNS_COLUMN,
  RUNS_HEADER,
  RUNS_LAST,
  runsColumnRange,
  runsRange,
} from "../layout";
import { answerLetters, BUDGET_ANSWER, frozen, stands } from "../parts/answerReferences";
import { isBlocked } from "../budget/wrongRuns";
import { plainName } from "../parts/byName";
import { duplicated, heldAt, isDuplicate } from "../parts/duplicated";
import { LOOK } from "../parts/look";

/** The checks of column A, and a sentence where the sheets leave something out of sight. */

/** A cell of the row in which the formula stands. A formula that names no cell of its own row stays right when rows are cut, sorted or copied. */
const ofThisRow = (column: ShownRunColumn): string => `INDEX(${runsColumnRange(column)},${THIS_PLACE})`;

/** The place of that row in the table, from 1 for the header. */
const THIS_PLACE = `ROW()-ROW($${columnLetters(RUNS_COLUMN)}$${RUNS_HEADER})+1`;

/**
 * What stands in a column of the table where the run of this row has a name. Its column is told from the formula's own, so that a table that is pasted
 * into other columns asks its own names; without a name it is blank where those are names, and else an error, as where this column alone was pasted.
 */
export function whereNamed(code: string): string {
  const names = runsColumnRange("Run").replace(/\$(?=[A-Z])/g, "");
  return `=IF(INDEX(${names},${THIS_PLACE})<>"",${code},IF(COUNTIF(${names},"Run*")>0,"",NA()))`;
}

/**
 * The cell that says so where this sheet is a duplicate with another table. It is blank, and not only looks so, where the table alone was
 * copied to another sheet, or was pasted lower: what stands beside a row of the copy would be what Budget says of another run.
 */
const DUPLICATE = "$A$2";
const isBare = `ISBLANK(${DUPLICATE})`;
const isUnread = `OR(${isBare},${DUPLICATE}<>"")`;

export const duplicateSaid = (frame: Frame): SheetCell => {
  const held = frame.ref("budget", heldAt(BUDGET_NAMES));
  return formula(
    DUPLICATE.replaceAll("$", ""),
    `=IF(${isDuplicate(runsRange(RUNS_LAST), held)},"${LOOK} a duplicate","")`,
    "total",
  );
};

const HEADING = `$${columnLetters(RUNS_COLUMN)}$${RUNS_HEADER}`;

/** A total that another sheet works out, where that sheet reads this table, or the total was copied without a table. */
export const unlessDuplicate = (code: string, says: string): string =>
  `=IF(IF(${isBare},ISBLANK(${HEADING}),${DUPLICATE}=""),${code.slice(1)},"see ${says}")`;

/** What the sheet Budget says of the run that it found in this row by its name. The same formula in every row. */
export function check(frame: Frame): string {
  const onBudget = (letters: string): string =>
    frame.ref("budget", `$${letters}$${BUDGET_HEADER}:$${letters}$${BUDGET_LAST}`);
  const run = ofThisRow("Run");
  const line = `MATCH(${THIS_PLACE},${onBudget(BUDGET_BESIDE.place)},0)`;
  const first = frame.ref("budget", `$${answerLetters(BUDGET_ANSWER, "run")}$${BUDGET_HEADER}`);
  const words = `INDEX(${onBudget(BUDGET_BESIDE.check)},${line})&""`;
  const see = `"see ${frame.sheet("budget")} ${BUDGET_WRONG_CELL.replaceAll("$", "")}"`;
  const otherwise = `IF(ISERROR(${first}),${see},"not on ${frame.sheet("budget")}")`;
  // a row without a name is wrong where its other cells are filled; numbers alone are passed over, as totals are
  const unnamed = `IF(COUNT(${ofThisRow("Airflow")},${ofThisRow("Length")})>0,"no name: not counted","")`;
  const unread = `IF(${isUnread},IF(TRIM(${run})="","",IF(${isBare},"no check: A2 is blank","not read")),`;
  const frozenThere = `IF(OR(NOT(${stands(BUDGET_ANSWER, frame)}),${isBlocked(frame)}),IF(TRIM(${run})="","",${see}),`;
  return `=IFERROR(${unread}${frozenThere}IF(TRIM(${run})="",IFERROR(${words},${unnamed}),IFERROR(${words},${otherwise})))),IFERROR(${words},"not in the table"))`; // an error for a name has its line by its row
}

const BELOW = 200; // rows in which somebody may go on typing below the table

/** A sentence where rows were inserted without the formulas beside them, or runs stand where no sheet reads; else the usual words. */
export function leftOut(frame: Frame, usual: string): string {
  const [run, dust] = [runsColumnRange("Run"), runsColumnRange("Dust")];
  const named = `(TRIM(${run})<>"")`;
  const checks = `$A$${RUNS_HEADER}:$A$${RUNS_LAST}`;
  const dustLetters = dust.slice(1, dust.indexOf("$", 1));
  const wide = run.replace(String(RUNS_LAST), String(RUNS_LAST + BELOW));
  const above = `${HEADING.replace(/\d+$/, "1")}:${HEADING}`; // in the table's first column, over which this sheet says nothing
  const lowest = `SUMPRODUCT(MAX(${named}*(ROW(${run})-ROW(${run.replace(/:.*/, "")}))))`;
  const most = RUNS_LAST - RUNS_HEADER;
  const count = `(SUMPRODUCT(${named}+0)-1)`; // its heading has a name, too
  const enough = `These sheets read ${most} runs: for more, write formulas of your own over a table of your own.`;
  const told = (count: string, what: string, mend: string): string =>
    `IF(${count}>0,"${LOOK} ${what}: "&${count}&". ${mend} ","")`;
  const wrong = frame.ref("budget", BUDGET_WRONG_CELL);
  const words = [
    `IF(${stands(BUDGET_ANSWER, frame)},IF(AND(${wrong}="",${frame.ref("budget", BUDGET_NONE_CELL)}=""),"",${wrong}&". "),${frozen(frame, BUDGET_ANSWER)}&". ")`,
    told(
      `SUMPRODUCT(${named}*(${checks}=""))`,
      "named runs without a check beside them",
      "Copy column A down from another row.",
    ),
    `IF(${plainName(frame.name("dust"))}="${DEFAULT_DUST}","",${told(`SUMPRODUCT(${named}*(TRIM(${dust})=""))`, `named runs that say no dust and count as ${DEFAULT_DUST}`, `Copy column ${dustLetters} down from another row.`)})`,
    told(`(COUNTA(${above})-1)`, "runs above the headings, where no sheet reads them", "Move them down."),
    told(
      `(COUNTA(${wide})-COUNTA(${run}))`,
      "runs below the table, where no sheet reads them",
      `"&IF(${count}<${most},"Move them up.","${enough}")&"`,
    ),
    `IF(${lowest}>${most},"${LOOK} the table reaches lower than its first ${most} rows, and the other sheets read no further. "&IF(${count}>${most},"${enough}","Delete blank rows.")&" ","")`,
  ].join("&");
  const unread = `"${duplicated("this table")} What ${frame.sheet("budget")} and all others say is of the first one: type there."`;
  const bare = `"${LOOK} A2 is blank, which tells a copy from the table that is read: no check here. Undo that."`;
  return `=IF(${isUnread},IF(${isBare},${bare},${unread}),IFERROR(IF(${words}="","${usual}",${words}),IF(${wrong}="","${usual}",${wrong})))`;
}

/** Dust fills itself, Leak is how two other headings begin, and no sheet's numbers rest on what a clean device loses. */
const NOT_ASKED: readonly ShownRunColumn[] = ["Dust", "Leak", "Device clean loss"];

/**
 * Which columns have no heading any more, though something stands in them: another word was typed over it, and the functions take the column for
 * one of the user's own. A column that was deleted or is empty is none of them.
 */
export const lostHeadings = shownColumns
  .filter((column) => !("needed" in column) && !NOT_ASKED.includes(column.name))
  .map(({ name, kind }) => {
    const heads = short(runsRange(RUNS_HEADER));
    const withUnit = kind === "number" ? `+(LEFT(${heads},${name.length + 1})="${name} ")` : "";
    const isLost = `AND(COUNTA(${short(runsColumnRange(name))})>1,SUMPRODUCT((${heads}="${name}")${withUnit}+0)=0)`;
    return `IF(IFERROR(${isLost},FALSE),"${name}: ","")`;
  })
  .join("&");

/** Without the signs that hold a reference where a formula is copied: long formulas are slow to select in the browser. */
function short(range: string): string {
  return range.replaceAll("$", "");
}
