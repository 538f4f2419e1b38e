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

/**
 * Hands the functions of the later files to Excel, and fetches the files right away, so that hardly a cell will wait: one behind the other, so
 * that the first of them does not share the line, but at once where a cell asks.
 */
export function comeLater(...files: readonly (readonly [address: string, ids: readonly string[]])[]): void {
  if (hostOfPage().runsAllFiles === true) return;
  void inTurn(files.map(([address, ids]) => handOver(address, ids)));
}

async function inTurn(fetches: readonly (() => Promise<void>)[]): Promise<void> {
  for (const fetched of fetches) await fetched();
}

/** Hands the functions of one file to Excel; what comes back fetches it, and never fails: each cell that needs it says so itself. */
function handOver(address: string, ids: readonly string[]): () => Promise<void> {
  let coming: Promise<void> | null = null;
  /** A file that did not come, or came and was of another version, is asked for anew the next time. */
  const fetched = (): Promise<void> => {
    coming ??= fetchFile(address)
      .catch(() => undefined)
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
  return fetched;
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
