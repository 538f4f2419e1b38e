import { columnLetters } from "../../address";
import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { inRows } from "./block";
import { ofRun, plainName } from "./byName";
import { LOOK } from "./look";

/**
 * The names of the runs table as they are compared, row by row of it, in columns of the sheet that looks runs up: a name is
 * brought into that form once, and again only when it is changed, not for each look-up and each entry of a number.
 */
export interface RunsByName {
  readonly cells: readonly SheetCell[];
  readonly nameAt: (place: number) => string; // the cell of it; "" where that row of the table is blank
  /** Where in the runs table, from 1 for its header, the one run of this name stands; an error unless there is just one. */
  readonly placeOf: (name: string) => string;
  readonly countOf: (name: string) => string;
  /** False where somebody copied the part of the sheet that he sees, and left these columns behind: nothing is counted there, in place of a 0. */
  readonly areThere: string;
}

const PLACES = 50; // the table's forty rows, and ten for rows that are inserted

/** The rows of a sheet beside which the runs come, from place 2 of the table, which is its first run. */
const rowsBelow = (header: number): number[] => Array.from({ length: PLACES }, (_, index) => header + 1 + index);

const within = (letters: string, header: number): string => inRows(letters, header + 1, header + PLACES);

/** A name as it is compared; a blank cell, which a formula reads as 0, and what lies beyond the table are none. */
const compared = (cell: string): string => `=IFERROR(IF(${plainName(cell)}="0","",${plainName(cell)}),"")`;

/**
 * @param column of the first of two that nothing else fills, from 1
 * @param header row of their headings
 */
export function runsByName(frame: Frame, column: number, header: number): RunsByName {
  const [name, place] = [columnLetters(column), columnLetters(column + 1)];
  const [names, places] = [within(name, header), within(place, header)];
  const countOf = (wanted: string): string => `SUMPRODUCT(1*(${names}=${wanted}))`;
  const said = `The sheet ${frame.sheet("runs")}, row by row, to find runs by their names`;
  return {
    cells: [
      text(`${name}${header - 1}`, said, "note"),
      text(`${name}${header}`, "Run", "header", {
        note: "As names are compared: in small letters, with blanks for hyphens and underscores.",
      }),
      text(`${place}${header}`, "Row", "numberHeader", {
        note: "Of the table, its header being row 1; 0 where the row is blank or another run is called so, too.",
      }),
      ...rowsBelow(header).flatMap((row) => {
        const [here, number] = [`$${name}${row}`, String(row - header + 1)];
        return [
          formula(`${name}${row}`, compared(ofRun(frame, "Run", number)), "unit"),
          formula(`${place}${row}`, `=IF(${here}="",0,IF(${countOf(here)}=1,${number},0))`, "unit"),
        ];
      }),
    ],
    nameAt: (number) => `$${name}${header + number - 1}`,
    // of 0, where no one run has the name, 1/0 makes an error; rounded, since 1/(1/49) is not quite 49
    placeOf: (wanted) => `ROUND(1/(1/SUMPRODUCT((${names}=${wanted})*${places})),0)`,
    countOf,
    areThere: `COUNTA(${names})>0`,
  };
}

/** What is said where they are not; no name of a gate either. */
export const leftBehind = (column: number): string =>
  `"${LOOK} copied without the columns up to ${columnLetters(column + 1)}: copy them, too"`;

/** How many runs join each, in two columns more, which likewise change with names alone. */
export interface JoinsOfRuns {
  readonly cells: readonly SheetCell[];
  readonly joining: (place: string) => string; // the run at a place of the runs table
}

export function joinsOfRuns(frame: Frame, runs: RunsByName, column: number, header: number): JoinsOfRuns {
  const [into, joined] = [columnLetters(column), columnLetters(column + 1)];
  return {
    cells: [
      text(`${into}${header}`, "To", "header", { note: "The run that this one joins, as names are compared." }),
      text(`${joined}${header}`, "Joined by", "numberHeader", { note: "How many runs join this one." }),
      ...rowsBelow(header).flatMap((row) => {
        const [place, name] = [row - header + 1, runs.nameAt(row - header + 1)];
        const count = `SUMPRODUCT(1*(${within(into, header)}=${name}))`;
        return [
          formula(`${into}${row}`, compared(ofRun(frame, "To", String(place))), "unit"),
          formula(`${joined}${row}`, `=IF(${name}="","",${count})`, "unit"),
        ];
      }),
    ],
    joining: (place) => `INDEX(${within(joined, header)},${place}-1)`,
  };
}
