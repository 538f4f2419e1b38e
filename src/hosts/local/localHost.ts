import type { Calculated } from "../../sheets/calculated";
import { callsOurs } from "../../sheets/ourCalls";
import { readRange } from "../../sheets/rangeRef";
import { sheetPrefix } from "../../sheets/sheetPrefix";
import { copyInWorker } from "../copyInWorker";
import type { SheetHost } from "../host";
import { addSheets } from "./addSheets";
import { calculatedOf, shownWith } from "./readGrid";
import { contentOf } from "./content";
import type { Desk } from "./desk";
import type { CellPosition, GridModel } from "./grid";
import { finished } from "./evaluation/finished";
import { openExample } from "./openExample";
import { reviveCopy, shareCopy } from "./shareCopy";
import { writeBlocks } from "./writePlugin";

/** The local sheet, as the pane sees it. */
export function localHost(desk: Desk, makeCopy = copyInWorker): SheetHost {
  const getters = () => desk.model().getters;
  const selected = () => getters().getSelectedZone();
  return {
    kind: "local",
    selectionAddress: async () => {
      const sheetId = getters().getActiveSheetId();
      const range = getters().getRangeString(getters().getRangeFromZone(sheetId, selected()), sheetId);
      return `${sheetPrefix(getters().getSheetName(sheetId))}${range}`;
    },
    insert: async (content, over) => {
      const position = over === undefined ? getters().getActivePosition() : positionOf(desk.model(), over);
      const at = o_spreadsheet.helpers.toXC(position.col, position.row);
      if (over === undefined && getters().getEvaluatedCell(position).type !== "empty")
        return { written: false, at: `${sheetPrefix(getters().getSheetName(position.sheetId))}${at}`, why: "filled" };
      const result = desk.model().dispatch("UPDATE_CELL", { ...position, content: contentOf(content) });
      if (!result.isSuccessful) return { written: false, at, why: "refused" };
      return { written: true, at, isBlocked: getters().getEvaluatedCell(position).value === "#SPILL!" };
    },
    write: async (blocks) => writeBlocks(desk.model(), blocks),
    addSheets: (order, watch) => addSheets(desk.model(), order, watch),
    openExample: (units) => openExample(desk, units),
    readBook: async () => {
      await finished(desk.model());
      return shownWith(desk.model(), desk.workbook());
    },
    goTo: async (sheet, at) => goTo(desk.model(), sheet, at),
    repair: async () => {
      const stillWrong = standingWrong(calculatedOf(desk.model()));
      return { repaired: 0, stillWrong, protectedSheets: [], textCells: [] };
    },
    shareCopy: (kind, watch) => shareCopy(desk, kind, watch, makeCopy),
    revive: (watch) => reviveCopy(desk, watch),
    follow: desk.follow,
  };
}

/** The cell that an address with its sheet names. */
function positionOf(model: GridModel, address: string): CellPosition {
  const place = readRange(address, "");
  if (place === null) throw new Error(`${address} is no cell`);
  return { sheetId: idOf(model, place.sheet), col: place.left - 1, row: place.top - 1 };
}

function idOf({ getters }: GridModel, sheet: string): string {
  const id = getters.getSheetIdByName(sheet);
  if (id === undefined) throw new Error(`there is no sheet called ${sheet} any more`);
  return id;
}

/** Selects a cell; an address that the sheet does not reach, or a sheet that is gone, is refused. */
function goTo(model: GridModel, sheet: string, at: string): void {
  const { getters } = model;
  const sheetIdTo = idOf(model, sheet);
  const sheetIdFrom = getters.getActiveSheetId();
  if (sheetIdTo !== sheetIdFrom) model.dispatch("ACTIVATE_SHEET", { sheetIdFrom, sheetIdTo });
  const { col, row } = o_spreadsheet.helpers.toCartesian(at);
  model.selection.selectCell(col, row);
}

/** The grid knows every function of ours, so what stands at #NAME? names none of them; entering it anew would not help. */
const standingWrong = ({ workbook, shown }: Calculated): string[] =>
  workbook.sheets.flatMap(({ name, cells }) =>
    cells.flatMap((cell) => {
      const value = shown.get(name)?.get(cell.at)?.value;
      const unnamed = typeof value === "object" && value?.error === "#NAME?";
      return unnamed && "formula" in cell && callsOurs(cell.formula) ? [`${sheetPrefix(name)}${cell.at}`] : [];
    }),
  );
