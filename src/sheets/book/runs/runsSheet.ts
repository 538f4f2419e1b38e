import { shownColumns } from "../../../reference/columnsOfRuns";
import { materials } from "../../../reference/materials";
import { unitOf } from "../../../reference/quantities";
import { formula, input, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { WorkshopRun } from "../../demo/workshop";
import type { Frame, SheetOf } from "../frame";
import { NO_DEVICE_CELL, runCell, RUNS_FIRST, RUNS_HEADER, RUNS_LAST, runsColumnRange } from "../layout";
import { answerColumn, BUDGET_ANSWER, fromAnswer, ofFan } from "../parts/answerReferences";
import { LOOK } from "../parts/look";
import { noDevice } from "../parts/noDevice";
import { countOfNote, SETTLES } from "../parts/notes";
import { printing } from "../parts/printing";
import { totals } from "../parts/totals";
import { formatOf, headingIn, unitOnly } from "../parts/units";
import { check, duplicateSaid, leftOut, lostHeadings, unlessDuplicate, whereNamed } from "./checks";
import type { RunsContents } from "./runsContents";
import { runsLists } from "./runsLists";

const SAID = "C3"; // what is wrong with the runs, in a sentence
const ASKED_PRESSURE = "F6"; // of the fan
const LOST = "C4"; // which columns have lost their headings; else a caution

/** The ducts: what the user types, and beside each run what that does. */
export const runsSheet: SheetOf<RunsContents> = (frame, { runs, tryIt }) => ({
  name: frame.sheet("runs"),
  columns: [24, ...shownColumns.map(({ shown }) => shown.width)],
  tallRows: [{ row: RUNS_HEADER, lines: 3 }],
  frozen: { rows: RUNS_HEADER, columns: 2 },
  cells: [
    text("A1", "Runs: your ducts", "title"),
    duplicateSaid(frame),
    text("C1", "One row for each duct between two junctions. Select a cell to read what it takes."),
    text("C2", tryIt ?? "Any order will do: hoods, the mains that they join, and the run that joins the fan."),
    formula(
      SAID,
      leftOut(frame, `Column A says what each run does: ${SETTLES} means that dust will lie in that duct.`),
      "note",
    ),
    formula(
      LOST,
      `=IF(${lostHeadings}="",${plasticPipe(frame)},"${LOOK} no column is headed "&${lostHeadings}&"what stands in its place counts for nothing.")`,
      "total",
    ),
    ...overview(frame),
    formula(
      NO_DEVICE_CELL.replaceAll("$", ""),
      `=${noDevice(`COUNT(${ASKED_PRESSURE})>0`, runsColumnRange("Device loss"))}`,
      "total",
    ),
    text(runCell("Gate", RUNS_HEADER - 1), "More, where you need it:", "note"),
    text(`A${RUNS_HEADER}`, "Check", "header"),
    ...shownColumns.map((column) => headerCell(frame, column)),
    ...Array.from({ length: RUNS_LAST - RUNS_HEADER }, (_, index) =>
      runRow(frame, RUNS_FIRST + index, runs[index] ?? {}),
    ).flat(),
  ],
  lists: runsLists(),
  flags: [
    { range: `A${RUNS_FIRST}:A${RUNS_LAST}`, containsText: SETTLES, style: "flag" },
    { range: "A2", containsText: LOOK, style: "flag" },
    { range: SAID, containsText: LOOK, style: "flag" },
    { range: LOST, containsText: LOOK, style: "flag" },
  ],
  print: printing(frame, "landscape", RUNS_HEADER),
});

/** A caution where a run is of plastic pipe, by any of the names that Material takes for it. */
function plasticPipe(frame: Frame): string {
  const { key, aliases } = materials.find((row) => row.key === "pvc pipe")!;
  const counts = [key, ...aliases].map((name) => `COUNTIF(${runsColumnRange("Material")},"${name}")`);
  const more = frame.has("cautions") ? ` More: ${frame.sheet("cautions")}.` : "";
  return `IF(${counts.join("+")}=0,"","Plastic pipe: dust charges it, and the spark startles and can light fine dust or vapour. A wire does not make it conductive.${more}")`;
}

/** What the sheet Budget says of all runs together, seen while one types. */
function overview(frame: Frame): SheetCell[] {
  const read = (code: string): string => unlessDuplicate(fromAnswer(BUDGET_ANSWER, code, frame, SAID), SAID); // "see Budget C3" is wider than its cell
  return [
    ...totals("C5", 3, [
      {
        label: "Air asked of the fan",
        code: read(ofFan(BUDGET_ANSWER, "airflow", frame)),
        format: formatOf(frame, "airflow"),
        unit: unitOnly(frame, "airflow"),
      },
      {
        label: "Fan static pressure asked",
        code: read(ofFan(BUDGET_ANSWER, "pathLoss", frame)),
        format: formatOf(frame, "pressure"),
        unit: unitOnly(frame, "pressure"),
      },
      {
        label: "Runs whose dust settles",
        code: read(countOfNote("settles", answerColumn(BUDGET_ANSWER, "note", frame))),
        format: "0",
      },
    ]),
  ];
}

/** A column of words has no unit in its header; neither has a pure number. */
function headerCell(frame: Frame, { name, kind, quantity, shown }: (typeof shownColumns)[number]): SheetCell {
  const [at, note] = [runCell(name, RUNS_HEADER), { note: shown.hint }];
  if (kind === "words" || quantity === null) return text(at, name, "header", note);
  if (unitOf(quantity, frame.units).label === "") return text(at, name, "numberHeader", note);
  return formula(at, headingIn(frame, name, quantity), "numberHeader", note);
}

function runRow(frame: Frame, row: number, run: WorkshopRun): SheetCell[] {
  return [
    formula(`A${row}`, check(frame)),
    ...shownColumns.map(({ name: column }) => {
      const at = runCell(column, row);
      // a formula that the user may type over: the dust of the sheet Start
      if (column === "Dust" && run.Dust === undefined) return formula(at, whereNamed(frame.name("dust")), "input");
      return input(at, run[column] ?? null);
    }),
  ];
}
