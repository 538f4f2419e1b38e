import type { GridModel } from "./grid";
import { KEEP } from "./keptPlugin";
import type { GridData, GridSheetData } from "./model";
import { nextTurn } from "./nextTurn";
import { itemAt } from "../../reference/itemAt";

/** Our own command: several sheets come in one step, which one undo takes back. */
const APPEND = "APPEND_SHEETS";

interface AppendCommand {
  readonly type: typeof APPEND;
  readonly data: GridData;
}

/** What the grid refused while the command ran; the grid copies commands, so they can't bring it back. */
let refused: string[] = [];

type Dispatch = (type: string, what: object) => { readonly isSuccessful: boolean };
type RangeData = ReturnType<GridModel["getters"]["getRangeDataFromXc"]>;
type RangeDataOf = (sheetId: string, xc: string) => RangeData;

/** Appends the sheets of a workbook's data to the grid. Where the grid refuses a part, nothing of it stays. */
export async function appendSheets(model: GridModel, data: GridData): Promise<boolean> {
  refused = [];
  model.dispatch(APPEND as never, { data } as never);
  if (refused.length === 0) return true;
  console.error("the grid refused", refused);
  await nextTurn(); // the grid's session takes in what was done before it can undo it
  model.dispatch("REQUEST_UNDO");
  await nextTurn();
  return false;
}

export function addAppendPlugin(): void {
  class AppendPlugin extends o_spreadsheet.UIPlugin {
    override handle(command: { readonly type: string }): void {
      if (command.type !== APPEND) return;
      const { data } = command as AppendCommand;
      const rangeData: RangeDataOf = (sheetId, xc) => this.getters.getRangeDataFromXc(sheetId, xc);
      const dispatch: Dispatch = (type, what) => {
        const result = this.dispatch(type as never, what as never);
        if (!result.isSuccessful) refused.push(`${type} ${JSON.stringify(what)}`);
        return result;
      };
      const position = this.getters.getSheetIds().length;
      data.sheets.forEach(({ id, name, colNumber, rowNumber }, index) =>
        dispatch("CREATE_SHEET", { sheetId: id, position: position + index, name, cols: colNumber, rows: rowNumber }),
      );
      if (refused.length > 0) return; // nothing to write on
      for (const [name, range] of Object.entries(data.namedRanges))
        dispatch("CREATE_NAMED_RANGE", { name, ranges: [rangeData(itemAt(data.sheets, 0).id, range)] });
      for (const sheet of data.sheets) fillSheet(sheet, data, dispatch, rangeData);
      const { facts, papers, keys } = data.kept;
      dispatch(KEEP, { facts, papers, keys });
      dispatch("ACTIVATE_SHEET", {
        sheetIdFrom: this.getters.getActiveSheetId(),
        sheetIdTo: itemAt(data.sheets, 0).id,
      });
    }
  }
  o_spreadsheet.registries.featurePluginRegistry.add("append_sheets", AppendPlugin);
}

function fillSheet(sheet: GridSheetData, data: GridData, dispatch: Dispatch, rangeData: RangeDataOf): void {
  const sheetId = sheet.id;
  if (!sheet.areGridLinesVisible) dispatch("SET_GRID_LINES_VISIBILITY", { sheetId, areGridLinesVisible: false });
  const place = (at: string) => ({ sheetId, ...o_spreadsheet.helpers.toCartesian(at) });
  for (const at of new Set([sheet.cells, sheet.styles, sheet.formats].flatMap(Object.keys)))
    dispatch("UPDATE_CELL", {
      ...place(at),
      content: sheet.cells[at] ?? "",
      ...numbered("style", sheet.styles[at], data.styles),
      ...numbered("format", sheet.formats[at], data.formats),
    });
  for (const [at, border] of Object.entries(sheet.borders))
    dispatch("SET_BORDER", { ...place(at), border: data.borders[border] });
  const resize = (dimension: "COL" | "ROW", headers: Readonly<Record<string, { readonly size: number }>>): void => {
    for (const [index, { size }] of Object.entries(headers))
      dispatch("RESIZE_COLUMNS_ROWS", { sheetId, dimension, elements: [Number(index)], size });
  };
  resize("COL", sheet.cols);
  resize("ROW", sheet.rows);
  const { xSplit, ySplit } = sheet.panes;
  if (xSplit > 0) dispatch("FREEZE_COLUMNS", { sheetId, quantity: xSplit });
  if (ySplit > 0) dispatch("FREEZE_ROWS", { sheetId, quantity: ySplit });
  const asRanges = (ranges: readonly string[]) => ranges.map((range) => rangeData(sheetId, range));
  for (const { ranges, ...cf } of sheet.conditionalFormats)
    dispatch("ADD_CONDITIONAL_FORMAT", { sheetId, cf, ranges: asRanges(ranges) });
  for (const { ranges, ...rule } of sheet.dataValidationRules)
    dispatch("ADD_DATA_VALIDATION_RULE", { sheetId, rule, ranges: asRanges(ranges) });
  for (const { range, config, type } of sheet.tables)
    dispatch("CREATE_TABLE", { sheetId, ranges: asRanges([range]), config, tableType: type });
  for (const { id, col, row, offset, width, height, data: definition } of sheet.figures)
    dispatch("CREATE_CHART", {
      sheetId,
      figureId: id,
      chartId: id,
      definition,
      col,
      row,
      offset,
      size: { width, height },
    });
}

const numbered = (
  key: "style" | "format",
  number: number | undefined,
  all: Readonly<Record<number, unknown>>,
): Record<string, unknown> => (number === undefined ? {} : { [key]: all[number] });
