import { AS_SOLVED } from "../../../reference/foundWords";
import { formula } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { TROUBLE } from "../flow/flowGates";
import { openRuns, runsColumn } from "../layout";
import { plainName } from "../parts/byName";
import { formatOf } from "../parts/units";
import { isNoAnswer } from "./atHoods";
import {
  CHANCE_CELL,
  FLOW_PLACE,
  flowColumn,
  inHeadedLog,
  inWorked,
  logged,
  MOST_CELL,
  REPEATS_MEAN,
  REPEATS_TYPED,
  SAVED,
  SUCTION_HANDED,
  SUCTION_SLIP,
  TOO_MUCH,
  TURNED,
  UNIT_LEAK_CELL,
  WORKED,
  WORKED_FIRST,
} from "./layout";
import { headArea, hours } from "./meter";

/** The row of one gate; what the functions answer over whole columns is not written here. */
export function workedGate(frame: Frame, at: number): SheetCell[] {
  const leak = { format: formatOf(frame, "leak") };
  const pressure = { format: formatOf(frame, "pressure") };
  const cell = (letter: string, code: string, extra: { format?: string } = {}): SheetCell =>
    formula(`${letter}${at}`, `=${code}`, "result", extra);
  const area = { format: frame.units === "SI" ? "#,##0" : "0.00" };
  const { typed, other, told } = suctions(frame, at);
  const elsewhere = (leakage: string, read: string, there: string): string =>
    `IF(OR(COUNT(${leakage}${at})=0,COUNT(${read}${at})=0,COUNT(${there}${at})=0),"",IF(${there}${at}<0,"",${leakage}${at}*SQRT(${there}${at}/${read}${at})))`;
  const opening = (leakage: string, read: string): string =>
    `IF(OR(COUNT(${leakage}${at})=0,COUNT(${read}${at})=0),"",${leakage}${at}/(${UNIT_LEAK_CELL}*SQRT(${read}${at})))`;
  return [
    cell("A", `IF(ROW()-ROW($A$${WORKED})>=ROWS(${inHeadedLog("A")}),"",${of("A")}&"")`),
    cell("B", order(at), { format: "0" }),
    cell("C", `IF(OR(COUNT(W${at})=0,COUNT(Y${at})=0),"",Y${at}*SQRT(W${at}))`, leak),
    cell("D", other, pressure),
    cell("E", elsewhere("K", "M", "O"), leak),
    cell("F", elsewhere("L", "N", "P"), leak),
    cell("G", opening("K", "M"), area),
    cell("H", opening("L", "N"), area),
    cell("I", paid(at), { format: "0.00" }),
    cell("J", suctionSlip(frame, at, `IF(${isUnknown(`Y${at}`)},${UNKNOWN_CONDITION},${told})`)),
    cell("K", sound(at, "E"), leak),
    cell("L", sound(at, "F"), leak),
    cell("M", `IF(K${at}="","",${typed})`, pressure),
    cell("N", `IF(L${at}="","",${typed})`, pressure),
    cell("O", `IF(OR(K${at}="",${typed}=""),"",D${at})`, pressure),
    cell("P", `IF(OR(L${at}="",${typed}=""),"",D${at})`, pressure),
    cell("Q", speed(frame, `K${at}`), { format: formatOf(frame, "velocity") }),
    cell("S", chance(at), leak),
    cell("T", needed(at), { format: "0" }),
    cell("U", `IF(COUNT(V${at})=0,"",${of("C")}&"")`),
    cell("V", `IF(IFERROR(${of("C")}="",TRUE),"",IF(COUNT(${of("B")})=0,"",IF(${of("B")}>0,${of("B")},"")))`),
    cell("W", `IF(COUNT(V${at})=0,"",${typed})`, pressure),
    cell("X", waits(at), leak),
    cell(SAVED, `IF(COUNT(K${at}:L${at})<2,"",K${at}-L${at})`, leak),
    cell(
      SUCTION_HANDED,
      `IF(A${at}="","",IF(${of("D")}="",IF(${TURNED}${at}="","${AS_SOLVED}",""),${of("D")}))`,
      pressure,
    ),
    cell(FLOW_PLACE, flowPlace(frame, at), { format: "0" }),
    cell(TURNED, turned(frame, at)),
  ];
}

