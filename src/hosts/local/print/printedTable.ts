import type { GridModel } from "../grid";
import { type CellLook, cellLook } from "./cellLook";
import { printedChart } from "./printedChart";
import { POINTS_OF_PIXEL, type PrintedRows } from "./pagesOf";

/**
 * The cells of some columns as tables: the rows above the header, then the rest below the header, which comes back on each page.
 * What a cell says is put in as text, so nothing in it is read as markup.
 */
export function printedTable(
  model: GridModel,
  sheetId: string,
  columns: readonly number[],
  rows: PrintedRows,
  scale: number,
): HTMLTableElement[] {
  const { getters } = model;
  const points = (pixels: number): string => `${(pixels * POINTS_OF_PIXEL * scale).toFixed(2)}pt`;
  const wide = (column: number): number => getters.getColSize(sheetId, column);

  const table = (): HTMLTableElement => {
    const element = document.createElement("table");
    element.style.fontSize = `${scale}em`;
    element.style.width = points(columns.reduce((sum, column) => sum + wide(column), 0));
    const group = element.appendChild(document.createElement("colgroup"));
    for (const column of columns) group.appendChild(document.createElement("col")).style.width = points(wide(column));
    return element;
  };

  const line = (row: number): HTMLTableRowElement => {
    const element = document.createElement("tr");
    element.style.height = points(getters.getRowSize(sheetId, row));
    const looks = columns.map((column) => cellLook(getters, { sheetId, col: column, row }));
    const charts = getters.getFigures(sheetId).filter((figure) => figure.row === row);
    const isTaken = columns.map((column, place) => looks[place]!.isSeen || charts.some(({ col }) => col === column));
    for (let place = 0; place < columns.length;) {
      const look = looks[place];
      const column = columns[place];
      if (look === undefined || column === undefined) break;
      const span = overflows(look) ? blanksAfter(isTaken, place) : 1;
      const cell = element.appendChild(tableCell(look));
      cell.colSpan = span;
      for (const chart of charts) if (chart.col === column) cell.append(...printedChart(model, sheetId, chart, points));
      place += span;
    }
    return element;
  };

  const parts = [table()];
  const lines = (rowsOfPart: readonly number[], part: "createTHead" | "createTBody"): void => {
    let body: HTMLTableSectionElement | undefined;
    for (const row of rowsOfPart) {
      if (body === undefined || rows.begins.has(row)) body = parts.at(-1)?.[part]();
      body?.append(line(row));
    }
  };
  lines(rows.above, "createTBody");
  if (rows.above.length > 0) parts.push(table());
  lines(rows.titles, "createTHead");
  lines(rows.rest, "createTBody");
  return parts;
}

/** A text that the grid lets run on over the blank cells beside it, with its ground where it is marked. */
const overflows = ({ isText, border, align, style, text }: CellLook): boolean =>
  isText && text !== "" && border === null && align === "left" && style.wrapping !== "wrap";

/** The cells that a text may take: its own and the blank ones beside it, up to a chart. */
function blanksAfter(isTaken: readonly boolean[], place: number): number {
  const next = isTaken.indexOf(true, place + 1);
  return (next === -1 ? isTaken.length : next) - place;
}

function tableCell({ text, align, isText, style, border }: CellLook): HTMLTableCellElement {
  const cell = document.createElement("td");
  cell.textContent = text;
  Object.assign(cell.style, {
    textAlign: align,
    color: style.textColor ?? "",
    backgroundColor: style.fillColor ?? "",
    fontWeight: style.bold === true ? "bold" : "",
    fontStyle: style.italic === true ? "italic" : "",
    fontSize: style.fontSize === undefined ? "" : `${style.fontSize / 10}em`,
    verticalAlign: style.verticalAlign === "middle" ? "middle" : "",
    whiteSpace: isText ? "" : "nowrap", // a number is never broken
  });
  for (const side of ["top", "right", "bottom", "left"] as const) {
    const drawn = border?.[side];
    if (drawn !== undefined)
      cell.style.setProperty(`border-${side}`, `${drawn.style === "thin" ? 0.5 : 1.25}pt solid ${drawn.color}`);
  }
  return cell;
}
