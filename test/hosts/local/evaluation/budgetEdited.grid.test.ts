/** The example as it is opened and edited in the page: after each change, drawn by lot, the shown sheet shows what it shows in a book that the library computes all at once, and at the end all sheets do. */
import { gridModel } from "../../../../src/hosts/local/gridModel";
import type { GridModel } from "../../../../src/hosts/local/grid";
import type { WithFinishing } from "../../../../src/hosts/local/evaluation/evaluateShownFirst";
import { cellNames } from "../../../../src/hosts/local/readGrid";
import { calculatedSheet } from "../../../../src/hosts/local/readGridSheet";
import { runCell, RUNS_FIRST } from "../../../../src/sheets/book/layout";
import { demoBook } from "../../../../src/sheets/demo";
import { gridOfBook } from "../../../support/gridOfBook";
import { lots } from "../../../support/lots";
import { sheetOf } from "../../../support/sheetOf";
import { computedByLibrary, setUpGrid, shownOn as shownIn } from "../gridOfOurs";

beforeAll(() => {
  gridOfBook({ name: "", sheets: [sheetOf("One", [])], names: [] }); // our functions are registered
  setUpGrid();
});

const LENGTHS = ["4", "11.5", "", "twelve", "0", "30"];
const COLUMNS = ["Length", "Diameter", "Airflow"] as const;

const shownOn = (model: GridModel, sheetId: string): string[] => shownIn(model, sheetId, "asShown");

/** All at once, in the library's own way. */
const openedAnew = (model: GridModel): GridModel =>
  computedByLibrary(() =>
    gridModel({
      name: "",
      sheets: model.getters.getSheetIds().map((id) => calculatedSheet(model, id)),
      names: cellNames(model.getters),
    }),
  );

test("the example, edited by lot, shows what it shows when it is opened anew", () => {
  const lot = lots(20);
  const oneOf = <One>(list: readonly One[]): One => list[Math.floor(lot() * list.length)]!;
  const model = gridModel(demoBook());
  const { getters } = model;
  const finishing = (getters as unknown as WithFinishing).getFinishing();
  let left = 0;
  for (let edit = 0; edit < 6; edit++) {
    for (let typed = 0; typed < 2; typed++)
      model.dispatch("UPDATE_CELL", {
        sheetId: getters.getSheetIdByName("Runs")!,
        ...o_spreadsheet.helpers.toCartesian(runCell(oneOf(COLUMNS), RUNS_FIRST + Math.floor(lot() * 14))),
        content: oneOf(LENGTHS),
      });
    if (finishing.isLeft()) left++;
    const shown = getters.getActiveSheetId();
    const anew = openedAnew(model);
    expect(shownOn(model, shown)).toEqual(shownOn(anew, shown));
    const to = oneOf(getters.getSheetIds());
    if (to !== shown) model.dispatch("ACTIVATE_SHEET", { sheetIdFrom: shown, sheetIdTo: to });
    expect(shownOn(model, to)).toEqual(shownOn(anew, to));
    if (edit === 5) for (const id of getters.getSheetIds()) expect(shownOn(model, id)).toEqual(shownOn(anew, id));
  }
  expect(left).toBeGreaterThan(0);
});

test("a sheet that is opened after a change shows what it shows anew, and sheets that it does not rest on wait", () => {
  const model = gridModel(demoBook());
  const { getters } = model;
  const finishing = (getters as unknown as WithFinishing).getFinishing();
  finishing.finish();
  const [runs, flow] = ["Runs", "Flow"].map((name) => getters.getSheetIdByName(name)!) as [string, string];
  const show = (to: string): void =>
    void model.dispatch("ACTIVATE_SHEET", { sheetIdFrom: getters.getActiveSheetId(), sheetIdTo: to });
  show(runs);
  const at = o_spreadsheet.helpers.toCartesian(runCell("Length", RUNS_FIRST + 2));
  model.dispatch("UPDATE_CELL", { sheetId: runs, ...at, content: "10" });
  show(flow);
  const shown = shownOn(model, flow);
  expect(finishing.isLeft()).toBe(true);
  expect(shown).toEqual(shownOn(openedAnew(model), flow));
});

test("the example, opened, shows the same whichever sheet is asked for first", () => {
  const all = computedByLibrary(() => gridModel(demoBook()));
  const ids = all.getters.getSheetIds();
  const lines = new Map(ids.map((id) => [id, shownOn(all, id)]));
  const first = ["Runs", "Flow", "Leaks", "Summary"].map((name) => all.getters.getSheetIdByName(name)!);
  for (const id of first) {
    const model = gridModel(demoBook());
    expect((model.getters as unknown as WithFinishing).getFinishing().isLeft()).toBe(true);
    for (const one of [id, ...ids]) expect(shownOn(model, one)).toEqual(lines.get(one));
  }
});