const UNKNOWN_CONDITION = '"check it: the condition is no name of the table gates, so there is no estimate"';

/** [-] Discharge coefficient of an opening, as LEAKAREA takes it where none is given: see openingLeak.ts. */
const DISCHARGE = 0.6;

/** An estimate that is an error by itself: where all are, none was computed, as in a program without our functions. */
const isUnknown = (estimate: string): string =>
  `AND(ISERROR(${estimate}),SUMPRODUCT(1*ISERROR(${inWorked("Y")}))<ROWS(${inWorked("Y")}))`;

/** What is said of a suction far from what Flow has there, or at which the leak takes more than an open end of its duct; else the other words. */
function suctionSlip(frame: Frame, at: number, otherwise: string): string {
  const [typed, across, there, area] = [of("D"), of("B"), `D${at}`, `G${at}`];
  const far = `IF(COUNT(${typed},${there})<2,FALSE,AND(${typed}>0,${there}>0,OR(${typed}>${TOO_MUCH}*${there},${TOO_MUCH}*${typed}<${there})))`;
  const times = `ROUND(MAX(${typed}/${there},${there}/${typed}),0)&" times "&IF(${typed}<${there},"less","more")`;
  const farSaid = `"${SUCTION_SLIP}"&${times}&" than the sheet ${frame.sheet("flow")} has there now. A decimal place?"`;
  const wide = `IF(COUNT(${area},${across})<2,FALSE,AND(${across}>0,${DISCHARGE}*${area}>=PI()/4*${across}^2))`;
  const wideSaid = `"${SUCTION_SLIP}at which so much takes an opening as wide as the duct. A decimal place?"`;
  return `IF(${far},${farSaid},IF(${wide},${wideSaid},${otherwise}))`;
}

/** What stands in the log. */
const of = (letter: string): string => logged(letter, WORKED);

/** A reading as the functions may have it: a number, at least 0, within what the meter reads, of a gate with a name. */
function sound(at: number, letter: "E" | "F"): string {
  const reading = of(letter);
  const beyond = `AND(COUNT(${MOST_CELL})=1,${reading}>${MOST_CELL})`;
  return `IF(A${at}="","",IF(COUNT(${reading})=0,"",IF(OR(${reading}<0,${beyond}),"",${reading})))`;
}

/** By the name as the functions compare it. */
function flowPlace(frame: Frame, at: number): string {
  const runs = flowColumn(frame, "run");
  const first = runs.replace(/:.*/, "");
  return `IF(OR(A${at}="",${isNoAnswer}),"",SUMPRODUCT((${plainName(runs)}=${plainName(`A${at}`)})*(ROW(${runs})-ROW(${first})+1)))`;
}

/**
 * What is said of a gate that was read open and is shut on the sheet Flow, or the other way: its leak is another one there. Else an empty
 * text. By the gates that Flow hands to SOLVE, not by its answer: LEAKGAINS, which is handed what rests on this, waits for no other function.
 */
function turned(frame: Frame, at: number): string {
  const name = plainName(`A${at}`);
  const isOpen = `ISNUMBER(FIND("; "&${name}&";","; "&${plainName(openRuns(frame))}&";"))`;
  const gates = plainName(runsColumn(frame, "Gate"));
  const hasGate = `SUMPRODUCT((${plainName(runsColumn(frame, "Run"))}=${name})*(${gates}<>"")*(${gates}<>"0"))>0`;
  const says = (found: string, now: string, when: string): string =>
    `IF(${when},"found ${found}, but ${now} on the sheet ${frame.sheet("flow")}","")`;
  const found = `LEFT(TRIM(${of("C")}),4)`;
  const shutNow = `AND(NOT(${isOpen}),${hasGate},LEFT(${openRuns(frame)},${TROUBLE.length})<>"${TROUBLE}")`;
  return `IFERROR(IF(A${at}="","",IF(${found}="shut",${says("shut", "open", isOpen)},IF(${found}="open",${says("open", "shut", shutNow)},""))),"")`;
}

