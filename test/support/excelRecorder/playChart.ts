import type { Played } from "./object";
import { addressesIn, addressIn, cellAt } from "./places";
import { misuse } from "./refuse";
import type { Area, ChartState, SheetState } from "./state";

const isFilled = (area: Area): boolean =>
  addressesIn(area)
    .flat()
    .some((at) => cellAt(area.sheet, at).value !== "");

export const playCharts: Record<string, Played> = {
  ChartCollection: {
    calls: {
      add: (sheet: SheetState, type: string, area: Area): ChartState => {
        if (area.sheet.isDeleted) throw misuse("a chart's cells are gone");
        const series = isFilled(area) ? Array.from({ length: area.columns }, () => ({})) : []; // blank cells make no line
        const chart: ChartState = { name: "", type, from: "", to: "", texts: {}, series };
        sheet.charts.push(chart);
        return chart;
      },
      getItem: (sheet: SheetState, key: string) => sheet.charts.find(({ name }) => name === key) ?? null,
      getItemOrNullObject: (sheet: SheetState, name: string) => {
        const chart = sheet.charts.find((each) => each.name === name);
        return chart === undefined ? null : { chart, sheet };
      },
    },
  },
  Chart: {
    parts: {
      title: (chart) => [chart, "title"],
      axes: (chart) => chart,
      legend: (chart) => chart,
      series: (chart) => chart,
    },
    reads: { name: ({ chart }) => chart.name },
    writes: {
      name: (chart, value) => (chart.name = value),
      displayBlanksAs: ({ texts }: ChartState, value) => (texts.blanks = value),
    },
    calls: {
      delete: ({ chart, sheet }: { chart: ChartState; sheet: SheetState }) =>
        sheet.charts.splice(sheet.charts.indexOf(chart), 1),
      setPosition: (chart: ChartState, from: string, to: string) => Object.assign(chart, { from, to }),
    },
  },
  ChartTitle: { writes: { text: ([{ texts }, name], value) => (texts[name] = value) } },
  ChartAxes: { parts: { categoryAxis: (chart) => [chart, "x"], valueAxis: (chart) => [chart, "y"] } },
  ChartAxis: { parts: { title: (axis) => axis } },
  ChartAxisTitle: { writes: { text: ([{ texts }, name], value) => (texts[name] = value) } },
  ChartLegend: { writes: { position: ({ texts }: ChartState, value) => (texts.legend = value) } },
  ChartSeriesCollection: {
    reads: { count: ({ series }: ChartState) => series.length },
    calls: {
      getItemAt: ({ series }: ChartState, index: number) => series[index] ?? null,
      add: ({ series }: ChartState, name: string) => {
        series.push({ name });
        return series.at(-1);
      },
    },
  },
  ChartSeries: {
    writes: {
      name: (series, value) => (series.name = value),
      smooth: (series, value) => (series.smooth = value),
      markerStyle: (series, value) => (series.marker = value),
      markerSize: (series, value) => (series.markerSize = value),
      markerBackgroundColor: (series, value) => (series.markerFill = value),
      markerForegroundColor: (series, value) => (series.markerInk = value),
    },
    parts: { format: (series) => series },
    calls: {
      setXAxisValues: (series, area: Area) => (series.x = addressIn(area)),
      setValues: (series, area: Area) => (series.y = addressIn(area)),
    },
  },
  ChartSeriesFormat: { parts: { line: (series) => series } },
  ChartLineFormat: {
    writes: { color: (series, value) => (series.ink = value), weight: (series, value) => (series.weight = value) },
  },
};
