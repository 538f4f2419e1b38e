import { sheetOfStep } from "../../sheets/stepLinks";
import type { CellPosition, GridModel } from "./grid";
import { keptGetters } from "./keptPlugin";

/** The id of the sheet to which a step of the sheet Start leads; null for every other cell. */
export function stepIn(model: GridModel, position: CellPosition): string | null {
  const { getters } = model;
  if (position.col !== 0 || keptGetters(model).getSheetKey(position.sheetId) !== "start") return null;
  const names = getters
    .getSheetIds()
    .filter((id) => id !== position.sheetId)
    .map((id) => getters.getSheetName(id));
  const name = sheetOfStep(getters.getEvaluatedCell(position).value, names);
  return name === null ? null : (getters.getSheetIdByName(name) ?? null);
}

/** Lets the steps on the sheet Start lead to their sheets, by Enter or a click. F2 still edits them. */
export function stepsLead(sheet: HTMLElement, model: () => GridModel, isTyping: () => boolean): void {
  const go = (): boolean => {
    const position = model().getters.getActivePosition();
    const sheetIdTo = isTyping() ? null : stepIn(model(), position);
    if (sheetIdTo === null) return false;
    model().dispatch("ACTIVATE_SHEET", { sheetIdFrom: position.sheetId, sheetIdTo });
    return true;
  };
  const inGrid = ({ target }: Event, part: string): boolean =>
    target instanceof Element && target.closest(part) !== null;
  sheet.addEventListener(
    "keydown",
    (event) => {
      const { key, shiftKey, ctrlKey, altKey, metaKey } = event;
      if (key !== "Enter" || shiftKey || ctrlKey || altKey || metaKey || !inGrid(event, ".o-grid")) return;
      if (!go()) return;
      event.preventDefault();
      event.stopImmediatePropagation();
    },
    true,
  );
  sheet.addEventListener("click", (event) => {
    if (inGrid(event, ".o-grid-overlay") && event.detail === 1 && !event.shiftKey && !event.ctrlKey) go();
  });
}