/**
 * The suction as typed or, left blank, as SOLVE has it; the one to compare at, and where that comes from. SOLVE's is taken where it has a run
 * of that name whose gate stands as the leak was found.
 */
function suctions(frame: Frame, at: number) {
  const turned = `${TURNED}${at}`;
  const suction = of("D");
  const hasRun = `COUNTIF(${FLOW_PLACE}${at},">0")=1`;
  const solved = `IF(${hasRun},INDEX(${flowColumn(frame, "staticSuction")},${FLOW_PLACE}${at}),"")`;
  const ofFlow = `IF(AND(${suction}="",${turned}=""),IF(ISNUMBER(${solved}),IF(${solved}>0,${solved},""),""),"")`;
  const typed = `IF(COUNT(${suction})=0,${ofFlow},IF(${suction}>0,${suction},""))`;
  const flow = frame.sheet("flow");
  const cell = `"D"&ROW(${suction})`;
  const missing = `IF(${suction}="","type the suction in "&${cell}&IF(${turned}="","",": "&${turned}),"check it: the suction must be a number above 0")`;
  const blown = `"sheet ${flow} has no suction there now: air is blown out of this run"`;
  const from = `IF(ISNUMBER(${solved}),IF(${suction}="","sheet ${flow}, as in column D left blank","sheet ${flow}, where the run has this name"),IF(${isNoAnswer},"as typed: ${flow} has no answer","as typed: sheet ${flow} gives none for this name"))`;
  return {
    typed,
    other: `IF(A${at}="","",IF(ISNUMBER(${solved}),${solved},${typed}))`,
    told: `IF(A${at}="","",IF(COUNT(K${at})=0,"",IF(${typed}="",${missing},IF(D${at}<0,${blown},${from}))))`,
  };
}

const speed = (frame: Frame, reading: string): string =>
  `IF(OR(COUNT(${reading})=0,COUNT(${MOST_CELL})=0),"",MAX(0.001,${reading}/${headArea(frame)}/${hours(frame)}))`;

/** How much larger than the leak that was read again the larger reading is: a reading strays more as it grows. */
const growth = (at: number): string => `MAX(1,MAX(K${at}:L${at})/${REPEATS_MEAN})`;

/** What chance alone makes of no change, as DIFFERENCE has it for single readings beside such repeats. */
const chance = (at: number): string =>
  `IF(COUNT(K${at}:L${at})<2,"",IF(${CHANCE_CELL}="","",${CHANCE_CELL}*${growth(at)}))`;

/** DIFFERENCE's readings needed of a change that was meant to go one way: 2 (1.6449 + 0.8416)² s² / change² + 1.6449² / 4. */
const needed = (at: number): string =>
  `IF(OR(COUNT(S${at})=0,COUNT(${SAVED}${at})=0),"",IF(OR(${SAVED}${at}<=0,${SAVED}${at}>S${at}),"",MAX(2,ROUNDUP(12.3651*(STDEV(${REPEATS_TYPED})*${growth(at)}/${SAVED}${at})^2+0.6764,0))))`;

/** What mending took for each unit of airflow saved, where more was saved than by chance. */
const paid = (at: number): string =>
  `IF(OR(COUNT(S${at})=0,COUNT(${SAVED}${at})=0),"",IF(COUNT(${of("G")})=0,"",IF(${SAVED}${at}>S${at},${of("G")}/${SAVED}${at},"")))`;

/** The leak of a gate that is worth mending; rounded, so that COUNTIF compares what it prints. */
const waits = (at: number): string =>
  `IF(OR(COUNT(K${at})=0,COUNT(R${at})=0),"",IF(${of("F")}<>"","",IF(K${at}<=R${at},"",ROUND(IF(COUNT(E${at})=1,E${at},K${at}),4))))`;

/** The place among those that wait, the largest leak first and the upper row before its equal. */
const order = (at: number): string =>
  `IF(X${at}="","",COUNTIF(${inWorked("X")},">"&X${at})+COUNTIF(X$${WORKED_FIRST}:X${at},X${at}))`;
