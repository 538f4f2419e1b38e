/**
 * For what adds new sheets, takes them away again or only listens: while somebody types into a cell Excel refuses every request, and what had
 * begun would stand there half (office-js issue 3323), so such a request waits until the cell is left. What writes into cells that are
 * there never waits: they could be others by then.
 */
export const PATIENT: Excel.RunOptions = { delayForCellEdit: true };
