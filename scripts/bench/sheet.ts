import { modelOf } from "../calculate";
import { cellAddress } from "../../src/sheets/address";
import type { SheetCell, Workbook } from "../../src/sheets/workbook";
import { sheetOf } from "../../test/support/sheetOf";
import { timeRatio } from "./measure";
import { ratio, type Row } from "./row";

const [ROWS, COLUMNS] = [1000, 10];

/**
 * The grid of the local sheet with ten thousand cells that all rest on one input, and the input changed: cells of FRICTION
 * against cells of an ordinary formula (the speed of the air times itself), which says what the grid itself costs.
 */
export function changedInput(): Row[] {
  const ours = recalculation((airflow) => `=DUCT.FRICTION(${airflow},$A$1)`);
  const plain = recalculation((airflow) => `=(${airflow}/$A$1^2)^2*SQRT(${airflow})`);
  return [
    ratio("local sheet, 10,000 cells of FRICTION, one input changed", "cells of plain formulas", timeRatio(ours, plain, 9), { atMost: 1.3 }), // prettier-ignore
  ];
}

function recalculation(formula: (airflow: string) => string): () => void {
  const cells: SheetCell[] = [{ at: "A1", value: 6 }];
  for (let row = 1; row <= ROWS; row++) {
    cells.push({ at: cellAddress(2, row), value: 100 + row });
    for (let column = 0; column < COLUMNS; column++)
      cells.push({ at: cellAddress(3 + column, row), formula: formula(`$B${row}`) });
  }
  const model = modelOf(bookOf(cells));
  const sheetId = model.getters.getActiveSheetId();
  const last = { sheetId, col: 2 + COLUMNS - 1, row: ROWS - 1 };
  let diameter = 6;
  return () => {
    diameter = diameter === 6 ? 7 : 6;
    const before = model.getters.getEvaluatedCell(last).value;
    model.dispatch("UPDATE_CELL", { sheetId, col: 0, row: 0, content: String(diameter) });
    if (model.getters.getEvaluatedCell(last).value === before) throw new Error("the last cell did not follow");
  };
}

const bookOf = (cells: readonly SheetCell[]): Workbook => ({
  name: "Many",
  sheets: [sheetOf("Many", cells)],
  names: [],
});
