import { tearsTable } from "../../../src/hosts/local/sortWholeRows";
import type { SheetKey } from "../../../src/sheets/sheetKeys";
import { bookOf, gridOf, setUpGrid, sheetOf, valueAt } from "./gridOfOurs";

beforeAll(setUpGrid);

/** A title, headings and three rows of three columns; a formula stands in front of each row. */
const table = (key?: SheetKey) =>
  gridOf(
    bookOf(
      sheetOf(
        [
          { at: "B1", value: "Runs" },
          { at: "B2", value: "Run" },
          { at: "C2", value: "Airflow" },
          { at: "D2", value: "Gate" },
          ...["saw", "lathe", "planer"].flatMap((name, index) => [
            { at: `A${index + 3}`, formula: `="ok "&B${index + 3}` },
            { at: `B${index + 3}`, value: name },
            { at: `C${index + 3}`, value: 300 - 100 * index },
            { at: `D${index + 3}`, value: `gate of ${name}` },
          ]),
        ],
        key === undefined ? {} : { key },
      ),
    ),
  );

/** Sorts a zone while another is selected, as the question whether to extend the selection does; tells whether it was refused as torn. */
function sorted(model: ReturnType<typeof gridOf>, selected: string, range = selected, sortOptions = {}): boolean {
  const sheetId = model.getters.getActiveSheetId();
  const [zone, chosen] = [range, selected].map((xc) => o_spreadsheet.helpers.toZone(xc));
  model.selection.selectZone({ cell: { col: chosen!.left, row: chosen!.top }, zone: chosen! });
  let isTorn = false;
  model.on("command-rejected", isTorn, (rejected: object) => {
    isTorn = tearsTable(rejected);
  });
  model.dispatch("SORT_CELLS", { sheetId, col: chosen!.left, row: chosen!.top, zone: zone!, sortDirection: "asc", sortOptions }); // prettier-ignore
  return isTorn;
}

const rows = (model: ReturnType<typeof gridOf>) =>
  [3, 4, 5].map((row) => ["B", "C", "D"].map((letter) => valueAt(model, `${letter}${row}`)));

const AS_TYPED = [["saw", 300, "gate of saw"], ["lathe", 200, "gate of lathe"], ["planer", 100, "gate of planer"]]; // prettier-ignore

test.each([
  ["some columns, which leaves the gates behind", "B3:C5", "B3:C5"],
  ["one column alone", "C3:C5", "C3:C5"],
  ["all around, title and headings among the runs", "C3:C5", "A1:D5"],
  ["all around one cell", "C4", "A1:D5"],
])("a budget's sheet refuses to sort %s", (_, selected, range) => {
  const model = table("runs");
  expect(sorted(model, selected, range)).toBe(true);
  expect(rows(model)).toEqual(AS_TYPED);
});

test("it sorts rows over all their columns, with or without the formulas beside them, and by a filter's menu", () => {
  const byName = [["lathe", 200, "gate of lathe"], ["planer", 100, "gate of planer"], ["saw", 300, "gate of saw"]]; // prettier-ignore
  for (const range of ["B3:D5", "A3:D5"]) {
    const model = table("runs");
    const col = range.startsWith("A") ? "B3:D5" : range;
    expect(sorted(model, col, range)).toBe(false);
    expect(rows(model)).toEqual(byName);
  }
  const filtered = table("runs");
  expect(sorted(filtered, "B3", "B3:D5", { sortHeaders: true })).toBe(false);
  expect(rows(filtered)).toEqual(byName);
  expect(sorted(table("runs"), "B3", "B3:C5", { sortHeaders: true })).toBe(true); // filters over some columns only
});

test("a sheet of the user's own is sorted as the grid does it", () => {
  const model = table();
  expect(sorted(model, "C3:C5")).toBe(false);
  expect(rows(model).map(([, airflow]) => airflow)).toEqual([100, 200, 300]);
});
