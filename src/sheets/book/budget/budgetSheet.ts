import { type BudgetKey, budgetColumns } from "../../../reference/answerColumns";
import type { MarkedNote } from "../../../reference/notes";
import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame, SheetOf } from "../frame";
import {
  BUDGET_BESIDE,
  BUDGET_COLUMN,
  BUDGET_HEADER,
  BUDGET_LAST,
  BUDGET_NAMES,
  BUDGET_NONE_CELL,
  BUDGET_WRONG_CELL,
  runsTable,
} from "../layout";
import {
  answerCell,
  answerColumn,
  answerLetters,
  BUDGET_ANSWER,
  fromAnswer,
  headOf,
  isMissing,
  ofFan,
  onceRuns,
} from "../parts/answerReferences";
import { heldAsText } from "../parts/duplicated";
import { countOfNote, saysNote, SETTLES } from "../parts/notes";
import { numberOfRun, plainName, sumOfRuns } from "../parts/byName";
import { printing } from "../parts/printing";
import { type JoinsOfRuns, joinsOfRuns, leftBehind, type RunsByName, runsByName } from "../parts/runsByName";
import { spillOf } from "../parts/spill";
import { type Total, totals } from "../parts/totals";
import { formatOf, headingIn, SHARE, unitOnly } from "../parts/units";
import { LOOK } from "../parts/look";
import { checkInWords } from "./checkInWords";
import { howSure } from "./howSure";
import { stockList } from "./stockSize";
import { checkOf, headline, isWrong, rowOfTable, told, wrongRow } from "./wrongRuns";

const FIRST = BUDGET_HEADER + 1;
const BESIDE = BUDGET_BESIDE.asked;
const { gauge: GAUGE } = BUDGET_BESIDE;
const GAUGE_NOTE =
  "What a gauge on a tap in the duct's wall reads at the run's end. Suction at its end is of total pressure; this is that and the velocity pressure. Flow gives the same at a run's start.";
const ASKED = `$${BESIDE}$${FIRST}:$${BESIDE}$${BUDGET_LAST}`;

/** Notes that are warnings, in a word each. */
const FLAGS: readonly (readonly [MarkedNote, string])[] = [
  ["metalWithWood", "metal"],
  ["likelyMetal", "metal by name"],
  ["settles", SETTLES],
  ["tooFast", "too fast"],
  ["resize", "resize"],
  ["leaky", "leaks"],
];

const WIDTHS: Readonly<Partial<Record<BudgetKey, number>>> = {
  run: 16,
  airflow: 9,
  velocityPressure: 11,
  device: 10.5,
  suctionAtEnd: 10.5,
  pathLoss: 10.5,
  governs: 10,
  balancedAirflow: 13.5,
  note: 92,
};

