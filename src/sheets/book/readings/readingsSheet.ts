import { text } from "../../cells";
import type { SheetOf } from "../frame";
import { cautionLine } from "../parts/cautionLine";
import { printing } from "../parts/printing";
import { sheetHead } from "../parts/sheetHead";
import { tableEnd } from "../parts/tableEnd";
import { areas } from "./areas";
import type { ReadingsContents } from "./contents";
import { filterLog } from "./filterLog";
import { AREAS, AREAS_LAST, DUCT_CELL, FILTER_LAST, FILTER_LOG, inAreas, inTraverse, plain, TRAVERSE } from "./layout";
import { results } from "./results";
import { kindList, pointsList, traverse } from "./traverse";

export { emptyReadings, exampleReadings, type ReadingsContents } from "./contents";

/** Meter readings: a wrong area in the meter, and what a duct carries. */
export const readingsSheet: SheetOf<ReadingsContents> = (frame, contents) => ({
  name: frame.sheet("readings"),
  columns: [18, 10.5, 13, 10, 9, 9, 12, 70, 4, 4, 12, 12, 12, 12, 12],
  tallRows: [
    { row: AREAS, lines: 4 },
    { row: TRAVERSE, lines: 3 },
    { row: FILTER_LOG, lines: 2 },
  ],
  frozen: { rows: 0, columns: 0 },
  cells: [
    ...sheetHead(
      frame.sheet("readings"),
      "What a meter showed, what it should have shown, and how much air a duct carries.",
      contents.invented,
    ),
    ...(contents.tryIt === null ? [] : [text("E3", contents.tryIt)]),
    cautionLine(
      frame,
      "A5",
      "Power off, all at rest, before you drill or reach into a duct. Nothing loose near an open inlet.",
    ),
    text(
      `A${AREAS_LAST + 1}`,
      "A vane head over a small slot reads the air through its own face: take the head's diameter as the duct there, not the slot's.",
      "note",
    ),
    ...areas(frame, contents.areas),
    ...traverse(frame, contents.traverse),
    ...results(frame),
    ...filterLog(frame, contents.filter),
    tableEnd(`A${FILTER_LAST + 1}`), // not printed
  ],
  lists: [kindList, pointsList],
  flags: [
    { range: plain(inAreas("H")), containsText: "slip", style: "flag" },
    { range: plain(inAreas("H")), containsText: "check it", style: "flag" },
    { range: `E${FILTER_LOG + 1}:E${FILTER_LAST}`, containsText: "check it", style: "flag" },
    { range: plain(inTraverse("D")), containsText: "check it", style: "flag" },
    { range: `D${plain(DUCT_CELL).slice(1)}`, containsText: "check it", style: "flag" },
  ],
  print: { ...printing(frame, "landscape", 1), area: `A1:H${FILTER_LAST}` },
});
