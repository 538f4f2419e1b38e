import type { SheetChart } from "hucre/xlsx";
import type { Chart } from "../../../sheets/workbook";
import { FileRefusal } from "../fileRefusal";
import { absoluteArea, readArea } from "../places";
import { toFileText } from "../xlsxText";

/** A chart as hucre takes it: points joined by straight lines, over the cells that it covers. */
export function fileChart(chart: Chart, sheet: string): SheetChart {
  const over = areaOf(chart.over, chart);
  const rangeOf = (range: string): string => absoluteArea(sheet, areaOf(range, chart));
  return {
    type: "scatter",
    scatterStyle: "lineMarker",
    title: toFileText(chart.title),
    titleFontSize: 12,
    altText: toFileText(`${chart.title}: ${chart.y.title} over ${chart.x.title}`),
    anchor: {
      from: { row: over.first.row - 1, col: over.first.column - 1 },
      to: { row: over.last.row, col: over.last.column },
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

function areaOf(range: string, { title }: Chart) {
  const area = readArea(range);
  if (area === null) throw new FileRefusal(`The chart "${title}" refers to ${range}, which is no range of its sheet.`);
  return area;
}
