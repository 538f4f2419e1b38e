/**
 * The leak log. It is a plain sheet and no function over a range, on purpose: each step, from two readings to the gate to
 * mend next, stands in a cell where it can be read and changed, and a column of one's own is added as in any sheet. A
 * function would have hidden the steps, and fixed the columns.
 */
import { gateConditions } from "../../../reference/gateConditions";
import { formula, input, text } from "../../cells";
import type { ChoiceList, SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { formatOf, headingIn, unitWord } from "../parts/units";
import type { LoggedGate } from "./contents";
import { plainName } from "../parts/byName";
import {
  GAINED,
  HEAD_CELL,
  inLog,
  LOG,
  LOG_FIRST,
  LOG_LAST,
  logged,
  MOST_CELL,
  REPEATS,
  SAVED,
  SUCTION_SLIP,
  TOO_MUCH,
  TWICE,
  workedOf,
} from "./layout";
import { isLeftBehind, LEFT_BEHIND } from "./standing";

const GATE_NOTE =
  "The name of its run, where it has one: a suction left blank is then taken from Flow, while the gate stands there as it was found.";
const CONDITION_NOTE =
  "How the gate was found: a name from the table gates. The estimate below goes by it, and open or shut says where its leak and its suction belong.";
const SUCTION_NOTE =
  "Static suction in the duct at the gate while measuring, above 0. Blank: what the sheet Flow has where the run has this name and its gate stands as it was found.";
const TIME_NOTE = "Minutes as a number, 12: 0:12 is a time of day, the 120th part of a day, and does not count.";
const AFTER_NOTE = "Blank until it is mended and measured again. 0 is a reading: nothing measurable.";
const SAVED_NOTE = `Before less after. A negative one stays in the sum: it is no saving, and says that something is wrong. What the open hoods gain of it stands in column ${GAINED}.`;

const GATES = LOG_LAST - LOG;

export const conditionList: ChoiceList = {
  range: inLog("C"),
  choices: gateConditions.map(({ key }) => key),
  strict: false,
};

/** A row for each gate: what was found, what the mending took, and what it says. */
export function leakLog(frame: Frame, gates: readonly LoggedGate[]): SheetCell[] {
  const number = "numberHeader";
  const cells: SheetCell[] = [
    text(`A${LOG - 2}`, "Leak log", "section"),
    text(
      `A${LOG - 1}`,
      `Read each gate as you find it; mend it; read it again in the same way, with the same gates open. Row ${REPEATS} says what chance does.`,
      "note",
    ),
    text(`A${LOG}`, "Gate", "header", { note: GATE_NOTE }),
    formula(`B${LOG}`, headingIn(frame, "Across", "diameter"), number),
    text(`C${LOG}`, "Condition, as found", "header", { note: CONDITION_NOTE }),
    formula(`D${LOG}`, headingIn(frame, "Suction there", "pressure"), number, { note: SUCTION_NOTE }),
    formula(`E${LOG}`, headingIn(frame, "Leak before", "airflow"), number),
    formula(`F${LOG}`, headingIn(frame, "Leak after", "airflow"), number, { note: AFTER_NOTE }),
    text(`G${LOG}`, "Cost (your money)", number),
    text(`H${LOG}`, "Time (min)", number, { note: TIME_NOTE }),
    formula(`I${LOG}`, headingIn(frame, "Saved", "airflow"), number, { note: SAVED_NOTE }),
    text(`J${LOG}`, "What the readings say", "header"),
  ];
  const leak = { format: formatOf(frame, "leak") };
  for (let at = LOG_FIRST; at <= LOG_LAST; at++) {
    const gate = gates[at - LOG_FIRST];
    cells.push(
      input(`A${at}`, gate?.gate ?? null),
      input(`B${at}`, gate?.diameter ?? null),
      input(`C${at}`, gate?.condition ?? null),
      // what is typed shows all its digits
      input(`D${at}`, gate?.suction ?? null),
      input(`E${at}`, gate?.before ?? null),
      input(`F${at}`, gate?.after ?? null),
      input(`G${at}`, gate?.cost ?? null),
      input(`H${at}`, gate?.minutes ?? null),
      formula(`I${at}`, `=IF(${isLeftBehind},"",IFERROR(${workedOf(SAVED)},""))`, "total", leak),
      formula(`J${at}`, `=${verdict(frame, at)}`),
    );
  }
  return cells;
}

/** What the two readings of a gate say, in words; the first thing that is wrong is said first. */
function verdict(frame: Frame, at: number): string {
  const [name, before, after] = (["A", "E", "F"] as const).map((letter) => logged(letter)) as [string, string, string];
  const [estimate, order, chance, needed] = (["C", "B", "S", "T"] as const).map(workedOf) as [string, string, string, string]; // prettier-ignore
  const saved = `I${at}`;
  const said = (airflow: string): string => `ROUND(${airflow},1)&" "&${unitWord(frame, "airflow")}`;
  const cases: readonly (readonly [when: string, says: string])[] = [
    [`AND(${name}="",COUNTA(${logged("B:H")})=0)`, '""'],
    [isLeftBehind, `"no verdict: ${LEFT_BEHIND}"`],
    [`${name}=""`, '"give the gate a name"'],
    [`ROW()-ROW($A$${LOG})>${GATES}`, `"not counted: the log has room for ${GATES} gates"`],
    // mended twice, or the same reading entered again: only its owner knows, and the sums would count each row
    [
      `SUMPRODUCT(1*(${plainName(inLog("A"))}=${plainName(name)}))>1`,
      `"${TWICE}. Keep one, with its first reading before and its last after"`,
    ],
    [`${before}=""`, '"measure its leak first"'],
    ...wrong("the leak before", before),
    ...slip(estimate, before),
    [`LEFT(${workedOf("J")},${SUCTION_SLIP.length})="${SUCTION_SLIP}"`, workedOf("J")],
    [
      `AND(${after}="",${order}="")`,
      `IF(${workedOf("R")}="","type the meter's head in ${HEAD_CELL.replaceAll("$", "")}","no more than the meter's error: leave it")`,
    ],
    [`${after}=""`, `IF(${order}=1,"mend this one next","not mended: number "&${order}&" in turn")`],
    ...wrong("the leak after", after),
    [`${after}>${before}`, `"after is above before by "&${said(`-${saved}`)}&": measure again"`],
    [`ISERROR(${chance})`, `"no verdict: see row "&ROW(${workedOf("S")})`],
    [`${chance}=""`, `"no verdict: read one leak again and again in row ${REPEATS}"`],
    [`${saved}>${chance}`, `"mended: more than the ± "&${said(chance)}&" of chance"`],
    [`COUNT(${needed})=0`, `"no difference"`],
  ];
  const rest = `"too small to tell within ± "&${said(chance)}&": "&${needed}&" readings each would"`;
  return cases.reduceRight((otherwise, [when, says]) => `IF(${when},${says},${otherwise})`, rest);
}

/** A reading so far from what gates in that condition leak that a decimal place is likely wrong, of it or of the head's area. House judgement. */
const TOO_LITTLE = 5;
const slip = (estimate: string, before: string): readonly (readonly [string, string])[] => [
  [
    `IF(COUNT(${estimate})=0,FALSE,${before}>${TOO_MUCH}*${estimate})`,
    `"check it: "&ROUND(${before}/${estimate},0)&" times the estimate for its condition. A decimal place of the reading, or of the head's area?"`,
  ],
  [
    `IF(COUNT(${estimate})=0,FALSE,AND(${before}>0,${TOO_LITTLE}*${before}<${estimate}))`,
    `"check it: one part in "&ROUND(${estimate}/${before},0)&" of the estimate for its condition. A decimal place of the reading, or of the head's area?"`,
  ],
];

const wrong = (what: string, cell: string): readonly (readonly [string, string])[] => [
  [`COUNT(${cell})=0`, `"check it: ${what} must be a number"`],
  [`${cell}<0`, `"check it: ${what} cannot be below 0"`],
  [
    `AND(COUNT(${MOST_CELL})=1,${cell}>${MOST_CELL})`,
    `"check it: ${what} is above the "&${MOST_CELL}&" that the meter can read"`,
  ],
];
