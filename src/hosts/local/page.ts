import { listDifferences } from "./differences";
import type { GridModel } from "./grid";
import { localHost } from "./localHost";
import { notificationsIn } from "./notifications";
import { moveByF6, type Region } from "./regions";
import { followSheet } from "./status";

const part = <Kind extends HTMLElement = HTMLElement>(id: string): Kind => {
  const element = document.getElementById(id);
  if (element === null) throw new Error(`the page has no part "${id}"`);
  return element as Kind;
};

/**
 * Puts the grid on the page and wires up what stands around it.
 *
 * @param helpOf words about the function that the grid's own help line shows
 */
export async function openPage(
  model: GridModel,
  templates: string,
  helpOf: (head: Element | null) => string,
): Promise<void> {
  const sheet = part("sheet");
  const frame = part<HTMLIFrameElement>("pane-frame");
  window.ductLedgerHost = localHost(model);
  listDifferences(part("differences"));
  let focusGrid = (): void => undefined;
  const notifications = notificationsIn(part("notice"), () => focusGrid());
  part("loading").remove();
  const view = await owl.mount(o_spreadsheet.Spreadsheet, sheet, { props: { model, ...notifications }, templates });
  focusGrid = () => view.focusGrid();
  model.joinSession();
  followSheet(model, sheet, part("sheet-words"), () => helpOf(sheet.querySelector(".o-formula-assistant-head")));
  paneSwitch(part<HTMLButtonElement>("pane-switch"), part("pane"));
  const regions: Region[] = [
    region(part("top"), () => part("pane-switch").focus()),
    region(sheet, focusGrid),
    region(part("pane"), () => frame.contentWindow?.focus()),
  ];
  moveByF6(regions, [window]);
  const alsoInFrame = (): void => {
    if (frame.contentWindow !== null) moveByF6(regions, [frame.contentWindow]);
  };
  frame.addEventListener("load", alsoInFrame);
  frame.src = "pane.html"; // only now, so that the pane finds its host
}

const region = (element: HTMLElement, focus: () => void): Region => ({
  contains: (active) => element.contains(active),
  focus,
  isShown: () => !element.hidden,
});

function paneSwitch(button: HTMLButtonElement, pane: HTMLElement): void {
  button.addEventListener("click", () => {
    pane.hidden = !pane.hidden;
    button.textContent = pane.hidden ? "Show the pane" : "Hide the pane";
    button.setAttribute("aria-expanded", String(!pane.hidden));
    window.dispatchEvent(new Event("resize")); // the grid measures itself anew
  });
}
