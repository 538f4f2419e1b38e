// A process of its own for the engine, which comes as a module that the test runner cannot require. In: workbooks on stdin;
// out: what their cells show, to the last digit, on stdout.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { initSync, Model } from "@ironcalc/wasm";

const ALL_DIGITS = "0.0000000000000000E+00";

const require = createRequire(import.meta.url);
initSync({ module: readFileSync(path.join(path.dirname(require.resolve("@ironcalc/wasm")), "wasm_bg.wasm")) });

/** What the cells of one workbook show, sheet by sheet. */
function shown({ sheets, names }) {
  const model = new Model("book", "en", "UTC", "en");
  model.pauseEvaluation();
  sheets.forEach(({ name }, sheet) => {
    if (sheet > 0) model.newSheet();
    model.renameSheet(sheet, name);
  });
  for (const { name, formula } of names) model.newDefinedName(name, null, formula);
  sheets.forEach(({ cells }, sheet) => {
    for (const { row, column, input } of cells) model.setUserInput(sheet, row, column, input);
  });
  model.resumeEvaluation();
  model.evaluate();
  model.pauseEvaluation();
  // The format comes last: it makes a cell of every blank, and the engine computes those, too, three times as long.
  sheets.forEach(({ cells }, sheet) => {
    const height = cells.reduce((most, { row }) => Math.max(most, row), 1);
    const width = cells.reduce((most, { column }) => Math.max(most, column), 1);
    model.updateRangeStyle({ sheet, row: 1, column: 1, width, height }, "num_fmt", ALL_DIGITS);
  });
  const values = sheets.map(({ cells }, sheet) =>
    cells.map(({ row, column }) => model.getFormattedCellValue(sheet, row, column)),
  );
  model.free();
  return values;
}

process.stdout.write(JSON.stringify(JSON.parse(readFileSync(0, "utf8")).map(shown)));
