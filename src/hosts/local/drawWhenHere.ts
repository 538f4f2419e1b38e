import { chartLibrary, isChartLibraryHere } from "./chartLibrary";

export const CHART_MISSING =
  "This chart could not be drawn: the part of the page that draws charts did not load. Open this sheet again to try once more. The numbers are whole.";

type Draws = (this: Drawn, ...what: unknown[]) => void;

/** A component of the grid's library that has a chart drawn on its canvas. */
interface Drawn {
  chart?: object;
  readonly canvas?: { readonly el: HTMLElement | null };
  readonly chartCanvas?: { readonly el: HTMLElement | null };
  createChart: Draws;
  updateChartJs?: Draws;
}

/**
 * Lets the grid show a sheet before the library that draws its charts is here: a chart is drawn when it comes, as the numbers
 * are by then. Where it does not come, a sentence stands in the chart's place, and the next time it is asked for again.
 */
export function drawWhenHere(): void {
  const { chartComponentRegistry, sidePanelRegistry } = o_spreadsheet.registries;
  // of the kinds of charts some are drawn by the one, some by the other, and those that are no charts by none
  for (const kind of ["line", "pie"]) waits(chartComponentRegistry.get(kind).prototype as never);
  waits((sidePanelRegistry.get("ColumnStats").Body as { readonly prototype: Drawn }).prototype);
}

function waits(drawn: Drawn): void {
  const { createChart, updateChartJs } = drawn;
  const wanted = new WeakMap<Drawn, unknown[]>(); // what a chart that is not here yet is to show
  drawn.createChart = function (...what) {
    if (isChartLibraryHere()) return createChart.apply(this, what);
    const asked = wanted.has(this);
    wanted.set(this, what);
    if (asked) return;
    chartLibrary()
      .then(
        () => {
          if (!isShown(this)) return;
          missing(this)?.remove();
          createChart.apply(this, wanted.get(this)!);
        },
        () => isShown(this) && sayMissing(this),
      )
      .finally(() => wanted.delete(this));
  };
  if (updateChartJs !== undefined)
    drawn.updateChartJs = function (...what) {
      (this.chart === undefined ? drawn.createChart : updateChartJs).apply(this, what);
    };
}

const canvasOf = ({ canvas, chartCanvas }: Drawn): HTMLElement | null => (canvas ?? chartCanvas)?.el ?? null;

const isShown = (drawn: Drawn): boolean => canvasOf(drawn)?.isConnected === true;

const missing = (drawn: Drawn): Element | null =>
  canvasOf(drawn)?.parentElement?.querySelector(":scope > .chart-missing") ?? null;

function sayMissing(drawn: Drawn): void {
  if (missing(drawn) !== null) return;
  const line = document.createElement("p");
  line.className = "chart-missing";
  line.setAttribute("role", "status");
  line.textContent = CHART_MISSING;
  canvasOf(drawn)!.after(line);
}
