import { cellAddress, placeOf } from "../../sheets/address";
import type { Chart } from "../../sheets/workbook";
import type { CellSizes } from "./sizes";
import { itemAt } from "../../reference/itemAt";

const INK = "#33434b";

/** What of a figure in the grid's data is ours to know. */
export interface ChartFigure {
  readonly id: string;
  readonly tag: string;
  readonly col: number;
  readonly row: number;
  readonly offset: { readonly x: number; readonly y: number };
  readonly width: number;
  readonly height: number;
  readonly data: ChartData;
}

interface ChartData {
  readonly type: string;
  readonly title?: Titled;
  readonly dataSource?: {
    readonly dataSets?: readonly { readonly dataSetId: string; readonly dataRange: string }[];
    readonly labelRange?: string;
    readonly [more: string]: unknown;
  };
  readonly dataSetStyles?: Readonly<Record<string, { readonly label?: string; readonly backgroundColor?: string }>>;
  readonly axesDesign?: { readonly x?: { readonly title?: Titled }; readonly y?: { readonly title?: Titled } };
  readonly [more: string]: unknown;
}

interface Titled {
  readonly text?: string;
  readonly [more: string]: unknown;
}

/** A chart as the grid's data has it. The grid draws lines through points where all x are numbers. */
export function chartFigure(chart: Chart, id: string, sizes: CellSizes): ChartFigure {
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
        dataSets: chart.y.series.map(({ range }, index) => ({ dataSetId: itemAt(ids, index), dataRange: range })),
        dataSetsHaveTitle: false,
        labelRange: chart.x.range,
      },
      dataSetStyles: Object.fromEntries(
        chart.y.series.map(({ name, ink }, index) => [itemAt(ids, index), { label: name, backgroundColor: ink }]),
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

/** A chart back from the grid's data; null for a kind of chart that we do not describe. */
export function chartOf({ tag, col, row, width, height, data }: ChartFigure, sizes: CellSizes): Chart | null {
  const { dataSets = [], labelRange } = data.dataSource ?? {};
  if (tag !== "chart" || data.type !== "line" || labelRange === undefined || dataSets.length === 0) return null;
  const last = cellAddress(reached(col + 1, width, sizes.width), reached(row + 1, height, sizes.height));
  return {
    kind: "line through points",
    over: `${cellAddress(col + 1, row + 1)}:${last}`,
    title: data.title?.text ?? "",
    x: { title: data.axesDesign?.x?.title?.text ?? "", range: labelRange },
    y: {
      title: data.axesDesign?.y?.title?.text ?? "",
      series: dataSets.map(({ dataSetId, dataRange }) => ({
        name: data.dataSetStyles?.[dataSetId]?.label ?? "",
        range: dataRange,
        ink: data.dataSetStyles?.[dataSetId]?.backgroundColor ?? INK,
      })),
    },
  };
}

/** The last of the columns or rows that so many pixels reach. */
function reached(from: number, pixels: number, size: (index: number) => number): number {
  let index = from;
  for (let left = pixels - size(from); left > 1; left -= size(++index));
  return index;
}
