import { calibrateColumns } from "../../../reference/answerColumns";
import { type ReadingColumnRow, readingColumns } from "../../../reference/readingColumns";
import { cellAddress, columnLetters } from "../../address";
import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import { ERRORS } from "../flow/flowLayout";
import type { Frame, SheetOf } from "../frame";
import { CALIBRATED, fanCurve, runsTable, SYSTEM_CELL } from "../layout";
import { aboveHeadings } from "../parts/aboveHeadings";
import { answerLetters, headedColumn, isMissing, noAnswer, onceRunsAndCurve } from "../parts/answerReferences";
import { cautionLine } from "../parts/cautionLine";
import { readingsRange } from "../parts/inUse";
import { LOOK, saysLook } from "../parts/look";
import { printing } from "../parts/printing";
import { sheetHead } from "../parts/sheetHead";
import { tableEnd } from "../parts/tableEnd";
import { spillOf } from "../parts/spill";
import { headingIn } from "../parts/units";
import type { MeasuredContents } from "./contents";
import { errorsChart, inputs } from "./inputs";
import {
  CALIBRATE_ANSWER,
  NOTES,
  READINGS,
  READINGS_COLUMN,
  READINGS_LAST,
  SAYS,
  SENTENCES,
  SHORT,
  WORDS,
} from "./layout";

export { emptyMeasured, exampleMeasured } from "./contents";

const NUMBER = "#,##0.00"; // one column holds airflows, pressures and shares
const LEFT_OUT = "left out";

const columns: readonly ReadingColumnRow[] = readingColumns;

/** What was read in the ducts, and what it says of them. */
export const measuredSheet: SheetOf<MeasuredContents> = (frame, contents) => ({
  name: frame.sheet("measured"),
  columns: [32, ...columns.map(({ width }) => width), 70, 4, ...calibrateColumns.map(({ key }) => widthOf(key))],
  tallRows: [{ row: READINGS, lines: 2 }],
  frozen: { rows: 0, columns: 0 },
  cells: [
    ...sheetHead(
      frame.sheet("measured"),
      `What you read in the ducts of the sheet ${frame.sheet("runs")}, and what it says of fan, hoses, entries, leaks and meter.`,
      contents.invented,
    ),
    ...(contents.tryIt === null ? [] : [text("C3", contents.tryIt)]),
    cautionLine(
      frame,
      "A5",
      "Power off, all at rest, before you drill or reach into a duct. It is a model: it measures nothing.",
    ),
    text(
      "A6",
      "A reading close behind a bend, a branch or a gate fools it. What all readings of one meter are off by looks like another fan.",
      "note",
    ),
    ...inShort(frame),
    ...readings(frame, contents),
    tableEnd(`B${READINGS_LAST + 1}`, "N"),
    ...inputs(),
    ...answer(frame),
  ],
  lists: [],
  charts: [errorsChart],
  flags: [
    { range: `${WORDS}${READINGS + 1}:${WORDS}${READINGS_LAST}`, containsText: LEFT_OUT, style: "flag" },
    { range: `A${READINGS + 1}:A${READINGS_LAST}`, containsText: LEFT_OUT, style: "flag" },
    { range: SAYS.replaceAll("$", ""), containsText: LOOK, style: "flag" },
    { range: `B${SHORT + 1}`, containsText: LEFT_OUT, style: "flag" },
  ],
  print: { ...printing(frame, "portrait", 1), area: `A1:${WORDS}${NOTES + 1}` },
});

const widthOf = (key: (typeof calibrateColumns)[number]["key"]): number =>
  (({ what: 26, open: 20, inWords: 80 }) as Partial<Record<typeof key, number>>)[key] ?? 10.5;

const words = headedColumn(CALIBRATE_ANSWER, "inWords");
const first = `$${answerLetters(CALIBRATE_ANSWER, "part")}$${READINGS}`;

/** The inputs of the answer, as calls of ours take them; a program without our functions goes on with what was computed from it before a change. */
const givenTo = (frame: Frame): string[] => [
  runsTable(frame),
  fanCurve(frame),
  readingsRange(frame),
  frame.ref("flow", ERRORS),
  frame.name("density"),
];

/** The answer's first rows, in the order in which it always has them; while inputs are missing, what is missing. What reads the answer asks the first of them whether there is one. */
function inShort(frame: Frame): SheetCell[] {
  const above = aboveHeadings(columnLetters(READINGS_COLUMN + 1), SHORT + SENTENCES.length, READINGS);
  return [
    text(`A${SHORT - 1}`, "In short", "section"),
    ...SENTENCES.flatMap((label, index): SheetCell[] => {
      const line = `INDEX(${words},${index + 2})&""`;
      const said = label === "Readings" ? `${above}&${byRowsOfSheet(line)}` : line;
      const waits = `IF(${isMissing(first, ...givenTo(frame))},${noAnswer(frame, CALIBRATE_ANSWER)},IF(LEFT(${first},7)="Fill in",${first},${said}))`;
      const code = index === 0 ? waits : `IF(${saysLook(SAYS)},"",IFERROR(${said},""))`;
      return [text(`A${SHORT + index}`, label, "label"), formula(`B${SHORT + index}`, `=${code}`, "total")];
    }),
  ];
}

