/**
 * The functions of the later files. A host of ours runs all files before it calls anything. Excel asks for cells as soon as the
 * first has run, so there such a function waits for its file when it must: a cell that asks for it is computed when it is
 * here, or says that it did not come.
 */
import { raise } from "./cellErrors";

type Compute = (...given: unknown[]) => unknown;

interface Host {
  readonly associate: (id: string, compute: Compute) => void;
  readonly runsAllFiles?: boolean;
}

const LONGEST_WAIT = 20_000; // ms, after which a server that says nothing counts as one that cannot be reached

const here = new Map<string, Compute>();

const hostOfPage = (): Host => CustomFunctions;

/** What a later file calls in the place of the host's own object. */
const laterFunctions = {
  associate(id: string, compute: Compute): void {
    here.set(id, compute);
    if (hostOfPage().runsAllFiles === true) hostOfPage().associate(id, compute);
  },
};
export { laterFunctions as CustomFunctions };

/** Hands the functions of a later file to Excel, and fetches it right away, so that hardly a cell will wait. */
export function comeLater(address: string, ids: readonly string[]): void {
  if (hostOfPage().runsAllFiles === true) return;
  let coming: Promise<void> | null = null;
  /** A file that did not come, or came and was of another version, is asked for anew the next time. */
  const fetched = (): Promise<void> => {
    coming ??= fetchFile(address)
      .catch(() => undefined) // each cell that needs it says so
      .finally(() => {
        if (!ids.some((id) => here.has(id))) coming = null;
      });
    return coming;
  };
  for (const id of ids)
    hostOfPage().associate(id, (...given) => {
      const compute = here.get(id);
      return compute === undefined ? fetched().then(() => arrived(id)(...given)) : compute(...given);
    });
  void fetched();
}

function arrived(id: string): Compute {
  return (
    here.get(id) ??
    raise({
      kind: "notAvailable",
      sentence: `the file of the add-in that holds ${id} could not be loaded: enter the formula again when the network is back, or close and open the workbook`,
    })
  );
}

async function fetchFile(address: string): Promise<void> {
  const script = document.createElement("script");
  script.src = address;
  await new Promise<void>((resolve, reject) => {
    setTimeout(reject, LONGEST_WAIT);
    script.addEventListener("load", () => resolve());
    script.addEventListener("error", reject);
    document.head.append(script);
  }).finally(() => script.remove());
}
