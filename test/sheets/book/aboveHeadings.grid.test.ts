/** A row that is dragged above its table's headings by its number, where no formula reads it. */
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { POINTS_CELL, OWN_SAYS, THROTTLES } from "../../../src/sheets/book/fan/fanLayout";
import { CURVE_HEADER } from "../../../src/sheets/book/layout";
import { COUNTED, FACTS } from "../../../src/sheets/book/claims/layout";
import { SETS } from "../../../src/sheets/book/flow/flowLayout";
import { LOG, LEAKS_SAY } from "../../../src/sheets/book/leaks/layout";
import { READINGS, SHORT } from "../../../src/sheets/book/measured/layout";
import { FILTER_LOG, FILTER_SAYS, TRAVERSE, RESULTS } from "../../../src/sheets/book/readings/layout";
import { LISTS } from "../../../src/sheets/book/sizes/sizesLayout";
import { sheetKeys } from "../../../src/sheets/sheetKeys";
import { gridOfBook } from "../../support/gridOfBook";

const shows = gridOfBook(
  budgetBook({ units: "IP", sheets: [...sheetKeys], contents: "example" }, { sheets: [], names: [] }),
);

const LEFT_OUT = /^Look: what stands above the headings is left out\. /;

test.each<[string, string, number, string, RegExp]>([
  ["a point of the fan's curve", "Fan", CURVE_HEADER, "A7", LEFT_OUT],
  ["a reading at a throttle", "Fan", THROTTLES, OWN_SAYS, LEFT_OUT],
  ["a month of a filter", "Readings", FILTER_LOG, FILTER_SAYS, LEFT_OUT],
  ["a depth of a traverse", "Readings", TRAVERSE, `D${RESULTS + 1}`, /^2 readings are missing/],
  ["a gate of the leak log", "Leaks", LOG, LEAKS_SAY, LEFT_OUT],
  ["a fact of the data sheet", "Claims", FACTS, `F${COUNTED}`, LEFT_OUT],
  ["a reading of the ducts", "Measured", READINGS, `B${SHORT + 1}`, LEFT_OUT],
  ["a scenario", "Flow", SETS, `C${SETS - 1}`, LEFT_OUT],
  ["a set of gates", "Sizes", LISTS, `B${LISTS - 1}`, LEFT_OUT],
  ["a size that can be bought", "Sizes", LISTS, `B${LISTS - 1}`, LEFT_OUT],
])("%s on %s is told", (what, sheet, header, at, said) => {
  if (sheet === "Sizes") shows.type(sheet, `${what.includes("size") ? "F" : "A"}${header + 2}`, "5");
  const usual = shows.value(sheet, at);
  expect(usual).not.toMatch(said);
  shows.moveRow(sheet, header + 2, header);
  expect(shows.value(sheet, at)).toMatch(said);
  shows.undo();
  expect(shows.value(sheet, at)).toBe(usual);
  if (sheet === "Sizes") shows.undo();
});

test("what stands above the fan's curve anyway is no point", () => {
  const usual = shows.value("Fan", POINTS_CELL.replaceAll("$", ""));
  for (const outlet of ["8", ""]) {
    shows.type("Fan", "B6", outlet);
    expect(shows.value("Fan", "A7")).toBe(usual);
  }
});
