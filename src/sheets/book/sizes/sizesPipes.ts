import { sizesColumns } from "../../../reference/answerColumns";
import { cellAddress } from "../../address";
import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { fanCurve, RUNS_COLUMN, RUNS_HEADER, RUNS_LAST, runsTable } from "../layout";
import { columnLetters } from "../../address";
import { shownColumns } from "../../../reference/columnsOfRuns";
import { formatOf, headingIn } from "../parts/units";
import { askedCell } from "./sizesAsked";
import {
  FASTEST_ROW,
  KEEP_ROW,
  LISTS_COLUMNS,
  LISTS_FIRST,
  LISTS_LAST,
  MARGIN_ROW,
  OUTCOME,
  OUTCOME_ROWS,
  PIPES_ANSWER,
  PIPES_TITLE,
  SEARCHED_AT,
  SHORT_ROW,
  STATE_CELL,
  WATCHED,
  WATCHED_FIRST,
  WATCHED_LAST,
  WATCHED_ROWS,
} from "./sizesLayout";

export const CHANGED = "Changed since";

/** The pipes to buy as the pane's search left them, and what tells that the search is no longer about what stands here. */
export function sizesPipes(frame: Frame): SheetCell[] {
  const { header, last, column } = PIPES_ANSWER;
  const velocity = { format: formatOf(frame, "velocity") };
  const looks = sizesColumns.map(({ quantity }) => (quantity === "velocity" ? velocity : {}));
  const blanks: SheetCell[] = [];
  for (let row = header + 1; row <= last; row++)
    looks.forEach((look, index) =>
      blanks.push({ at: cellAddress(column + index, row), value: null, style: "result", ...look }),
    );
  return [
    ...state(frame),
    text(`A${PIPES_TITLE}`, "Which pipe to buy", "section"),
    text(`C${PIPES_TITLE}`, "Written by the pane (Build, Choose sizes). Nothing here computes with it.", "note"),
    text(`A${PIPES_TITLE + 1}`, `The same in a cell, searched again with every change: =${call(frame)}`, "note"),
    ...sizesColumns.map(({ header: words, quantity }, index): SheetCell => {
      const at = cellAddress(column + index, header);
      if (quantity !== null) return formula(at, headingIn(frame, words, quantity), "numberHeader");
      return text(at, words, ["price", "share"].includes(sizesColumns[index]!.key) ? "numberHeader" : "header");
    }),
    ...blanks,
    ...watched(frame),
  ];
}

const call = (frame: Frame): string => {
  const [first, end] = [LISTS_FIRST, LISTS_LAST];
  const { searched, stock, price } = LISTS_COLUMNS;
  return `DUCT.SIZES(${runsTable(frame)},${fanCurve(frame)},$${searched}$${first}:$${searched}$${end},$${stock}$${first}:$${price}$${end},$B$${MARGIN_ROW},$B$${KEEP_ROW},${frame.name("density")},${frame.name("units")},$B$${FASTEST_ROW})`;
};

function state(frame: Frame): SheetCell[] {
  const { now, then, differs } = WATCHED;
  const changed = `SUM($${differs}$${WATCHED_FIRST}:$${differs}$${WATCHED_LAST})`;
  const more = `ROWS(${runsTable(frame)})>${WATCHED_ROWS}`;
  const words =
    `IF(${SEARCHED_AT}="","Not searched yet: row ${PIPES_TITLE} says how.",` +
    `IF(${more},"Searched on "&${SEARCHED_AT}&". ${CHANGED}? Rows were inserted in ${frame.sheet("runs")}, more than this sheet watches: search again.",` +
    `IF(${changed}>0,"${CHANGED} it was searched ("&${SEARCHED_AT}&"): the ducts, the fan or what is asked. Search again.",` +
    `"Searched on "&${SEARCHED_AT}&"; all that it rests on is as it was.")))`;
  return [
    text("A8", "Which pipe", "label"),
    formula(STATE_CELL.replaceAll("$", ""), `=${words}`, "total"),
    formula(`A${SHORT_ROW}`, `=IF($B$${OUTCOME}="","","It comes to")`, "label"),
    formula(`B${SHORT_ROW}`, `=$B$${OUTCOME}&""`),
    formula(
      `A${OUTCOME}`,
      `=IF($B$${OUTCOME}="","What a search comes to stands here in words.","It comes to")`,
      "label",
    ),
    ...Array.from({ length: OUTCOME_ROWS }, (_, index): SheetCell => ({
      at: `B${OUTCOME + index}`,
      value: null,
      style: "result",
    })),
    text(`${now}${PIPES_ANSWER.header - 1}`, "What a search rests on, row by row: for the mark in B8", "note"),
    text(`${now}${PIPES_ANSWER.header}`, "As it is", "header"),
    { at: `${then}${PIPES_ANSWER.header}`, value: null, style: "header" },
    text(`${differs}${PIPES_ANSWER.header}`, "Differs", "numberHeader"),
  ];
}

/** The numbers of a text as they were joined to it in a program that writes a decimal comma, or in one that writes a point. */
const inPoints = (text: string): string => `SUBSTITUTE(${text},",",".")`;

/** Everything in the same row of the three tables, as one text. INDEX, so that a row inserted in Runs is counted. */
function watched(frame: Frame): SheetCell[] {
  const { now, then, differs } = WATCHED;
  const { open, searched, stock, price } = LISTS_COLUMNS;
  // computed numbers without their last digits, which programs write out to different lengths
  const short = (one: string): string => `IF(ISNUMBER(${one}),ROUND(${one},9),${one})`;
  const others = [
    askedCell(MARGIN_ROW),
    askedCell(FASTEST_ROW),
    askedCell(KEEP_ROW),
    short(frame.name("density")),
    frame.name("units"),
  ];
  const range = (place: number): string => {
    const letters = columnLetters(RUNS_COLUMN + place);
    return frame.ref("runs", `$${letters}$${RUNS_HEADER}:$${letters}$${RUNS_LAST}`);
  };
  const cells: SheetCell[] = [];
  for (let index = 0; index < WATCHED_ROWS; index++) {
    const row = WATCHED_FIRST + index;
    const ofRun = shownColumns.map((_, place) => `INDEX(${range(place)},${index + 1})`).join('&"|"&');
    const beside = [
      ...(index <= 15 ? [1, 2].map((place) => short(`INDEX(${fanCurve(frame)},${index + 1},${place})`)) : []),
      ...(index <= LISTS_LAST - LISTS_FIRST
        ? [searched, open, stock, price].map((letter) => `$${letter}$${LISTS_FIRST + index}`)
        : []),
      ...(index === 0 ? others : []),
    ];
    const all = `IFERROR(IF(${index + 1}>ROWS(${range(0)}),"",${ofRun}),"error")${beside.map((one) => `&"|"&IFERROR(${one},"error")`).join("")}`;
    cells.push(
      formula(`${now}${row}`, `=${all}`, "unit"),
      { at: `${then}${row}`, value: null, style: "unit" },
      formula(`${differs}${row}`, `=IF(EXACT(${inPoints(`$${now}${row}`)},${inPoints(`$${then}${row}`)}),0,1)`, "unit"),
    );
  }
  return cells;
}
