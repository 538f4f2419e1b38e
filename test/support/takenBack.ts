import type { Shows } from "./gridOfBook";

/** For the tests of a file on one book: gives how to change it, and takes each change back after its test. */
export function takenBack(grid: Pick<Shows, "undo">): (work: () => void) => void {
  let changes = 0;
  afterEach(() => {
    for (; changes > 0; changes--) grid.undo();
  });
  return (work) => {
    work();
    changes++;
  };
}
