import { MARGINS } from "../../../sheets/paper";
import type { GridModel } from "../grid";
import { keptGetters } from "../keptPlugin";
import { dropBlankEnd } from "./blankEnd";
import { pagesOf, POINTS_OF_PIXEL } from "./pagesOf";
import { printedTable } from "./printedTable";

/**
 * Whoever prints the page gets the sheet in front, as text in tables, and nothing of what stands around it.
 *
 * @param place takes what is printed, and is empty but for then
 */
export function printSheet(place: HTMLElement, model: () => GridModel | null): void {
  const title = document.title;
  window.addEventListener("beforeprint", () => {
    const open = model();
    if (open === null) return;
    fill(place, open);
    document.title = `${keptGetters(open).getBookTitle()}, ${open.getters.getSheetName(open.getters.getActiveSheetId())}`;
  });
  window.addEventListener("afterprint", () => {
    place.replaceChildren();
    document.title = title;
  });
  // The grid takes this key for a print of its own; here the browser keeps it.
  const leaveToBrowser = (event: KeyboardEvent): void => {
    const isPrint = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey;
    if (isPrint && event.key.toLowerCase() === "p") event.stopImmediatePropagation();
  };
  window.addEventListener("keydown", leaveToBrowser, { capture: true });
}

function fill(place: HTMLElement, model: GridModel): void {
  const sheetId = model.getters.getActiveSheetId();
  const { format, pages, rows, room } = pagesOf(model, sheetId);
  place.dataset.page = `${format.paper} ${format.landscape ? "landscape" : "portrait"}`;
  const drawn = (smaller: number): void =>
    place.replaceChildren(
      ...pages.map(({ columns, scale }) => {
        const page = document.createElement("div");
        page.style.width = `${room.across}pt`;
        page.append(...printedTable(model, sheetId, columns, rows, scale * smaller));
        return page;
      }),
    );
  drawn(1);
  if (format.pagesHigh === undefined) {
    for (const page of place.querySelectorAll<HTMLElement>(":scope > div")) dropBlankEnd(page, room.down);
    return;
  }
  const high = Math.max(...[...place.children].map((page) => page.getBoundingClientRect().height)) * POINTS_OF_PIXEL;
  const most = room.down * format.pagesHigh - SPARE;
  if (high > most) drawn(most / high);
}

const SPARE = 72 * MARGINS.header; // points: letters that are drawn smaller break their lines a little otherwise
