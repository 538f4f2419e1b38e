import type { BlockColumn } from "./block";
import { type BudgetColumn, type ColumnCells, type InputColumn, namedColumns } from "./blockNames";
import { dustCells } from "./dustCells";
import { joinCells, strideCells } from "./joinCells";
import { lossCells } from "./lossCells";
import { nearestCells } from "./nearestCells";
import { openingCells } from "./openingCells";
import { pipeCells } from "./pipeCells";
import type { RunsReader } from "./runsReader";
import { quotedText } from "../references";
import { troubleOf } from "./troubleCells";

/** Told in the first row. A run that is not read must not be missed in a total. */
const UNREAD =
  "The table has more runs than this copy reads: type them into the blank rows of the table, or ask for a new copy";

/** What each row of the runs table says, in SI, in the table's own order. */
export function inputCells(reader: RunsReader, strides: number): BlockColumn<BudgetColumn>[] {
  const { place, used } = reader;
  const columns: ColumnCells<InputColumn> = {
    ...joinCells(reader, strides),
    ...pipeCells(reader),
    ...lossCells(reader),
    ...openingCells(reader),
    ...dustCells(reader),
    ...nearestCells(reader),
    trouble: {
      heading: "Trouble",
      formula: (row) => {
        const own = used(row, troubleOf(reader, strides, row), '""');
        return row === 1 ? `IF(${place.scalar("unread")}>0,${quotedText(UNREAD)},${own})` : own;
      },
    },
    kind: {
      heading: "Answer's row: 1 run, 2 fan",
      formula: (row) =>
        `IF(${place.scalar("ok")}=0,0,IF(${row}<=${place.scalar("last")},IF(${place.cell("used", row)}>0,1,0),IF(${row}=${place.scalar("last")}+1,2,0)))`,
    },
  };
  const stridesOn = Array.from({ length: strides + 1 }, (_, stride) => strideCells(place, stride)).flat();
  return [...namedColumns(columns), ...stridesOn];
}
