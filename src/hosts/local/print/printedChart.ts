import { isChartLibraryHere } from "../chartLibrary";
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
): HTMLElement[] {
  if (tag !== "chart") return [];
  const chart = getters.getChartIds(sheetId).find((known) => getters.getFigureIdFromChartId(known) === id);
  if (chart === undefined) return [];
  const drawn = isChartLibraryHere() ? pictureOf(getters, chart, { width, height }) : missing();
  Object.assign(drawn.style, {
    left: points(offset.x),
    top: points(offset.y),
    width: points(width),
    height: points(height),
  });
  return [drawn];
}

function pictureOf(
  getters: GridModel["getters"],
  chart: string,
  size: { readonly width: number; readonly height: number },
): HTMLImageElement {
  const canvas = Object.assign(document.createElement("canvas"), size);
  const runtime = onPaper(getters.getChartRuntime(chart));
  const { type } = getters.getChartDefinition(chart);
  const clear = o_spreadsheet.chartHelpers.drawChartOnCanvas(canvas, runtime, size, type);
  const image = document.createElement("img");
  image.alt = "";
  image.src = canvas.toDataURL();
  clear();
  return image;
}

/** In its place, where it would stand: whoever holds the paper sees that something is missing. */
function missing(): HTMLElement {
  const line = document.createElement("p");
  line.textContent = "A chart stands here that was not on the screen yet. Wait until it is, then print again.";
  return line;
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
