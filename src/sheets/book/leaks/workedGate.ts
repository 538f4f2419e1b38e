import { formula } from "../../cells";
import type { SheetCell } from "../../workbook";
import type { Frame } from "../frame";
import { formatOf } from "../parts/units";
import {
  CHANCE_CELL,
  flowColumn,
  inWorked,
  MOST_CELL,
  REPEATS_MEAN,
  REPEATS_TYPED,
  UNIT_LEAK_CELL,
  WORKED_FIRST,
} from "./layout";
import { headArea, hours } from "./meter";

/** The row of one gate; what the functions answer over whole columns is not written here. */
export function workedGate(frame: Frame, log: number, at: number): SheetCell[] {
  const leak = { format: formatOf(frame, "leak") };
  const pressure = { format: formatOf(frame, "pressure") };
  const cell = (letter: string, code: string, extra: { format?: string } = {}): SheetCell =>
    formula(`${letter}${at}`, `=${code}`, "result", extra);
  const area = { format: frame.units === "SI" ? "#,##0" : "0.00" };
  const { typed, other, told } = suctions(frame, log, at);
  const elsewhere = (leakage: string, read: string, there: string): string =>
    `IF(OR(COUNT(${leakage}${at})=0,COUNT(${read}${at})=0,COUNT(${there}${at})=0),"",IF(${there}${at}<0,"",${leakage}${at}*SQRT(${there}${at}/${read}${at})))`;
  const opening = (leakage: string, read: string): string =>
    `IF(OR(COUNT(${leakage}${at})=0,COUNT(${read}${at})=0),"",${leakage}${at}/(${UNIT_LEAK_CELL}*SQRT(${read}${at})))`;
  return [
    cell("A", `A${log}&""`),
    cell("B", order(at), { format: "0" }),
    cell("C", `IF(OR(COUNT(W${at})=0,COUNT(Y${at})=0),"",Y${at}*SQRT(W${at}))`, leak),
    cell("D", other, pressure),
    cell("E", elsewhere("K", "M", "O"), leak),
    cell("F", elsewhere("L", "N", "P"), leak),
    cell("G", opening("K", "M"), area),
    cell("H", opening("L", "N"), area),
    cell("I", paid(log, at), { format: "0.00" }),
    cell("J", `IF(ISERROR(Y${at}),${UNKNOWN_CONDITION},${told})`),
    cell("K", sound(log, "E"), leak),
    cell("L", sound(log, "F"), leak),
    cell("M", `IF(K${at}="","",${typed})`, pressure),
    cell("N", `IF(L${at}="","",${typed})`, pressure),
    cell("O", `IF(OR(K${at}="",${typed}=""),"",D${at})`, pressure),
    cell("P", `IF(OR(L${at}="",${typed}=""),"",D${at})`, pressure),
    cell("Q", speed(frame, `K${at}`), { format: formatOf(frame, "velocity") }),
    cell("S", chance(at), leak),
    cell("T", needed(log, at), { format: "0" }),
    cell("U", `IF(COUNT(V${at})=0,"",C${log}&"")`),
    cell("V", `IF(OR(C${log}="",COUNT(B${log})=0),"",IF(B${log}>0,B${log},""))`),
    cell("W", `IF(COUNT(V${at})=0,"",${typed})`, pressure),
    cell("X", waits(log, at), leak),
  ];
}

const UNKNOWN_CONDITION = '"check it: the condition is no name of the table gates, so there is no estimate"';

/** A reading as the functions may have it: a number, at least 0, within what the meter reads, of a gate with a name. */
function sound(log: number, letter: "E" | "F"): string {
  const reading = `${letter}${log}`;
  const beyond = `AND(COUNT(${MOST_CELL})=1,${reading}>${MOST_CELL})`;
  return `IF(OR(A${log}="",COUNT(${reading})=0),"",IF(OR(${reading}<0,${beyond}),"",${reading}))`;
}

/** The suction as typed or, left blank, as SOLVE has it; the one to compare at, and where that comes from. SOLVE's is taken where it has a run of that name. */
function suctions(frame: Frame, log: number, at: number) {
  const place = `MATCH(A${log}&"",${flowColumn(frame, "run")},0)`;
  const solved = `INDEX(${flowColumn(frame, "staticSuction")},${place})`;
  const ofFlow = `IF(D${log}="",IF(ISNUMBER(${solved}),IF(${solved}>0,${solved},""),""),"")`;
  const typed = `IF(COUNT(D${log})=0,${ofFlow},IF(D${log}>0,D${log},""))`;
  const flow = frame.sheet("flow");
  const missing = `IF(D${log}="","type the suction in D${log}","check it: the suction must be a number above 0")`;
  const blown = `"sheet ${flow} has no suction there now: air is blown out of this run"`;
  const from = `IF(ISNUMBER(${solved}),IF(D${log}="","sheet ${flow}, as in column D left blank","sheet ${flow}, where the run has this name"),"as typed: sheet ${flow} gives none for this name")`;
  return {
    typed,
    other: `IF(A${log}="","",IF(ISNUMBER(${solved}),${solved},${typed}))`,
    told: `IF(OR(A${log}="",COUNT(K${at})=0),"",IF(${typed}="",${missing},IF(D${at}<0,${blown},${from})))`,
  };
}

const speed = (frame: Frame, reading: string): string =>
  `IF(OR(COUNT(${reading})=0,COUNT(${MOST_CELL})=0),"",MAX(0.001,${reading}/${headArea(frame)}/${hours(frame)}))`;

/** How much larger than the leak that was read again the larger reading is: a reading strays more as it grows. */
const growth = (at: number): string => `MAX(1,MAX(K${at}:L${at})/${REPEATS_MEAN})`;

/** What chance alone makes of no change, as DIFFERENCE has it for single readings beside such repeats. */
const chance = (at: number): string =>
  `IF(OR(COUNT(K${at}:L${at})<2,COUNT(${CHANCE_CELL})=0),"",${CHANCE_CELL}*${growth(at)})`;

/** DIFFERENCE's readings needed of a change that was meant to go one way: 2 (1.6449 + 0.8416)² s² / change² + 1.6449² / 4. */
const needed = (log: number, at: number): string =>
  `IF(OR(COUNT(S${at})=0,COUNT(I${log})=0),"",IF(OR(I${log}<=0,I${log}>S${at}),"",MAX(2,ROUNDUP(12.3651*(STDEV(${REPEATS_TYPED})*${growth(at)}/I${log})^2+0.6764,0))))`;

/** What mending took for each unit of airflow saved, where more was saved than by chance. */
const paid = (log: number, at: number): string =>
  `IF(OR(COUNT(G${log})=0,COUNT(S${at})=0,COUNT(I${log})=0),"",IF(I${log}>S${at},G${log}/I${log},""))`;

/** The leak of a gate that is worth mending; rounded, so that COUNTIF compares what it prints. */
const waits = (log: number, at: number): string =>
  `IF(OR(COUNT(K${at})=0,F${log}<>"",COUNT(R${at})=0),"",IF(K${at}<=R${at},"",ROUND(IF(COUNT(E${at})=1,E${at},K${at}),4)))`;

/** The place among those that wait, the largest leak first and the upper row before its equal. */
const order = (at: number): string =>
  `IF(X${at}="","",COUNTIF(${inWorked("X")},">"&X${at})+COUNTIF(X$${WORKED_FIRST}:X${at},X${at}))`;
