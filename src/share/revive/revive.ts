import type { Calculated, ShownCell } from "../../sheets/calculated";
import type { CellName, Workbook } from "../../sheets/workbook";
import { ownSheets, recordIn } from "./ownSheets";
import { readRecord, recall, type Recalled } from "./record";
import { revivedSheet } from "./revivedSheet";

export interface Revived {
  readonly workbook: Workbook | null; // null where nothing is made live
  readonly left: readonly string[]; // cells that stay as they are, each with its reason
}

const MOST_FILLED = 250_000; // cells that all recorded formulas together may have filled

/** The live budget that a club copy was made from, with the inputs as they now stand in the copy. */
export function revive({ workbook, shown }: Calculated): Revived {
  const record = recordIn(workbook);
  if (record === undefined) return { workbook: null, left: [] };
  const { lines } = readRecord(record);
  const gone = ownSheets(workbook);
  const kept = workbook.sheets.filter(({ name }) => !gone.has(name.toLowerCase()));
  const there = new Set(kept.map(({ name }) => name.toLowerCase()));
  let room = MOST_FILLED;
  const recalled = lines.flatMap((line) => {
    const one = recall(line, record.name, there, room);
    room -= one?.cells.length ?? 0;
    return one ?? [];
  });
  const left = recalled.flatMap(({ sheet, at, why }) => (why === null ? [] : [`${sheet}!${at}: ${why}`]));
  if (recalled.every(({ formula }) => formula === null)) return { workbook: null, left };
  const sheets = kept.map((sheet) =>
    revivedSheet(
      sheet,
      recalled.filter((one) => one.sheet.toLowerCase() === sheet.name.toLowerCase()),
      { gone, shown: shown.get(sheet.name) ?? new Map<string, ShownCell>() },
    ),
  );
  return { workbook: { ...workbook, sheets, names: namesAgain(workbook, gone, recalled) }, left };
}

/** The names of cells, and those that the copy had given to a cell of its own where they were. */
function namesAgain(
  { names }: Workbook,
  gone: ReadonlySet<string>,
  recalled: readonly Recalled[],
): readonly CellName[] {
  const isGone = ({ sheet }: CellName): boolean => gone.has(sheet.toLowerCase());
  const back = recalled.flatMap(({ sheet, at, said }) =>
    said?.part === "name" && names.some((one) => isGone(one) && one.name === said.was)
      ? [{ name: said.was, sheet, at }]
      : [],
  );
  return [...names.filter((name) => !isGone(name)), ...back];
}
