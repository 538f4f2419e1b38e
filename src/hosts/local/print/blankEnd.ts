import { POINTS_OF_PIXEL } from "./pagesOf";

/**
 * Takes away the blank rows at the end that would begin a paper of their own. Those that fit below the last filled row stay, for
 * a pen; so does a whole paper of them where nothing is filled yet.
 *
 * @param down room on a paper, points
 */
export function dropBlankEnd(page: HTMLElement, down: number): void {
  const rows = [...page.querySelectorAll("tr")];
  const head = page.querySelector("thead");
  const heightOf = (element: Element): number => element.getBoundingClientRect().height * POINTS_OF_PIXEL;
  const charts = [...page.querySelectorAll("img")].map((chart) => chart.getBoundingClientRect().bottom);
  const covered = Math.max(-Infinity, ...charts);
  const isFilled = (row: Element): boolean =>
    row.textContent !== "" || row.getBoundingClientRect().top < covered || head?.contains(row) === true;
  const lastFilled = rows.map(isFilled).lastIndexOf(true);
  let taken = 0;
  for (const [place, row] of rows.entries()) {
    const begins = taken + heightOf(row) > down;
    if (begins && place > lastFilled) return rows.slice(place).forEach((blank) => blank.remove());
    taken = (begins ? (head === null ? 0 : heightOf(head)) : taken) + heightOf(row);
  }
}
