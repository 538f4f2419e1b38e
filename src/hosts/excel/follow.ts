import type { Change } from "../host";
import { PAUSE } from "./busy";
import { PATIENT } from "./patient";

type Handler = OfficeExtension.EventHandlerResult<unknown>;

/**
 * Calls back after every change of a cell or of the selection, and when a sheet has been computed, until what it returns is called. Where
 * Excel would not listen at first, it is asked again, and what may have changed meanwhile is told as a change: else an old list would
 * pass for one of now.
 */
export function follow(changed: (what: Change) => void): () => void {
  let isOver = false;
  const tell = (what: Change) => async (): Promise<void> => {
    if (!isOver) changed(what);
  };
  const listen = async (context: Excel.RequestContext): Promise<Handler[]> => {
    const { workbook } = context;
    const handlers: Handler[] = [
      workbook.onSelectionChanged.add(tell("selection")),
      workbook.worksheets.onChanged.add(tell("cells")),
      // a function of ours answers some time after a change, and what was read in between showed its last answer
      workbook.worksheets.onCalculated.add(tell("cells")),
    ];
    await context.sync();
    return handlers;
  };
  const untilHeard = async (): Promise<Handler[]> => {
    for (let pause = PAUSE; !isOver; pause *= 2) {
      try {
        const handlers = await Excel.run(PATIENT, listen);
        if (pause > PAUSE) await tell("cells")();
        return handlers;
      } catch (fault) {
        console.warn("Excel tells of no changes yet.", fault);
      }
      await new Promise((resolve) => setTimeout(resolve, pause));
    }
    return [];
  };
  const listening = untilHeard();
  return () => {
    isOver = true;
    listening.then(stop).catch((fault: unknown) => console.warn("Excel goes on telling of changes.", fault));
  };
}

/** A handler can only be taken away in the context in which it was added. */
async function stop(handlers: readonly Handler[]): Promise<void> {
  const [first] = handlers;
  if (first === undefined) return;
  await Excel.run(first.context as Excel.RequestContext, async (context) => {
    for (const handler of handlers) handler.remove();
    await context.sync();
  });
}
