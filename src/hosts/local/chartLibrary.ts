import { loadScript } from "./load";

const FILE = "vendor/chart.umd.min.js";

let coming: Promise<void> | null = null;

export const isChartLibraryHere = (): boolean => "Chart" in globalThis;

/** What draws charts. It is fetched when it is first asked for, and after a failure asked for anew. */
export function chartLibrary(): Promise<void> {
  coming ??= loadScript(FILE).then(extend, (error: unknown) => {
    coming = null;
    throw error;
  });
  return coming;
}

/** The grid gives the library parts of its own when the first chart is mounted, which may have been before it was here. */
function extend(): void {
  const { Chart } = globalThis as unknown as { Chart: never };
  for (const part of o_spreadsheet.registries.chartJsExtensionRegistry.getAll()) part.register(Chart);
}
