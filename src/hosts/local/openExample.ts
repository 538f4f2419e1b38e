import type { UnitSystem } from "../../reference/quantities";
import type { AddOutcome } from "../host";
import type { Desk } from "./desk";
import { wholeBudget } from "./newForm";

/** Opens the example in place of the budget that is open. A file can be made of it again at any time, so none is missed. */
export async function openExample(desk: Desk, units: UnitSystem): Promise<AddOutcome> {
  const workbook = wholeBudget(units, "example");
  const isOpen = await desk.open({ workbook, file: "example.xlsx", unsaved: false }, "The example");
  return isOpen
    ? { added: true, sheets: workbook.sheets.map(({ name }) => name) }
    : { added: false, why: "You kept the budget that is open." };
}
