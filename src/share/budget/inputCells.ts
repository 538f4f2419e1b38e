import type { BlockColumn } from "./block";
import { type BudgetColumn, type ColumnCells, type InputColumn, namedColumns } from "./blockNames";
import { dustCells } from "./dustCells";
import { joinCells, strideCells } from "./joinCells";
import { lossCells } from "./lossCells";
import type { NearestWords } from "./nearestWords";
import { openingCells } from "./openingCells";
import { pipeCells } from "./pipeCells";
import type { RunsReader } from "./runsReader";
import { judgedCells } from "./judgedCells";

/** What each row of the runs table says, in SI, in the table's own order. */
export function inputCells(reader: RunsReader, nearest: NearestWords, strides: number): BlockColumn<BudgetColumn>[] {
  const { place } = reader;
  const columns: ColumnCells<InputColumn> = {
    ...joinCells(reader, strides),
    ...pipeCells(reader),
    ...lossCells(reader),
    ...openingCells(reader),
    ...dustCells(reader),
    ...judgedCells(reader, nearest),
  };
  const stridesOn = Array.from({ length: strides + 1 }, (_, stride) => strideCells(place, stride)).flat();
  return [...namedColumns(columns), ...stridesOn];
}
