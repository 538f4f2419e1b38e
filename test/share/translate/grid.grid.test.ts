/** The plain formulas in the grid of the local sheet, which opens a copy as well: it lacks some functions that others have. */
import { gridModel } from "../../../src/hosts/local/gridModel";
import type { GridModel } from "../../../src/hosts/local/grid";
import { placeOf } from "../../../src/sheets/address";
import "../../support/gridLibrary";
import { type Given, plainBook } from "./plainBook";
import { sampleSheets } from "./sampleSheets";
import { wholeCalls } from "./wholeCalls";

const CLOSE = 1e-6; // relative
const NOTHING = 1e-12; // what a sum of numbers near 1 may leave where the answer is 0

const few = ({ formulas, ...rest }: Given): Given => ({
  ...rest,
  formulas: Object.fromEntries(Object.entries(formulas).slice(0, 4)),
});

test("the grid computes what the functions answer", () => {
  const [scalars, wholes] = [sampleSheets(0.1), wholeCalls(0.1)];
  const { workbook } = plainBook([...scalars.given, ...wholes.given].map(few), "IP");
  const model: GridModel = gridModel(workbook);
  const ids = new Map(model.getters.getSheetIds().map((id) => [model.getters.getSheetName(id), id]));
  const live = new Set(
    workbook.sheets.flatMap(({ name, cells }) =>
      cells.flatMap((cell) => ("formula" in cell ? [`${name}!${cell.at}`] : [])),
    ),
  );
  const compared = [...scalars.expected, ...wholes.expected].filter(({ sheet, at }) => live.has(`${sheet}!${at}`));
  const wrong = compared.flatMap(({ sheet, at, inputs, answer }) => {
    const { column, row } = placeOf(at);
    const { value } = model.getters.getEvaluatedCell({ sheetId: ids.get(sheet)!, col: column - 1, row: row - 1 });
    const right =
      typeof answer === "number"
        ? typeof value === "number" && Math.abs(value - answer) <= CLOSE * Math.abs(answer) + NOTHING
        : (value ?? "") === (answer === "refused" ? "#N/A" : answer);
    return right ? [] : [`${sheet}!${at} of ${JSON.stringify(inputs)}: ${String(value)} instead of ${answer}`];
  });
  expect(wrong).toEqual([]);
  expect(compared.length).toBeGreaterThan(200);
});
