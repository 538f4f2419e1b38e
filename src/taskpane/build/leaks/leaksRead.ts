import { findNamed, plain } from "../../../core/naming/findNamed";
import { headerName } from "../../../core/naming/headerName";
import type { CellBlock } from "../../../hosts/host";
import { gateConditions } from "../../../reference/gateConditions";
import type { RunColumn } from "../../../reference/runColumns";
import { cellAddress } from "../../../sheets/address";
import { LOG, LOG_FIRST, LOG_LAST, WORKED, workedRow } from "../../../sheets/book/leaks/layout";
import type { Calculated } from "../../../sheets/calculated";
import type { CellValue, Sheet } from "../../../sheets/workbook";
import { OLD_NUMBERS } from "../../hostUse/words";
import { asRead, cell } from "../asRead";

/** A row of the leak log as the leak of its run: the cell of the runs table that it goes to, or why it cannot. */
export type ReadLeak = { readonly run: string } & ({ readonly why: string } | LeakOfRun);

interface LeakOfRun {
  readonly when: "as found" | "as mended";
  readonly sheet: string;
  readonly at: string;
  readonly runAt: string; // where its name stands
  readonly column: RunColumn;
  readonly now: CellValue;
  readonly area: number; // in the unit of the runs table
}

interface LeaksRead {
  readonly from: string; // the sheet of the log
  readonly into: string;
  readonly leaks: readonly ReadLeak[];
}

const DIGITS = 4; // a reading is worth no more

/** What the log of a book has for the runs table; a sentence where the book has no such sheets. */
export function leaksRead({ workbook, shown, settings }: Calculated): LeaksRead | { readonly why: string } {
  if (settings?.includes("calculates when asked")) return { why: OLD_NUMBERS };
  const [leaks, runs] = (["leaks", "runs"] as const).map((key) => workbook.sheets.find((sheet) => sheet.key === key));
  if (leaks === undefined || runs === undefined)
    return { why: "There is no sheet Leaks beside a sheet Runs in this workbook: add it above first." };
  const valueOf = (sheet: Sheet, at: string): CellValue => {
    const value = shown.get(sheet.name)?.get(at)?.value ?? null;
    return typeof value === "object" || value === "" ? null : value;
  };
  const ofLog = (at: string): CellValue => valueOf(leaks, at);
  if (ofLog(`A${LOG}`) !== "Gate" || ofLog(`A${WORKED}`) !== "Gate")
    return { why: `Rows or columns of the sheet ${leaks.name} were moved, so its log cannot be found: undo that, or add the sheet anew.` }; // prettier-ignore
  const table = tableOf((column, row) => valueOf(runs, cellAddress(column, row)));
  if (table === null) return { why: `The sheet ${runs.name} has no headings Run, Gate and Leak.` };

  const leakAt = (row: number, run: string): ReadLeak => {
    const worked = workedRow(row);
    const isMended = ofLog(`F${row}`) !== null;
    const area = ofLog(`${isMended ? "H" : "G"}${worked}`);
    if (ofLog(`E${row}`) === null && !isMended) return { run, why: "its leak is not read" };
    if (typeof area !== "number") {
      const said = [`J${worked}`, `J${row}`].map(ofLog).filter((words) => words !== null);
      return { run, why: `no leak area follows from its reading: ${String(said[0] ?? "see its row")}` };
    }
    const rows = table.rowsOf(run);
    const [place] = rows;
    if (place === undefined) return { run, why: `no run on the sheet ${runs.name} is called so` };
    if (rows.length > 1) return { run, why: `more than one run on the sheet ${runs.name} is called so` };
    const condition = ofLog(`C${row}`);
    const column = columnFor(condition, table.value("Gate", place));
    if (column === null)
      return { run, why: `C${row} of the sheet ${leaks.name}, "${String(condition)}", does not say whether its gate was open or shut: choose a name of the list there, or type open or shut` }; // prettier-ignore
    const at = table.address(column, place);
    const always = table.address("Leak", place);
    if (column !== "Leak" && valueOf(runs, always) !== null)
      return { run, why: `${always} of the sheet ${runs.name} has a leak that is always there, and a reading is of all together: clear that cell first` }; // prettier-ignore
    if (runs.cells.some((cell) => cell.at === at && "formula" in cell))
      return { run, why: `${at} of the sheet ${runs.name} holds a formula: change that cell yourself` };
    const when = isMended ? "as mended" : "as found";
    const rounded = Number(area.toPrecision(DIGITS));
    return {
      run,
      when,
      sheet: runs.name,
      at,
      runAt: table.address("Run", place),
      column,
      now: valueOf(runs, at),
      area: rounded,
    };
  };
  const list: ReadLeak[] = [];
  for (let row = LOG_FIRST; row <= LOG_LAST; row++) {
    const run = ofLog(`A${row}`);
    if (run !== null) list.push(leakAt(row, String(run)));
  }
  return list.length > 0
    ? { from: leaks.name, into: runs.name, leaks: list }
    : { why: `The log of the sheet ${leaks.name} is empty.` };
}

