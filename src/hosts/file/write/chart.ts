import type { SheetChart } from "hucre/xlsx";
import type { Chart } from "../../../sheets/workbook";
import { FileRefusal } from "../fileRefusal";
import { rangeText } from "../../../sheets/rangeRef";
import { readRectangle, type Rectangle } from "../../../sheets/rectangle";
import { toFileText } from "../xlsxText";

/** A chart as hucre takes it: points joined by straight lines, over the cells that it covers. */
export function fileChart(chart: Chart, sheet: string): SheetChart {
  const over = rectangleOf(chart.over, chart);
  const rangeOf = (range: string): string => rangeText({ sheet, ...rectangleOf(range, chart) });
  return {
    type: "scatter",
    scatterStyle: "lineMarker",
    title: toFileText(chart.title),
    titleFontSize: 12,
    altText: toFileText(`${chart.title}: ${chart.y.title} over ${chart.x.title}`),
    anchor: {
      from: { row: over.top - 1, col: over.left - 1 },
      to: { row: over.bottom, col: over.right },
    },
    series: chart.y.series.map(({ name, range, ink }) => ({
      name: toFileText(name),
      categories: rangeOf(chart.x.range),
      values: rangeOf(range),
      color: ink.slice(1),
      smooth: false,
      stroke: { width: 2 },
      marker: { symbol: "circle", size: 5, fill: ink.slice(1), line: ink.slice(1) },
    })),
    axes: {
      x: { title: toFileText(chart.x.title) },
      y: { title: toFileText(chart.y.title), axisTitleRotation: -90, gridlines: { major: true } },
    },
    legend: "top",
    dispBlanksAs: "gap",
  };
}

function rectangleOf(range: string, { title }: Chart): Rectangle {
  const rectangle = readRectangle(range);
  if (rectangle === null)
    throw new FileRefusal(`The chart "${title}" refers to ${range}, which is no range of its sheet.`);
  return rectangle;
}
