import type { Chart, Series } from "../../sheets/workbook";

const WEIGHT = 2; // points
const MARKER = 5; // points, as in a file

/**
 * A chart of lines through points. Excel makes the first line itself from the cells that a new chart is given, but may make
 * none where these are blank, as in an empty budget: so it is asked how many there are before one is used.
 */
export async function writeChart(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { over, title, x, y }: Chart,
): Promise<void> {
  const chart = sheet.charts.add("XYScatterLines", sheet.getRange(x.range), "Columns");
  chart.name = title;
  const [from, to = from] = over.split(":") as [string, string?];
  chart.setPosition(from, to);
  chart.title.text = title;
  chart.displayBlanksAs = "NotPlotted";
  chart.axes.categoryAxis.title.text = x.title;
  chart.axes.valueAxis.title.text = y.title;
  chart.legend.position = "Bottom";
  chart.series.load("count");
  await context.sync();
  const there = chart.series.count;
  y.series.forEach((series, index) =>
    writeSeries(sheet, index < there ? chart.series.getItemAt(index) : chart.series.add(series.name), x.range, series),
  );
  await context.sync();
}

/** Takes away a chart of which Excel refused a part: half a chart could be read as a whole one. */
export async function removeChart(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { title }: Chart,
): Promise<void> {
  const chart = sheet.charts.getItemOrNullObject(title);
  chart.load("name");
  await context.sync();
  if (chart.isNullObject) return;
  chart.delete();
  await context.sync();
}

function writeSeries(sheet: Excel.Worksheet, line: Excel.ChartSeries, x: string, { name, range, ink }: Series): void {
  line.name = name;
  line.setXAxisValues(sheet.getRange(x));
  line.setValues(sheet.getRange(range));
  line.format.line.color = ink;
  line.format.line.weight = WEIGHT;
  line.smooth = false;
  // a series of one point, such as where the fan works, has no line: without its marker nothing is drawn of it
  line.markerStyle = "Circle";
  line.markerSize = MARKER;
  line.markerBackgroundColor = ink;
  line.markerForegroundColor = ink;
}