/** The same with the sheet's own rows: the answer counts from the headings of its table. */
function byRowsOfSheet(said: string): string {
  const heading = `ROW($${columnLetters(READINGS_COLUMN)}$${READINGS})`;
  const rows = Array.from({ length: READINGS_LAST - READINGS }, (_, index) => index + 2);
  const known = rows.reduce((words, row) => `SUBSTITUTE(${words},"(row ${row})","(sheet row "&${heading}+${row - 1}&")")`, said); // prettier-ignore
  return `SUBSTITUTE(${known},"(row ","(from the headings on row ")`; // one that was inserted
}

/** The table of readings, and beside each row what is said of its first two. */
function readings(frame: Frame, { readings: typed }: MeasuredContents): SheetCell[] {
  const rows = headedColumn(CALIBRATE_ANSWER, "row");
  // the answer counts from the header; told by where it stands, since people insert readings between others
  const own = `ROW()-ROW($${columnLetters(READINGS_COLUMN)}$${READINGS})+1`;
  const second = `IF(COUNTIF(${rows},${own})>1,"; "&INDEX(${words},MATCH(${own},${rows},0)+1),"")`;
  const head = columns.map(({ name, quantity, hint }, index): SheetCell => {
    const at = cellAddress(READINGS_COLUMN + index, READINGS);
    return quantity === null
      ? text(at, name, "header", { note: hint })
      : formula(at, headingIn(frame, name, quantity), "numberHeader", { note: hint });
  });
  const body = Array.from({ length: READINGS_LAST - READINGS }, (_, index): SheetCell[] => {
    const row = READINGS + 1 + index;
    return [
      ...readingColumns.map(({ name }, column) =>
        input(cellAddress(READINGS_COLUMN + column, row), typed[index]?.[name] ?? null),
      ),
      formula(`A${row}`, `=${firstWords(`$${WORDS}${row}`)}`),
      formula(`${WORDS}${row}`, `=IF(${saysLook(SAYS)},"",IFERROR(SUBSTITUTE(INDEX(${words},MATCH(${own},${rows},0))&${second}," in row "&${own}&" of readings",""),""))`, "result"), // prettier-ignore
    ];
  });
  return [
    text(`A${READINGS - 2}`, "Readings", "section"),
    text(
      `A${READINGS - 1}`,
      "A row for a place and a set of open gates. Fill any of velocity, airflow, suction and drop; a velocity is best, since no area is typed for it.",
      "note",
    ),
    text(`A${READINGS}`, "Check", "header", { note: `The first words of column ${WORDS}.` }),
    ...head,
    text(`${WORDS}${READINGS}`, "What is said of it", "header"),
    ...body.flat(),
  ];
}

/** "agrees", "left out": what stands before the first colon or semicolon, or before the names that are near a wrong one. */
const firstWords = (said: string): string =>
  `LEFT(${said},MIN(${[":", ";", " (nearest"].map((end) => `FIND("${end}",${said}&"${end}")`).join(",")})-1)`;

function answer(frame: Frame): SheetCell[] {
  const given = [...givenTo(frame), frame.name("units")].join(",");
  const call = `DUCT.CALIBRATE(${given})`;
  const { column, header, last } = CALIBRATE_ANSWER;
  const isNumber = ["read", "before", "after", "errorBefore", "errorAfter", "misfit"];
  return [
    ...spillOf(
      column,
      header,
      last,
      calibrateColumns.map(({ key }) => (isNumber.includes(key) ? NUMBER : key === "row" ? "0" : null)),
      onceRunsAndCurve(frame, call),
    ),
    text(`A${NOTES}`, `One formula says all this: =${call}`, "note"),
    text(`A${NOTES + 1}`, goingOn(frame), "note"),
  ];
}

/** A sheet Flow that was there before knows nothing of these readings: only one that is made with them has the choice. */
function goingOn(frame: Frame): string {
  const flow = frame.sheet("flow");
  const cell = SYSTEM_CELL.replaceAll("$", "");
  return frame.adds("flow")
    ? `Choose "${CALIBRATED}" in ${cell} of the sheet ${flow}: the sheets go on with these ducts and this fan. CALIBRATEDRUNS and CALIBRATEDCURVE give them, for SIZES too.`
    : `The sheet ${flow} was there before these readings and goes by what is typed. CALIBRATEDRUNS and CALIBRATEDCURVE give these ducts and this fan, for SOLVE and SIZES.`;
}