/** What every run carries and costs when the hoods get what they ask for: one formula, its flags in words, its totals. */
export const budgetSheet: SheetOf<null> = (frame) => {
  const runs = runsByName(frame, BUDGET_NAMES, BUDGET_HEADER);
  const joins = joinsOfRuns(frame, runs, BUDGET_NAMES + 2, BUDGET_HEADER);
  return {
    name: frame.sheet("budget"),
    columns: [17, ...budgetColumns.map(({ key }) => WIDTHS[key] ?? 10), 10, 10.5, 8, 22, 22, 8, 16, 8, 16, 8, 9],
    tallRows: [{ row: BUDGET_HEADER, lines: 4 }],
    frozen: { rows: BUDGET_HEADER, columns: 2 },
    cells: [
      text("A1", "Budget: as asked", "title"),
      text(
        "C1",
        `What the runs carry and cost when every open hood gets what it asks for. Fittings counts the hood's entry in. Nothing to type here.`,
      ),
      text(
        "C2",
        `Row 2 of the table is the first run. ${howKnown(frame)}`, // no longer than a paper's columns
        "note",
      ),
      formula(
        BUDGET_WRONG_CELL.replaceAll("$", ""),
        `=IF(${runs.areThere},${headline(frame).slice(1)},${leftBehind(BUDGET_NAMES + 2)})`,
        "note",
      ),
      formula(BUDGET_NONE_CELL.replaceAll("$", ""), noAnswer(frame), "note"),
      ...overview(frame, runs),
      text(`A${BUDGET_HEADER}`, "Flags", "header", {
        note: `The warnings of column ${answerLetters(BUDGET_ANSWER, "note")} in a word each: ${FLAGS.map(([, said]) => said).join(", ")}.`,
      }),
      ...spillOf(
        BUDGET_COLUMN,
        BUDGET_HEADER,
        BUDGET_LAST,
        columnFormats(frame),
        onceRuns(frame, code(frame).slice(1)),
      ),
      formula(`${BESIDE}${BUDGET_HEADER}`, headingIn(frame, "Asked at the hood", "airflow"), "numberHeader"),
      formula(`${GAUGE}${BUDGET_HEADER}`, headingIn(frame, "Static suction at its end", "pressure"), "numberHeader", {
        note: GAUGE_NOTE,
      }),
      text(`${BUDGET_BESIDE.place}${BUDGET_HEADER - 1}`, `For the sheet ${frame.sheet("runs")}`, "note"),
      text(`${BUDGET_BESIDE.place}${BUDGET_HEADER}`, "Row of the table", "numberHeader", {
        note: "Where the runs table has the run of this name, its header being row 1.",
      }),
      text(`${BUDGET_BESIDE.check}${BUDGET_HEADER}`, "Check", "header"),
      text(`${BUDGET_BESIDE.told}${BUDGET_HEADER}`, "As told", "header", {
        note: "What the note says of a wrong run without its name, or what the run waits for.",
      }),
      text(`${BUDGET_BESIDE.wrongRow}${BUDGET_HEADER}`, "Row to mend", "numberHeader", {
        note: `Of the sheet ${frame.sheet("runs")}, where a run is wrong or joins none.`,
      }),
      ...Array.from({ length: BUDGET_LAST - BUDGET_HEADER }, (_, index) =>
        besideRow(frame, FIRST + index, runs, joins),
      ).flat(),
      ...runs.cells,
      ...joins.cells,
      ...heldAsText(BUDGET_NAMES, runsTable(frame), frame.sheet("runs")),
      ...stockList(frame),
      ...howSure(frame),
    ],
    lists: [],
    flags: [
      ...FLAGS.map(([, containsText]) => ({
        range: `A${FIRST}:A${BUDGET_LAST}`,
        containsText,
        style: "flag" as const,
      })),
      { range: BUDGET_WRONG_CELL.replaceAll("$", ""), containsText: LOOK, style: "flag" },
    ],
    print: { ...printing(frame, "landscape", BUDGET_HEADER), area: `A1:${GAUGE}${BUDGET_LAST}` },
  };
};

/**
 * That there is no answer. A program without our functions keeps the numbers that were computed from it, also after a change, so this reads
 * every input itself, and what reads the answer reads this.
 */
const noAnswer = (frame: Frame): string =>
  `=IF(${isMissing(headOf(BUDGET_ANSWER), runsTable(frame), frame.name("density"))},"${LOOK} see C3","")`;

const code = (frame: Frame): string =>
  `=DUCT.BUDGET(${runsTable(frame)},${frame.name("density")},${frame.name("units")})`;

/** A number does not show that it rests on a memory, so the sheet says who does. */
const howKnown = (frame: Frame): string => {
  const marked = frame.has("tables") ? `${frame.sheet("tables")} marks them, ` : "";
  return `Values from memory count like any other: ${marked}the pane's Check names them.`;
};

function columnFormats(frame: Frame): (string | null)[] {
  return budgetColumns.map(({ quantity }) => (quantity === null ? null : formatOf(frame, quantity)));
}

