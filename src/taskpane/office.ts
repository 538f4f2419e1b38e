/**
 * Where the pane finds itself: office.js not heard of yet, inside Excel, beside the local sheet, or with neither
 * (a browser, offline, office.js blocked).
 */
export type PageSurroundings = "waiting" | "excel" | "local" | "alone";

/** How long the pane waits before it says that it works alone. */
export const PATIENCE = 3000; // ms

/** The page's way to office.js: what the script has defined by now, and its tag (null where the page has none). */
export interface OfficeOfPage {
  readonly get: () => { onReady(): Promise<{ host: unknown }> } | undefined;
  readonly script: Pick<EventTarget, "addEventListener"> | null;
}

/**
 * Lets the cell functions' file, which comes behind office.js, find somebody to hand its functions to where office.js does not come:
 * nobody will call them, and it would stop with an error.
 */
export function takeFunctionsWithout(script: OfficeOfPage["script"], page: { CustomFunctions?: unknown }): void {
  script?.addEventListener("error", () => {
    page.CustomFunctions ??= { associate: () => undefined, runsAllFiles: true };
  });
}

/** Whether the page around the pane is the local sheet's; a page of another origin (Excel on the web) may not be asked. */
export function isBesideLocalSheet(around: () => Pick<Window, "ductLedgerHost">): boolean {
  try {
    return around().ductLedgerHost?.kind === "local";
  } catch {
    return false;
  }
}

/**
 * Tells where the pane is, at once and again whenever that is known better. Inside Excel a blocked office.js never
 * answers, hence the patience; an answer that comes later than that still counts.
 */
export function watchOffice({ get, script }: OfficeOfPage, tell: (where: PageSurroundings) => void): void {
  if (script === null) return tell("alone");
  tell("waiting");
  const giveUp = setTimeout(() => tell("alone"), PATIENCE);
  const answer = (where: PageSurroundings): void => {
    clearTimeout(giveUp);
    tell(where);
  };
  const ask = (): void => {
    const office = get();
    if (office === undefined) return answer("alone");
    office.onReady().then(
      ({ host }) => answer(host === "Excel" ? "excel" : "alone"),
      () => answer("alone"),
    );
  };
  if (get() !== undefined) return ask();
  script.addEventListener("load", ask);
  script.addEventListener("error", () => answer("alone"));
}
