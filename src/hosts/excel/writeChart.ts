import type { Chart, Series } from "../../sheets/workbook";

const WEIGHT = 2; // points

/** A chart of lines through points. Excel makes the first line itself, from the cells that a new chart is given. */
export function writeChart(sheet: Excel.Worksheet, { over, title, x, y }: Chart): void {
  const chart = sheet.charts.add("XYScatterLinesNoMarkers", sheet.getRange(x.range), "Columns");
  const [from, to = from] = over.split(":") as [string, string?];
  chart.setPosition(from, to);
  chart.title.text = title;
  chart.displayBlanksAs = "NotPlotted";
  chart.axes.categoryAxis.title.text = x.title;
  chart.axes.valueAxis.title.text = y.title;
  chart.legend.position = "Bottom";
  y.series.forEach((series, index) =>
    writeSeries(sheet, index === 0 ? chart.series.getItemAt(0) : chart.series.add(series.name), x.range, series),
  );
}

function writeSeries(sheet: Excel.Worksheet, line: Excel.ChartSeries, x: string, { name, range, ink }: Series): void {
  line.name = name;
  line.setXAxisValues(sheet.getRange(x));
  line.setValues(sheet.getRange(range));
  line.format.line.color = ink;
  line.format.line.weight = WEIGHT;
  line.smooth = false;
}
