/**
 * The functions of the second file. A host of ours runs both files before it calls anything. Excel asks for cells as soon as the
 * first has run, so there such a function waits for its file when it must: a cell that asks for it is computed when it is
 * here, or says that it did not come.
 */
import { raise } from "./cellErrors";

type Compute = (...given: unknown[]) => unknown;

interface Host {
  readonly associate: (id: string, compute: Compute) => void;
  readonly runsBothFiles?: boolean;
}

declare const LATER_FILE: string; // the build's: its address

const LONGEST_WAIT = 20_000; // ms, after which a server that says nothing counts as one that cannot be reached

const here = new Map<string, Compute>();
let coming: Promise<void> | null = null;

const hostOfPage = (): Host => CustomFunctions;

/** What the second file calls in the place of the host's own object. */
const laterFunctions = {
  associate(id: string, compute: Compute): void {
    here.set(id, compute);
    if (hostOfPage().runsBothFiles === true) hostOfPage().associate(id, compute);
  },
};
export { laterFunctions as CustomFunctions };

/** Hands the functions of the second file to Excel, and fetches it right away, so that hardly a cell will wait. */
export function comeLater(ids: readonly string[]): void {
  if (hostOfPage().runsBothFiles === true) return;
  for (const id of ids)
    hostOfPage().associate(id, (...given) => {
      const compute = here.get(id);
      return compute === undefined ? whenHere(id).then((late) => late(...given)) : compute(...given);
    });
  fetched().catch(() => undefined); // the first cell that needs it asks again, and says so
}

async function whenHere(id: string): Promise<Compute> {
  await fetched().catch(() => undefined);
  const compute = here.get(id);
  if (compute !== undefined) return compute;
  return raise({
    kind: "notAvailable",
    sentence: `the file of the add-in that holds ${id} could not be loaded: enter the formula again when the network is back, or close and open the workbook`,
  });
}

/** A file that did not come, or came and was of another version, is asked for anew the next time. */
function fetched(): Promise<void> {
  coming ??= fetchFile().finally(() => {
    if (here.size === 0) coming = null;
  });
  return coming;
}

async function fetchFile(): Promise<void> {
  const script = document.createElement("script");
  script.src = LATER_FILE;
  await new Promise<void>((resolve, reject) => {
    setTimeout(reject, LONGEST_WAIT);
    script.addEventListener("load", () => resolve());
    script.addEventListener("error", reject);
    document.head.append(script);
  }).finally(() => script.remove());
}
