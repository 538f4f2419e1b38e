import { cellAddress } from "../../address";
import { formula, text } from "../../cells";
import type { Chart, SheetCell } from "../../workbook";
import { headedColumn } from "../parts/answerReferences";
import { saysLook } from "../parts/look";
import {
  CALIBRATE_ANSWER,
  DRAWN,
  inputColumns,
  INPUTS,
  MORE_INPUTS,
  MOST_INPUTS,
  PICTURE,
  PICTURE_LAST,
  SAYS,
  SENTENCES,
} from "./layout";

type Key = (typeof inputColumns)[number]["key"];

const isNumber = (key: string): boolean => ["before", "after", "errorBefore", "errorAfter"].includes(key);
const letterOf = (key: Key): string =>
  cellAddress(inputColumns.findIndex((one) => one.key === key) + 1, 1).slice(0, -1);
const rowsOfInputs = Array.from({ length: MOST_INPUTS }, (_, index) => INPUTS + 1 + index);
const COUNT = `COUNTIF(${headedColumn(CALIBRATE_ANSWER, "part")},"input")`;

/** The inputs that these readings tell of, beside what they are off by, and a picture of how far each ± has shrunk. */
export function inputs(): SheetCell[] {
  const of = (key: Exclude<Key, "number"> | "part", index: number): string =>
    `INDEX(${headedColumn(CALIBRATE_ANSWER, key)},${SENTENCES.length + 2 + index})`;
  const rows = rowsOfInputs.map((row, index) =>
    inputColumns.map(({ key }, column) =>
      formula(
        cellAddress(column + 1, row),
        key === "what"
          ? `=IF(${saysLook(SAYS)},"",IFERROR(IF(${of("part", index)}="input",${of(key, index)},""),""))`
          : `=IF($${letterOf("what")}$${row}="","",${key === "number" ? index + 1 : of(key, index)})`,
        "result",
        isNumber(key) ? { format: "#,##0.0" } : {},
      ),
    ),
  );
  return [
    text(`A${PICTURE}`, "How far each ± has shrunk", "section"),
    text(`A${INPUTS - 2}`, "What they say of the system", "section"),
    text(
      `A${INPUTS - 1}`,
      "In % of what is typed; of a leak times or over. Each ± is two standard deviations: 19 of 20.",
      "note",
    ),
    ...inputColumns.map(({ key, header }, column) =>
      text(cellAddress(column + 1, INPUTS), header, isNumber(key) ? "numberHeader" : "header"),
    ),
    ...rows.flat(),
    formula(
      `A${MORE_INPUTS}`,
      `=IF(AND(${SHOWN}>0,${COUNT}>${MOST_INPUTS}),"and "&(${COUNT}-${MOST_INPUTS})&" more in the table at the right","")`,
      "note",
    ),
    ...drawn(),
  ];
}

/** Bars as a line draws them: up from nothing and back, side by side for before and after. */
const [BEFORE, AFTER] = [-0.12, 0.12];
const UP = [0, 1, 0];
const AFTER_FROM = DRAWN + 1 + UP.length * MOST_INPUTS;
const LAST = AFTER_FROM + UP.length * MOST_INPUTS - 1;
const SHOWN = `$D$${DRAWN + 1}`; // how many inputs are drawn, counted once for all these cells

function drawn(): SheetCell[] {
  const known = (code: string): string => `=IF(${SHOWN}=0,"",${code})`;
  const bar = (from: number, aside: number, key: "errorBefore" | "errorAfter", letter: string): SheetCell[] =>
    rowsOfInputs.flatMap((row, index) =>
      UP.flatMap((up, step) => {
        const at = from + UP.length * index + step;
        const error = `$${letterOf(key)}$${row}`;
        const height = up === 0 ? "0" : `IF($${letterOf("unit")}$${row}="%",${error},0)`;
        return [
          formula(`A${at}`, known(`MIN(${index + 1},${SHOWN})${aside < 0 ? "" : "+"}${aside}`)),
          formula(`${letter}${at}`, known(height)),
        ];
      }),
    );
  return [
    text(`A${DRAWN - 1}`, "Behind the picture", "section"),
    text(`A${DRAWN}`, "No.", "numberHeader"),
    text(`B${DRAWN}`, "Before, ±", "numberHeader"),
    text(`C${DRAWN}`, "After, ±", "numberHeader"),
    text(`D${DRAWN}`, "Inputs", "numberHeader"),
    formula(`D${DRAWN + 1}`, `=IF(${saysLook(SAYS)},0,MIN(${COUNT},${MOST_INPUTS}))`),
    ...bar(DRAWN + 1, BEFORE, "errorBefore", "B"),
    ...bar(AFTER_FROM, AFTER, "errorAfter", "C"),
  ];
}

const series = (letter: string): string => `${letter}${DRAWN + 1}:${letter}${LAST}`;

export const errorsChart: Chart = {
  kind: "line through points",
  over: `B${PICTURE + 1}:I${PICTURE_LAST}`,
  title: "± of each input before and after the readings",
  x: { title: "No. of the input in the table below", range: series("A") },
  y: {
    title: "±, % of what is typed (leaks left out)",
    series: [
      { name: "after", range: series("C"), ink: "#b4491f" },
      { name: "before", range: series("B"), ink: "#3f5f5c" },
    ],
  },
};
