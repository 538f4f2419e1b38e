/** Lets what waits go first: the page's drawing, a click, the grid's own answers to itself. */
export const nextTurn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));
