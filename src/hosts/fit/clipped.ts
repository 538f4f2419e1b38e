import type { Place } from "../../sheets/address";
import { readRectangle, rectangleText } from "../../sheets/rectangle";
import type { Chart, OldMark, Sheet } from "../../sheets/workbook";
import type { Reach } from "./strays";

const UPPER_LEFT = "A1:H20";
const SPARE = { rows: 100, columns: 26 }; // beyond the last cell, where somebody may go on

/** A sheet whose ranges, widths and heights end where a grid of that reach may end. */
export function clipped(sheet: Sheet, reach: Reach): Sheet {
  const end = { row: reach.rows + SPARE.rows, column: reach.columns + SPARE.columns };
  const inside = (range: string): string | null => {
    const there = readRectangle(range);
    if (there === null || there.top > end.row || there.left > end.column) return null;
    if (there.bottom <= end.row && there.right <= end.column) return range;
    return rectangleText({
      ...there,
      bottom: Math.min(there.bottom, end.row),
      right: Math.min(there.right, end.column),
    });
  };
  const ranged = <Item extends { readonly range: string }>(items: readonly Item[]): Item[] =>
    items.flatMap((item) => {
      const range = inside(item.range);
      return range === null ? [] : [range === item.range ? item : { ...item, range }];
    });
  const { hints, oldMarks, charts, tables, print, frozen } = sheet;
  return {
    ...sheet,
    columns: sheet.columns.slice(0, end.column),
    tallRows: sheet.tallRows.filter(({ row }) => row <= end.row),
    frozen: {
      rows: frozen.rows < reach.rows ? frozen.rows : 0,
      columns: frozen.columns < reach.columns ? frozen.columns : 0,
    },
    lists: ranged(sheet.lists),
    flags: ranged(sheet.flags),
    ...(hints === undefined ? {} : { hints: ranged(hints) }),
    ...(oldMarks === undefined ? {} : { oldMarks: oldMarks.map((mark) => clippedMark(mark, inside)) }),
    ...(charts === undefined ? {} : { charts: charts.flatMap((chart) => clippedChart(chart, inside)) }),
    ...(tables === undefined ? {} : { tables: ranged(tables) }),
    ...(print === undefined ? {} : { print: clippedPrint(print, inside, end) }),
  };
}

type Clip = (range: string) => string | null;

const clippedMark = ({ ranges, state }: OldMark, inside: Clip): OldMark => ({
  ranges: ranges.flatMap((range) => inside(range) ?? []),
  state,
});

/** Blank cells beyond the end draw nothing; a chart that stands beyond it comes to the upper left. */
function clippedChart(chart: Chart, inside: Clip): Chart[] {
  const x = inside(chart.x.range);
  const series = chart.y.series.flatMap((one) => {
    const range = inside(one.range);
    return range === null ? [] : [{ ...one, range }];
  });
  if (x === null || series.length === 0) return [];
  return [
    {
      ...chart,
      over: inside(chart.over) ?? UPPER_LEFT,
      x: { ...chart.x, range: x },
      y: { ...chart.y, series },
    },
  ];
}

function clippedPrint(print: NonNullable<Sheet["print"]>, inside: Clip, end: Place): NonNullable<Sheet["print"]> {
  const { area, titleRows, titleColumns, ...rest } = print;
  const shown = area === undefined ? null : inside(area);
  return {
    ...rest,
    ...(titleRows === undefined || titleRows.last > end.row ? {} : { titleRows }),
    ...(titleColumns === undefined || titleColumns.last > end.column ? {} : { titleColumns }),
    ...(shown === null ? {} : { area: shown }),
  };
}
