import { placeOf } from "../../sheets/address";
import type { Chart } from "../../sheets/workbook";

/** Sizes of a sheet's columns and rows in pixels, counted from 1. */
export interface CellSizes {
  readonly width: (column: number) => number;
  readonly height: (row: number) => number;
}

const INK = "#33434b";

/** A chart as the grid's data has it. The grid draws lines through points where all x are numbers. */
export function chartFigure(chart: Chart, id: string, sizes: CellSizes): Record<string, unknown> {
  const [first, last] = chart.over.split(":").map(placeOf) as [Place, Place];
  const ids = chart.y.series.map((_, index) => `${id}-line${index + 1}`);
  const titleOf = (text: string) => ({ text, color: INK, fontSize: 12 });
  return {
    id,
    tag: "chart",
    col: first.column - 1,
    row: first.row - 1,
    offset: { x: 0, y: 0 },
    width: total(first.column, last.column, sizes.width),
    height: total(first.row, last.row, sizes.height),
    data: {
      chartId: id,
      type: "line",
      title: { text: chart.title, color: INK, fontSize: 14, bold: true },
      dataSource: {
        type: "range",
        dataSets: chart.y.series.map(({ range }, index) => ({ dataSetId: ids[index]!, dataRange: range })),
        dataSetsHaveTitle: false,
        labelRange: chart.x.range,
      },
      dataSetStyles: Object.fromEntries(
        chart.y.series.map(({ name, ink }, index) => [ids[index]!, { label: name, backgroundColor: ink }]),
      ),
      axesDesign: { x: { title: titleOf(chart.x.title) }, y: { title: titleOf(chart.y.title) } },
      legendPosition: "top",
      labelsAsText: false,
      stacked: false,
      cumulative: false,
      humanize: false,
    },
  };
}

type Place = ReturnType<typeof placeOf>;

function total(from: number, to: number, size: (index: number) => number): number {
  let sum = 0;
  for (let index = from; index <= to; index++) sum += size(index);
  return sum;
}
