import type { GridModel } from "../grid";

type Figure = ReturnType<GridModel["getters"]["getFigures"]>[number];

/** Drawn larger than on the screen, since paper shows finer points. */
const FINER = 3;

/** A chart of the sheet as a picture over the cells that begin with the one it lies on. */
export function printedChart(
  { getters }: GridModel,
  sheetId: string,
  { id, offset, width, height, tag }: Figure,
  points: (pixels: number) => string,
): HTMLImageElement[] {
  if (tag !== "chart") return [];
  const chart = getters.getChartIds(sheetId).find((known) => getters.getFigureIdFromChartId(known) === id);
  if (chart === undefined) return [];
  const canvas = document.createElement("canvas");
  Object.assign(canvas, { width, height });
  const runtime = onPaper(getters.getChartRuntime(chart));
  const clear = o_spreadsheet.chartHelpers.drawChartOnCanvas(
    canvas,
    runtime,
    { width, height },
    getters.getChartDefinition(chart).type,
  );
  const image = document.createElement("img");
  image.alt = "";
  image.src = canvas.toDataURL();
  clear();
  Object.assign(image.style, {
    left: points(offset.x),
    top: points(offset.y),
    width: points(width),
    height: points(height),
  });
  return [image];
}

/** The chart as the grid shows it, at once and with the points that paper has. */
function onPaper(
  runtime: ReturnType<GridModel["getters"]["getChartRuntime"]>,
): ReturnType<GridModel["getters"]["getChartRuntime"]> {
  if (!("chartJsConfig" in runtime)) return runtime;
  const { chartJsConfig } = runtime;
  const options = { ...chartJsConfig.options, animation: false, responsive: false, devicePixelRatio: FINER };
  return { ...runtime, chartJsConfig: { ...chartJsConfig, options } } as typeof runtime;
}
