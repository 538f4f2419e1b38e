import { STANDARD_DENSITY } from "../../core/air/constants";
import { LEAK_SHARE, OTHER_AIR, RESIZE_RATIO } from "../../reference/noteLimits";
import { type UnitSystem, unitOf } from "../../reference/quantities";
import { numberText } from "../references";
import type { Place } from "./inputCells";
import { inWords, over } from "./words";
import type { BudgetColumn } from "./blockNames";

/** BUDGET's note of a run, word for word. Each part brings a "; " before it, and the first is cut off. */
export function noteOf(place: Place, system: UnitSystem, row: number): string {
  const at = (column: BudgetColumn): string => place.cell(column, row);
  const input = (column: BudgetColumn): string => `INDEX(${place.all(column)},${place.cell("source", row)})`;
  const isWanted = `COUNTIF(${place.all("toKey")},${input("key")})>0`;
  const inVain = `IF(${input("wanted")}>0,IF(${isWanted},"; the airflow typed here is not used: what joins it adds up",""),"")`;
  const idle = `IF(OR(${input("hood")}>=0,${input("gate")}=1),"; no airflow is asked for here","; no open hood asks for air through it")`;
  const still = `IF(${at("shut")}=1,"; gate shut: only its leak flows",IF(${at("cut")}=1,"; a shut gate cuts it off",IF(${at("asked")}=0,${idle},${carrying(place, system, row)})))`;
  const discharge = `IF(${at("leakThere")}>0,"; a leak on the discharge side blows dust out and is not counted","")`;
  return `IF(${at("sideThere")}=0,"",MID(${inVain}&IF(${at("sideThere")}=1,${still},${discharge}),3,999))`;
}

function carrying(place: Place, system: UnitSystem, row: number): string {
  const at = (column: BudgetColumn): string => place.cell(column, row);
  const input = (column: BudgetColumn): string => `INDEX(${place.all(column)},${place.cell("source", row)})`;
  const unit = unitOf("velocity", system);
  const said = (column: BudgetColumn): string => inWords(`(${over(input(column), unit.factor)})`, unit.label);
  const settles = `"; dust settles: "&CHAR(34)&${input("dustKey")}&CHAR(34)&" needs "&${said("dustLow")}`;
  const fast = `"; too fast: over "&${said("dustHigh")}&" only costs pressure and wears the duct"`;
  const speed = `IF(${at("velocity")}<${input("dustLow")},${settles},IF(${input("dustHigh")}>0,IF(${at("velocity")}>${input("dustHigh")},${fast},""),""))`;
  const resize = `IF(${at("ratio")}>${RESIZE_RATIO},"; resize: its path needs "&ROUND((1-1/${at("ratio")})*100,0)&" % less suction than the junction has","")`;
  const leak = `IF(${at("leak")}>${LEAK_SHARE}*${at("flow")},"; its leak carries "&ROUND(${at("leak")}/${at("flow")}*100,0)&" % of its air","")`;
  return `${speed}&${resize}&${leak}`;
}

/** BUDGET's note of the fan, as a formula on any sheet. */
export function fanNote(place: Place, system: UnitSystem): string {
  const scalar = place.onOtherSheets.scalar;
  const [airflow, pressure] = [unitOf("airflow", system), unitOf("pressure", system)];
  const asked = `(${scalar("fanSuction")}+${scalar("dischargeLoss")})`;
  const said = (value: string): string => inWords(`(${over(value, pressure.factor)})`, pressure.label);
  const words = `"fan asked for: "&${inWords(`(${over(scalar("fanAirflow"), airflow.factor)})`, airflow.label)}&" at "&${said(asked)}&" fan static pressure"`;
  const standard = numberText(STANDARD_DENSITY);
  const otherAir = `IF(ABS(${scalar("density")}/${standard}-1)<${OTHER_AIR},""," in this air; on a curve for standard air look for "&${said(`${asked}*${standard}/${scalar("density")}`)})`;
  return `IF(${scalar("fanAirflow")}=0,"no open hood asks for air",${words}&${otherAir})`;
}
