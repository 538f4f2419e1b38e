import type { Change } from "../host";

type Handler = OfficeExtension.EventHandlerResult<unknown>;

/** Calls back after every change of a cell or of the selection, and when a sheet has been computed, until what it returns is called. */
export function follow(changed: (what: Change) => void): () => void {
  let isOver = false;
  const tell = (what: Change) => async (): Promise<void> => {
    if (!isOver) changed(what);
  };
  const listening = Excel.run(async (context) => {
    const { workbook } = context;
    const handlers: Handler[] = [
      workbook.onSelectionChanged.add(tell("selection")),
      workbook.worksheets.onChanged.add(tell("cells")),
      // a function of ours answers some time after a change, and what was read in between showed its last answer
      workbook.worksheets.onCalculated.add(tell("cells")),
    ];
    await context.sync();
    return handlers;
  });
  listening.catch((fault: unknown) => console.warn("Excel tells of no changes.", fault));
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
