import type { SheetHost } from "../host";
import type { GridModel } from "./grid";
import { contentOf } from "./model";

/** The local sheet, as the pane sees it. */
export function localHost(model: GridModel): SheetHost {
  const { getters } = model;
  const selected = () => getters.getSelectedZone();
  return {
    kind: "local",
    selectionAddress: async () => {
      const sheetId = getters.getActiveSheetId();
      return getters.getRangeString(getters.getRangeFromZone(sheetId, selected()), sheetId);
    },
    isSelectionEmpty: async () => {
      const cells = getters.getEvaluatedCellsInZone(getters.getActiveSheetId(), selected());
      return cells.every(({ type }) => type === "empty");
    },
    insert: async (content, overwrite) => {
      const position = getters.getActivePosition();
      const at = o_spreadsheet.helpers.toXC(position.col, position.row);
      if (!overwrite && getters.getEvaluatedCell(position).type !== "empty")
        return { written: false, at, why: "filled" };
      const result = model.dispatch("UPDATE_CELL", { ...position, content: contentOf({ at, ...content }) });
      return result.isSuccessful ? { written: true, at } : { written: false, at, why: "refused" };
    },
  };
}
