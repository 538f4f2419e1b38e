import type { Played } from "./object";
import { addressIn } from "./places";
import { misuse } from "./refuse";
import type { Area, ChartState, SheetState } from "./state";

export const playCharts: Record<string, Played> = {
  ChartCollection: {
    calls: {
      add: (sheet: SheetState, type: string, area: Area): ChartState => {
        if (area.sheet.isDeleted) throw misuse("a chart's cells are gone");
        const series = Array.from({ length: area.columns }, () => ({}));
        const chart: ChartState = { type, from: "", to: "", texts: {}, series };
        sheet.charts.push(chart);
        return chart;
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
    writes: { displayBlanksAs: ({ texts }: ChartState, value) => (texts.blanks = value) },
    calls: {
      setPosition: (chart: ChartState, from: string, to: string) => Object.assign(chart, { from, to }),
    },
  },
  ChartTitle: { writes: { text: ([{ texts }, name], value) => (texts[name] = value) } },
  ChartAxes: { parts: { categoryAxis: (chart) => [chart, "x"], valueAxis: (chart) => [chart, "y"] } },
  ChartAxis: { parts: { title: (axis) => axis } },
  ChartAxisTitle: { writes: { text: ([{ texts }, name], value) => (texts[name] = value) } },
  ChartLegend: { writes: { position: ({ texts }: ChartState, value) => (texts.legend = value) } },
  ChartSeriesCollection: {
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
