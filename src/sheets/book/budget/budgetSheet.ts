import { formula, text } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame, SheetOf } from "../frame";
import { BUDGET_COLUMN, BUDGET_HEADER, BUDGET_LAST, runCell, runsColumn, runsTable, RUNS_HEADER } from "../layout";
import { answerColumn, BUDGET_ANSWER, fromAnswer, ofFan, onceRuns } from "../parts/answers";
import { printing } from "../parts/printing";
import { spillOf } from "../parts/spill";
import { type Total, totals } from "../parts/totals";
import { formatOf, headingIn, SHARE, unitOnly } from "../parts/units";

const FIRST = BUDGET_HEADER + 1;
const ASKED = `$O$${FIRST}:$O$${BUDGET_LAST}`; // what each open hood asks for

/** What every run carries and costs when the hoods get what they ask for: one formula, its flags in words, its totals. */
export const budgetSheet: SheetOf<null> = (frame) => ({
  name: frame.sheet("budget"),
  columns: [15, 18, 9, 9.5, 9.5, 9.5, 9.5, 9.5, 9.5, 10.5, 10.5, 9, 13.5, 92, 10],
  tallRows: [{ row: BUDGET_HEADER, lines: 3 }],
  frozen: { rows: BUDGET_HEADER, columns: 2 },
  cells: [
    text("A1", "Budget: as asked for", "title"),
    text("C1", `What the runs carry and cost when every open hood gets what it asks for. Nothing to type here.`),
    text("C2", `${code(frame)} fills the table; its row 2 is the first run.`, "note"),
    ...overview(frame),
    text(`A${BUDGET_HEADER}`, "Flags", "header", {
      note: "The warnings of column N in a word each: settles, too fast, resize, leaks.",
    }),
    ...spillOf(BUDGET_COLUMN, BUDGET_HEADER, BUDGET_LAST, columnFormats(frame), onceRuns(frame, code(frame).slice(1))),
    formula(`O${BUDGET_HEADER}`, headingIn(frame, "Asked at the hood", "airflow"), "numberHeader"),
    ...Array.from({ length: BUDGET_LAST - BUDGET_HEADER }, (_, index) => besideRow(frame, FIRST + index)).flat(),
  ],
  lists: [],
  flags: ["settles", "too fast", "resize", "leaks"].map((containsText) => ({
    range: `A${FIRST}:A${BUDGET_LAST}`,
    containsText,
    style: "flag",
  })),
  print: printing(frame, "landscape", BUDGET_HEADER),
});

const code = (frame: Frame): string =>
  `=DUCT.BUDGET(${runsTable(frame)},${frame.name("density")},${frame.name("units")})`;

function columnFormats(frame: Frame): (string | null)[] {
  const [airflow, velocity, pressure] = (["airflow", "velocity", "pressure"] as const).map((one) =>
    formatOf(frame, one),
  );
  const pressures = Array.from({ length: 7 }, () => pressure!);
  return [null, airflow!, velocity!, ...pressures, null, airflow!, null];
}

function besideRow(frame: Frame, row: number): SheetCell[] {
  const cells = [formula(`A${row}`, flags(`N${row}`))];
  const onRuns = row - BUDGET_HEADER + RUNS_HEADER;
  const run = frame.ref("runs", runCell("Run", onRuns));
  const isEnd = `COUNTIF(${runsColumn(frame, "To")},${run})=0`;
  // Governs says yes or no only of runs whose air is asked for
  return row === BUDGET_LAST
    ? cells // only the fan can stand there
    : [
        ...cells,
        formula(
          `O${row}`,
          `=IF(AND(L${row}<>"",${run}<>"",${isEnd}),${frame.ref("runs", runCell("Airflow", onRuns))},"")`,
          "result",
          { format: formatOf(frame, "airflow") },
        ),
      ];
}

/** The warnings of a long note in a word each, where they are seen without scrolling. */
function flags(note: string): string {
  const word = (search: string, said: string): string => `IF(ISNUMBER(SEARCH("${search}",${note})),"${said}","")`;
  const words = [
    word("dust settles", ", settles"),
    word("too fast", ", too fast"),
    word("resize", ", resize"),
    word("leak carries", ", leaks"),
  ];
  return `=MID(${words.join("&")},3,40)`;
}

function overview(frame: Frame): SheetCell[] {
  const read = (part: string): string => fromAnswer(BUDGET_ANSWER, part);
  const [airflow, pressure] = [formatOf(frame, "airflow"), formatOf(frame, "pressure")];
  const flow = unitOnly(frame, "airflow");
  const fanAir = ofFan(BUDGET_ANSWER, "C");
  const column = (letter: string): string => answerColumn(BUDGET_ANSWER, letter);
  const left: Total[] = [
    { label: "Air asked at open hoods", code: read(`SUM(${ASKED})`), format: airflow, unit: flow },
    { label: "Let in by leaks", code: read(`${fanAir}-SUM(${ASKED})`), format: airflow, unit: flow },
    { label: "Air at the fan", code: read(fanAir), format: airflow, unit: flow },
    { label: "Runs whose dust settles", code: read(`COUNTIF(${column("N")},"*dust settles*")`), format: "0" },
  ];
  const right: Total[] = [
    {
      label: "Fan static pressure",
      code: read(ofFan(BUDGET_ANSWER, "K")),
      format: pressure,
      unit: unitOnly(frame, "pressure"),
    },
    {
      label: "Largest suction",
      code: read(`MAX(${column("J")})`),
      format: pressure,
      unit: unitOnly(frame, "pressure"),
    },
    { label: "Leaks, share of the air", code: read(`(${fanAir}-SUM(${ASKED}))/${fanAir}`), format: SHARE },
    { label: "Paths to resize", code: read(`COUNTIF(${column("N")},"*resize*")`), format: "0" },
  ];
  return [...totals("C4", 3, left), ...totals("H4", 3, right)];
}
