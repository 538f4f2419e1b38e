import { addressesIn, cellToChange } from "./places";
import type { Played } from "./object";
import { misuse } from "./refuse";
import { type Area, LAST_COLUMN, LAST_ROW } from "./state";

/** A property of the look of every cell of an area. */
const paint =
  (name: string) =>
  (area: Area, value: unknown): void => {
    for (const at of addressesIn(area).flat()) cellToChange(area.sheet, at).look[name] = value;
  };

const colour =
  (name: string) =>
  (area: Area, value: string): void => {
    if (!/^#[0-9a-fA-F]{6}$/.test(value)) throw misuse(`no colour: ${value}`);
    paint(name)(area, value.toUpperCase());
  };

interface Side {
  readonly area: Area;
  readonly side: string;
}

/** A line between cells is the lower or right one of a cell and the upper or left one of its neighbour. */
const drawLine =
  (name: string) =>
  ({ area, side }: Side, value: unknown): void => {
    const { column, row, columns, rows } = area;
    const draw = (part: Partial<Area>, edge: string): void =>
      paint(`borders.${edge}.${name}`)({ ...area, ...part }, value);
    if (side === "InsideHorizontal") {
      if (rows === 1) throw misuse("no line lies inside one row");
      draw({ rows: rows - 1 }, "EdgeBottom");
      draw({ row: row + 1, rows: rows - 1 }, "EdgeTop");
    } else if (side === "InsideVertical") {
      if (columns === 1) throw misuse("no line lies inside one column");
      draw({ columns: columns - 1 }, "EdgeRight");
      draw({ column: column + 1, columns: columns - 1 }, "EdgeLeft");
    } else if (side === "EdgeTop") draw({ rows: 1 }, side);
    else if (side === "EdgeBottom") draw({ row: row + rows - 1, rows: 1 }, side);
    else if (side === "EdgeLeft") draw({ columns: 1 }, side);
    else draw({ column: column + columns - 1, columns: 1 }, side);
  };

export const playRangeFormat: Played = {
  parts: { font: (area) => area, fill: (area) => area, borders: (area) => area },
  writes: {
    horizontalAlignment: paint("horizontalAlignment"),
    verticalAlignment: paint("verticalAlignment"),
    wrapText: paint("wrapText"),
    columnWidth: ({ sheet, column, columns, rows }: Area, points: number) => {
      if (rows !== LAST_ROW) throw misuse("a width is that of whole columns here");
      if (points < 0 || points > 1342.5) throw misuse(`no width: ${points}`); // 255 characters
      for (let right = 0; right < columns; right++) sheet.widths.set(column + right, points);
    },
    rowHeight: ({ sheet, row, columns, rows }: Area, points: number) => {
      if (columns !== LAST_COLUMN) throw misuse("a height is that of whole rows here");
      if (points < 0 || points > 409.5) throw misuse(`no height: ${points}`);
      for (let down = 0; down < rows; down++) sheet.heights.set(row + down, points);
    },
  },
};

export const playFormatParts: Record<string, Played> = {
  RangeFont: {
    writes: {
      color: colour("font.color"),
      size: paint("font.size"),
      bold: paint("font.bold"),
      italic: paint("font.italic"),
    },
  },
  RangeFill: { writes: { color: colour("fill.color") } },
  RangeBorderCollection: { calls: { getItem: (area, side) => ({ area, side }) } },
  RangeBorder: { writes: { style: drawLine("style"), weight: drawLine("weight"), color: drawLine("color") } },
};
