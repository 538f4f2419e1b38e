import { POINTS_OF_PIXEL } from "./pagesOf";

/**
 * Takes away the blank rows at the end of each part that would begin a paper of their own. Those that fit below its last filled row stay,
 * for a pen; so does a whole paper of them where nothing is filled yet.
 *
 * @param down room on a paper, points
 */
export function dropBlankEnd(page: HTMLElement, down: number): void {
  const head = page.querySelector("thead");
  const heightOf = (element: Element): number => element.getBoundingClientRect().height * POINTS_OF_PIXEL;
  const comesBack = head === null ? 0 : heightOf(head);
  const charts = [...page.querySelectorAll("img")].map((chart) => chart.getBoundingClientRect());
  const isFilled = (row: Element): boolean => {
    const { top, bottom } = row.getBoundingClientRect();
    return row.textContent !== "" || charts.some((chart) => chart.top < bottom && top < chart.bottom);
  };
  let taken = 0;
  for (const part of page.querySelectorAll("thead, tbody")) {
    const rows = [...part.querySelectorAll("tr")];
    const lastFilled = rows.map(isFilled).lastIndexOf(true);
    const filled = rows.slice(0, lastFilled + 1).reduce((sum, row) => sum + heightOf(row), 0);
    if (taken + filled > down && taken > comesBack) taken = comesBack; // it is not cut where it begins
    for (const [place, row] of rows.entries()) {
      const begins = taken + heightOf(row) > down;
      if (begins && place > lastFilled) {
        rows.slice(place).forEach((blank) => blank.remove());
        break;
      }
      taken = (begins ? comesBack : taken) + heightOf(row);
    }
  }
}
