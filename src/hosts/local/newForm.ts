import type { UnitSystem } from "../../reference/quantities";
import { budgetBook } from "../../sheets/book/budgetBook";
import type { SheetOrder } from "../../sheets/book/order";
import type { Workbook } from "../../sheets/workbook";
import { sheetKeys } from "../../sheets/sheetKeys";

/** The form under the top line in which a new budget is asked for. Escape and Cancel close it. */
export function newForm(form: HTMLFormElement, opener: HTMLButtonElement, make: (workbook: Workbook) => void): void {
  const show = (shown: boolean): void => {
    form.hidden = !shown;
    opener.setAttribute("aria-expanded", String(shown));
    if (shown) form.querySelector<HTMLInputElement>("input:checked")?.focus();
    else opener.focus();
  };
  opener.addEventListener("click", () => show(form.hidden !== false));
  form.addEventListener("reset", () => show(false));
  form.addEventListener("keydown", ({ key }) => {
    if (key === "Escape") show(false);
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const chosen = new FormData(form);
    show(false);
    make(
      wholeBudget(
        chosen.get("units") === "SI" ? "SI" : "IP",
        chosen.get("contents") === "example" ? "example" : "empty",
      ),
    );
  });
}

export const wholeBudget = (units: UnitSystem, contents: SheetOrder["contents"]): Workbook =>
  budgetBook({ units, contents, sheets: sheetKeys }, { sheets: [], names: [] });