/** What to write, if the book still has what was offered, and what must still be so then; a sentence where it has not. */
export function leakToWrite(
  book: Calculated,
  offered: ReadLeak,
): { readonly block: CellBlock; readonly still: readonly CellBlock[] } | { readonly why: string } {
  if ("why" in offered) return { why: `Nothing was written: ${offered.why}.` };
  const read = leaksRead(book);
  const same = (one: ReadLeak): boolean => JSON.stringify(one) === JSON.stringify(offered);
  if ("why" in read || !read.leaks.some(same))
    return { why: `The log or the run ${offered.run} has changed meanwhile, so nothing was written: read the log again.` }; // prettier-ignore
  const block = { sheet: offered.sheet, at: offered.at, rows: [[offered.area]] };
  return { block, still: asRead(book, [block, cell(offered.sheet, offered.runAt)]) };
}

/** A gate leaks otherwise open than shut: by the condition that was found, where that is blank or of any gate as the gate stands now. */
function columnFor(condition: CellValue, gate: CellValue): RunColumn | null {
  if (gate === null) return "Leak";
  const typed = plain(String(condition ?? ""));
  const named = findNamed(gateConditions, typed);
  if (typed !== "" && named === undefined && !STATES.has(typed)) return null;
  const found = named?.state ?? typed;
  return (STATES.has(found) ? found : plain(String(gate))) === "shut" ? "Leak shut" : "Leak open";
}
const STATES: ReadonlySet<string> = new Set(["open", "shut"]);

const MOST_ROWS = 100; // in which the table is looked for
const MOST_COLUMNS = 60;
const NEEDED = ["Run", "Gate", "Leak", "Leak open", "Leak shut"] as const;
type Needed = (typeof NEEDED)[number];

/** The runs table by its headings, wherever rows and columns have moved to. */
function tableOf(value: (column: number, row: number) => CellValue) {
  for (let header = 1; header <= MOST_ROWS; header++) {
    const places = new Map<string, number>();
    for (let column = 1; column <= MOST_COLUMNS; column++) {
      const words = value(column, header);
      if (typeof words === "string") places.set(headerName(words), column);
    }
    const placeOf = (column: RunColumn): number | undefined => places.get(headerName(column));
    if (NEEDED.some((column) => placeOf(column) === undefined)) continue;
    const valueIn = (column: Needed, row: number): CellValue => value(placeOf(column)!, row);
    const rows = Array.from({ length: MOST_ROWS }, (_, index) => header + 1 + index);
    const nameIn = (row: number): string => plain(String(valueIn("Run", row) ?? ""));
    return {
      rowsOf: (run: string) => rows.filter((row) => nameIn(row) === plain(run)),
      value: valueIn,
      address: (column: RunColumn, row: number) => cellAddress(placeOf(column)!, row),
    };
  }
  return null;
}
