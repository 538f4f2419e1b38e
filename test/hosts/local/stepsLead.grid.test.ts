import { stepIn } from "../../../src/hosts/local/stepsLead";
import { sheetOf as named } from "../../support/sheetOf";
import { bookOf, gridOf, place, setUpGrid } from "./gridOfOurs";

beforeAll(setUpGrid);

const cells = [
  { at: "A1", value: "1. Start" },
  { at: "A2", value: "2. Runs" },
  { at: "A3", value: "To look up: Tables" },
  { at: "A4", value: "4. Budget" },
  { at: "B2", value: "2. Runs" },
];

test("a step of the sheet Start leads to its sheet; one of a sheet that is gone, or on another sheet, leads nowhere", () => {
  const model = gridOf(bookOf(named("Start", cells, { key: "start" }), named("Runs", cells), named("Tables", [])));
  const leads = (at: string): string | null => {
    const id = stepIn(model, place(model, at));
    return id === null ? null : model.getters.getSheetName(id);
  };
  expect(["A1", "A2", "A3", "A4", "B2", "A9"].map(leads)).toEqual([null, "Runs", "Tables", null, null, null]);
  const [sheetIdFrom, sheetIdTo] = model.getters.getSheetIds();
  model.dispatch("ACTIVATE_SHEET", { sheetIdFrom: sheetIdFrom!, sheetIdTo: sheetIdTo! });
  expect(["A2", "A3"].map(leads)).toEqual([null, null]);
});
