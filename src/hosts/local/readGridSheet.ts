import type { Chart, ChoiceList, Flag, OldMark, PrintSetup, Sheet, SheetTable, TallRow } from "../../sheets/workbook";
import { stateOfOldRule } from "../../sheets/oldRule";
import { type ChartFigure, chartOf } from "./charts";
import type { GridModel } from "./grid";
import { type Fact, keptGetters } from "./keptPlugin";
import { type GridStyle, styleNameOf } from "./looks";
import { type KnownCells, sheetCells } from "./readGridCells";
import { rangeOf } from "./shownCells";
import { type CellSizes, characters, COLUMN, linesOf, ROW } from "./sizes";

/** One sheet of the grid as a description. */
export function calculatedSheet(model: GridModel, sheetId: string, known: KnownCells = new WeakMap()): Sheet {
  const { getters } = model;
  const { xSplit, ySplit } = getters.getPaneDivisions(sheetId);
  const print = printSetup(model, sheetId);
  const notes = new Map(factsOn(model, sheetId, "note").map(({ range, text }) => [rangeOf(range.zone), text]));
  const hints = factsOn(model, sheetId, "hint").map(({ range, text = "" }) => ({ range: rangeOf(range.zone), text }));
  const oldMarks = oldMarksOf(getters.getConditionalFormats(sheetId));
  const charts = sheetCharts(getters, sheetId);
  const tables = sheetTables(model, sheetId);
  const key = keptGetters(model).getSheetKey(sheetId);
  return {
    ...(key === undefined ? {} : { key }),
    name: getters.getSheetName(sheetId),
    columns: columnWidths(getters, sheetId),
    tallRows: tallRows(getters, sheetId),
    frozen: { rows: ySplit, columns: xSplit },
    ...(getters.getGridLinesVisibility(sheetId) ? {} : { gridlines: false as const }),
    cells: sheetCells(getters, sheetId, notes, known),
    lists: getters.getDataValidationRules(sheetId).flatMap(choiceLists),
    flags: getters.getConditionalFormats(sheetId).flatMap(flagsOf),
    ...(oldMarks.length === 0 ? {} : { oldMarks }),
    ...(hints.length === 0 ? {} : { hints }),
    ...(charts.length === 0 ? {} : { charts }),
    ...(tables.length === 0 ? {} : { tables }),
    ...(print === null ? {} : { print }),
  };
}

type Getters = GridModel["getters"];

const upTo = (count: number): number[] => Array.from({ length: count }, (_, index) => index);

/** Widths up to the last column that somebody set. */
function columnWidths(getters: Getters, sheetId: string): number[] {
  const sizes = upTo(getters.getNumberCols(sheetId)).map((column) => getters.getColSize(sheetId, column));
  const set = sizes.flatMap((size, column) => (size === COLUMN ? [] : [column]));
  return sizes.slice(0, (set.at(-1) ?? -1) + 1).map(characters);
}

/** A row that nobody set is as high as its text needs: the grid sees to that. */
const tallRows = (getters: Getters, sheetId: string): TallRow[] =>
  upTo(getters.getNumberRows(sheetId)).flatMap((row) => {
    const size = getters.getUserRowSize(sheetId, row) ?? ROW;
    return size <= ROW ? [] : [{ row: row + 1, lines: linesOf(size) }];
  });

function sheetCharts(getters: Getters, sheetId: string): Chart[] {
  const sizes: CellSizes = {
    width: (column) => getters.getColSize(sheetId, column - 1),
    height: (row) => getters.getUserRowSize(sheetId, row - 1) ?? ROW,
  };
  return getters.getChartIds(sheetId).flatMap((id) => {
    const figure = getters.getFigure(sheetId, getters.getFigureIdFromChartId(id));
    const data = getters.getChartDefinition(id) as unknown as ChartFigure["data"];
    const chart = figure === undefined ? null : chartOf({ ...figure, data }, sizes);
    return chart === null ? [] : [chart];
  });
}

/** A rule of another kind than a list of words has no place in a description. */
function choiceLists({
  ranges,
  criterion,
  isBlocking,
}: ReturnType<Getters["getDataValidationRules"]>[number]): ChoiceList[] {
  if (criterion.type !== "isValueInList") return [];
  const choices = criterion.values.map(String);
  return ranges.map(({ zone }) => ({ range: rangeOf(zone), choices, strict: isBlocking === true }));
}

/** A conditional format by a text, in a look of ours; others have no place in a description. */
function flagsOf({ ranges, rule }: ReturnType<Getters["getConditionalFormats"]>[number]): Flag[] {
  if (rule.type !== "CellIsRule" || rule.operator !== "containsText") return [];
  const style = styleNameOf(rule.style as GridStyle);
  const containsText = rule.values[0];
  if (style === undefined || containsText === undefined) return [];
  return ranges.map((range) => ({ range: range.replaceAll("$", ""), containsText, style }));
}

function oldMarksOf(formats: ReturnType<Getters["getConditionalFormats"]>): OldMark[] {
  const byState = new Map<string, string[]>();
  for (const { ranges, rule } of formats) {
    if (rule.type !== "CellIsRule" || rule.operator !== "customFormula") continue;
    const state = stateOfOldRule(rule.values[0] ?? "");
    if (state === null) continue;
    byState.set(state, [...(byState.get(state) ?? []), ...ranges.map((range) => range.replaceAll("$", ""))]);
  }
  return [...byState].map(([state, ranges]) => ({ ranges, state }));
}

function sheetTables(model: GridModel, sheetId: string): SheetTable[] {
  const { getters } = model;
  const named = factsOn(model, sheetId, "table name");
  return getters.getCoreTables(sheetId).flatMap(({ range }) => {
    const name = named.find(
      ({ range: kept }) => kept.zone.left === range.zone.left && kept.zone.top === range.zone.top,
    )?.text;
    return name === undefined ? [] : [{ name, range: rangeOf(range.zone) }];
  });
}

/** How a sheet is printed; null where nobody said it. */
export function printSetup(model: GridModel, sheetId: string): PrintSetup | null {
  const kept = keptGetters(model).getPaper(sheetId);
  if (kept === undefined) return null;
  const { scale, ...paper } = kept;
  const begins = { rows: factsOn(model, sheetId, "page row"), columns: factsOn(model, sheetId, "page column") };
  const rows = factsOn(model, sheetId, "title rows")[0]?.range.zone;
  const columns = factsOn(model, sheetId, "title columns")[0]?.range.zone;
  const area = factsOn(model, sheetId, "print area")[0]?.range;
  return {
    ...paper,
    ...(rows === undefined ? {} : { titleRows: { first: rows.top + 1, last: rows.bottom + 1 } }),
    ...(columns === undefined ? {} : { titleColumns: { first: columns.left + 1, last: columns.right + 1 } }),
    ...(area === undefined ? {} : { area: rangeOf(area.zone) }),
    ...(scale === undefined
      ? {}
      : {
          shared: {
            scale,
            rows: begins.rows.map(({ range }) => range.zone.top + 1),
            columns: begins.columns.map(({ range }) => range.zone.left + 1),
          },
        }),
  };
}

const factsOn = (model: GridModel, sheetId: string, wanted: Fact["kind"]) =>
  keptGetters(model)
    .getKeptFacts()
    .filter(({ range, kind }) => range.sheetId === sheetId && kind === wanted);
