import { STANDARD_DENSITY } from "../../core/air/constants";
import { LEAK_SHARE, OTHER_AIR, RESIZE_RATIO } from "../../reference/noteLimits";
import { BETWEEN_NOTES } from "../../reference/noteWords";
import { type NoteKey, piecesOfNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { numberText, quotedText } from "../references";
import { metBefore } from "./metalCells";
import { inWords } from "./words";
import type { BudgetColumn, BudgetPlace } from "./blockNames";

/** BUDGET's note of a run, word for word. Each part brings what stands between notes before it, and the first of these is cut off. */
export function noteOf(place: BudgetPlace, system: UnitSystem, row: number): string {
  const at = (column: BudgetColumn): string => place.cell(column, row);
  const input = (column: BudgetColumn): string => `INDEX(${place.all(column)},${place.cell("source", row)})`;
  const isWanted = `COUNTIF(${place.all("toKey")},${input("key")})>0`;
  const inVain = `IF(${input("wanted")}>0,IF(${isWanted},${one("askedInVain")},""),"")`;
  const isPart = `${place.scalar("part")}=1`;
  const times = input("hoseTimes");
  const hose = `IF(AND(${input("hose")}>0,${times}>1),${one("hoseLies", { times: `IF(${times}>=10,ROUND(${times},0),ROUND(${times},1))` })},"")`;
  const idle = `IF(OR(${input("hood")}>=0,${input("gate")}=1),${one("asksForNone")},${one("noneAsksThroughIt")})`;
  const alone = `IF(AND(${input("branchNamed")}>0,${input("branchAt")}=0),${one("branchAlone")},"")`;
  const still = `IF(${at("shut")}=1,${one("gateShut")},IF(${at("cut")}=1,${one("cutOff")},IF(${at("asked")}=0,${idle},${carrying(place, system, row)}&${hose}&${alone})))`;
  const leaves = `AND(${at("source")}=${place.scalar("exitRow")},${input("exitK")}>0)`;
  const blows = `IF(${at("leakThere")}>0,${one("blowsDustOut")},"")`;
  const known = `${inVain}&${blows}&${hose}&${alone}&IF(${leaves},${one("exitNamed")},"")`;
  const discharge = `IF(${isPart},${blows}&${waits(outWaits(place))},${known})`;
  const metal = `IF(${at("met")}>${metBefore(place, row)},IF(${at("met")}=2,${one("metalWithWood")},${one("likelyMetal")}),"")`;
  const path = at("pathWaits");
  const gone = `IF(${path}<0,${waits(input("gone"))},${waits(labelOf(place, path))})`;
  const suction = `${inVain}&${still}&${metal}&IF(${path}=0,"",${gone})`;
  return `IF(${at("sideThere")}=0,"",MID(IF(${at("sideThere")}=1,${suction},${discharge}),${BETWEEN_NOTES.length + 1},999))`;
}

const waits = (what: string): string => one("waits", { what });

/** A row as others name it. */
const labelOf = (place: BudgetPlace, row: string): string => `INDEX(${place.all("label")},${row})`;

/** What all that comes after the fan waits for. */
function outWaits(place: Pick<BudgetPlace, "all" | "scalar">): string {
  const row = place.scalar("outWaits");
  return `IF(${row}<0,${noteFormula("waitsForLast")},INDEX(${place.all("label")},${row}))`;
}

function carrying(place: BudgetPlace, system: UnitSystem, row: number): string {
  const at = (column: BudgetColumn): string => place.cell(column, row);
  const input = (column: BudgetColumn): string => `INDEX(${place.all(column)},${place.cell("source", row)})`;
  const said = (column: BudgetColumn): string => inWords(input(column), "velocity", system);
  const percent = (share: string): string => `ROUND(${share}*100,0)`;
  const settles = one("settles", { dust: input("dustKey"), velocity: said("dustLow") });
  const fast = one("tooFast", { velocity: said("dustHigh") });
  const speed = `IF(${at("velocity")}<${input("dustLow")},${settles},IF(${input("dustHigh")}>0,IF(${at("velocity")}>${input("dustHigh")},${fast},""),""))`;
  const narrow = one("resize", { percent: percent(`(1-1/${at("ratio")})`) });
  const branchBeside = `COUNTIFS(${place.all("toKey")},${input("toKey")},${place.all("mayBranch")},1)>0`;
  const passes = `IF(${at("next")}<0,${branchBeside},${at("bears")}=1)`;
  const straight = `IF(${input("branchAt")}=0,IF(${passes},${one("straightOn")},""),"")`;
  const resize = `IF(${at("next")}<0,"",IF(${at("ratio")}>${RESIZE_RATIO},${narrow},""))`;
  const leaky = one("leaky", { percent: percent(`${at("leak")}/${at("flow")}`) });
  const leak = `IF(${at("leak")}>${LEAK_SHARE}*${at("flow")},${leaky},"")`;
  return `${speed}&${resize}&${leak}&${straight}`;
}

/** BUDGET's note of the fan, as a formula on any sheet. */
export function fanNote(place: BudgetPlace, system: UnitSystem): string {
  const scalar = place.onOtherSheets.scalar;
  const asked = `(${scalar("fanSuction")}+${scalar("dischargeLoss")})`;
  const said = (value: string): string => inWords(value, "pressure", system);
  const air = inWords(scalar("fanAirflow"), "airflow", system);
  const words = noteFormula("fanAsked", { airflow: air, pressure: said(asked) });
  const standard = numberText(STANDARD_DENSITY);
  const thinner = noteFormula("otherAir", { pressure: said(`${asked}*${standard}/${scalar("density")}`) });
  const otherAir = `IF(ABS(${scalar("density")}/${standard}-1)<${OTHER_AIR},"",${thinner})`;
  const waiting = noteFormula("waits", { what: outWaits(place.onOtherSheets) });
  return `IF(${scalar("part")}=1,${waiting},IF(${scalar("fanAirflow")}=0,${noteFormula("noneAsks")},${words}&${otherAir}))`;
}

/** A note as the text of a formula, its values as formulas; with what stands before it. */
export function noteFormula(key: NoteKey, values: Readonly<Record<string, string>> = {}, before = ""): string {
  const pieces: string[] = [];
  let words = before;
  for (const piece of piecesOfNote(key)) {
    if ("words" in piece) {
      words += piece.words;
      continue;
    }
    if (words !== "") pieces.push(quotedText(words));
    pieces.push(values[piece.value]!);
    words = "";
  }
  return [...pieces, ...(words === "" ? [] : [quotedText(words)])].join("&");
}

/** One note of a run behind those before it. */
export const one = (key: NoteKey, values: Readonly<Record<string, string>> = {}): string =>
  noteFormula(key, values, BETWEEN_NOTES);