function besideRow(frame: Frame, row: number, runs: RunsByName, joins: JoinsOfRuns): SheetCell[] {
  const cells = [formula(`A${row}`, flags(answerCell(BUDGET_ANSWER, "note", row)))];
  if (row === BUDGET_LAST) return cells; // only the fan can stand there
  const run = answerCell(BUDGET_ANSWER, "run", row);
  const place = `$${BUDGET_BESIDE.place}${row}`;
  const ofARun = (code: string): string => `=IF(OR(${run}="",${run}="Fan"),"",${code})`;
  // Governs says yes or no only of runs whose air is asked for
  const asks = `IF(AND(${answerCell(BUDGET_ANSWER, "governs", row)}<>"",${joins.joining(place)}=0),${numberOfRun(frame, "Airflow", place)},"")`;
  const total = answerCell(BUDGET_ANSWER, "suctionAtEnd", row); // blank after the fan
  const gauge = ofARun(`IF(${total}="","",${total}+${answerCell(BUDGET_ANSWER, "velocityPressure", row)})`);
  return [
    ...cells,
    formula(`${GAUGE}${row}`, gauge, "result", { format: formatOf(frame, "pressure") }),
    formula(`${BESIDE}${row}`, ofARun(asks), "result", { format: formatOf(frame, "airflow") }),
    formula(`${BUDGET_BESIDE.place}${row}`, placeOf(row, run, runs), "unit"),
    formula(
      `${BUDGET_BESIDE.check}${row}`,
      `=IF(${place}="","",${checkOf(frame, row, checkInWords(frame, row, place))})`,
      "unit",
    ),
    formula(`${BUDGET_BESIDE.told}${row}`, told(row), "unit"),
    formula(`${BUDGET_BESIDE.wrongRow}${row}`, wrongRow(frame, row), "unit"),
  ];
}

/** By its name; a wrong run may have none, or two runs the same one, and then it is where the answer has it. */
function placeOf(row: number, run: string, runs: RunsByName): string {
  const name = plainName(run);
  const isThere = `OR(${isWrong(row)},${runs.nameAt(row - BUDGET_HEADER + 1)}=${name})`;
  const found = `IFERROR(${runs.placeOf(name)},IF(${isThere},${rowOfTable},NA()))`;
  return `=IF(AND(NOT(${isWrong(row)}),OR(${run}="",${run}="Fan")),"",${found})`;
}

/** The warnings of a long note in a word each, where they are seen without scrolling. */
function flags(note: string): string {
  const words = FLAGS.map(([key, said]) => `IF(${saysNote(key, note)},", ${said}","")`);
  return `=IF(${BUDGET_NONE_CELL}="",MID(${words.join("&")},3,40),"")`;
}

function overview(frame: Frame, runs: RunsByName): SheetCell[] {
  const read = (part: string): string => fromAnswer(BUDGET_ANSWER, part);
  const beside = (code: string): string => `IF(${runs.areThere},${code},NA())`;
  const asked = (code: string): string => beside(sumOfRuns(frame, ASKED, code));
  const [airflow, pressure] = [formatOf(frame, "airflow"), formatOf(frame, "pressure")];
  const flow = unitOnly(frame, "airflow");
  const fanAir = ofFan(BUDGET_ANSWER, "airflow");
  const letIn = `ROUND(${fanAir}-SUM(${ASKED}),6)+0`; // what sums differ by in their last digits is no leak, nor a "-0"
  const notes = answerColumn(BUDGET_ANSWER, "note");
  const left: Total[] = [
    { label: "Air asked at open hoods", code: read(asked(`SUM(${ASKED})`)), format: airflow, unit: flow },
    { label: "Let in by leaks", code: read(asked(letIn)), format: airflow, unit: flow },
    { label: "Air at the fan", code: read(fanAir), format: airflow, unit: flow },
    { label: "Runs whose dust settles", code: read(countOfNote("settles", notes)), format: "0" },
  ];
  const right: Total[] = [
    {
      label: "Fan static pressure",
      code: read(ofFan(BUDGET_ANSWER, "pathLoss")),
      format: pressure,
      unit: unitOnly(frame, "pressure"),
    },
    {
      label: "Largest static suction",
      code: read(beside(`MAX($${GAUGE}$${FIRST}:$${GAUGE}$${BUDGET_LAST})`)),
      format: pressure,
      unit: unitOnly(frame, "pressure"),
    },
    { label: "Leaks, share of the air", code: read(asked(`(${letIn})/${fanAir}`)), format: SHARE },
    { label: "Paths to resize", code: read(countOfNote("resize", notes)), format: "0" },
  ];
  return [...totals("C4", 3, left), ...totals("H4", 3, right)];
}
