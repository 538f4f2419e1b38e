import { ENOUGH_AIR, LEAK_SHARE } from "../../reference/noteLimits";
import { BETWEEN_NOTES, BLOWS_OUT } from "../../reference/noteWords";
import type { UnitSystem } from "../../reference/quantities";
import type { BudgetPlace, InputColumn } from "../budget/blockNames";
import { noteFormula, one } from "../budget/noteCells";
import { inWords } from "../budget/words";
import { type SolvePlace, SWEEPS } from "./solveNames";

/** SOLVE's note of a run, word for word, in the order of the flow. */
export function noteOfRun(place: SolvePlace, budget: BudgetPlace, system: UnitSystem, row: number): string {
  const input = (column: InputColumn): string => `INDEX(${budget.all(column)},${budget.cell("source", row)})`;
  const [airflow, leak, kind] = [
    place.cell(`airflow${SWEEPS}`, row),
    place.cell(`leak${SWEEPS}`, row),
    place.cell("kind", row),
  ];
  const velocity = `${airflow}/${budget.cell("area", row)}`;
  const said = (column: "dustLow" | "dustHigh"): string => inWords(input(column), "velocity", system);
  const settles = one("settles", { dust: input("dustKey"), velocity: said("dustLow") });
  const fast = one("tooFast", { velocity: said("dustHigh") });
  const speed = `IF(${velocity}<${input("dustLow")},${settles},IF(${input("dustHigh")}>0,IF(${velocity}>${input("dustHigh")},${fast},""),""))`;
  const atHood = `(${airflow}-${leak})`;
  const wanted = input("wanted");
  const percent = `${atHood}/${wanted}*100`;
  const short = one("short", {
    share: `IF(ROUND(${percent},0)<0,"${BLOWS_OUT}",ROUND(${percent},0)&" %")`,
    airflow: inWords(wanted, "airflow", system),
  });
  const isShort = `AND(${kind}=2,${wanted}>0,${atHood}<${ENOUGH_AIR}*${wanted})`;
  const leaky = one("leaky", { percent: `ROUND(${leak}/${airflow}*100,0)` });
  const flowing = `${speed}&IF(${isShort},${short},"")&IF(AND(${airflow}>0,${leak}>${LEAK_SHARE}*${airflow}),${leaky},"")`;
  const still = `IF(${airflow}>0,${one("onlyLeaksFlow")},${one("nothingFlows")})`;
  const says = `IF(${place.cell("shut", row)}=1,${one("gateShut")},IF(${place.cell("cut", row)}=1,${one("cutOff")},IF(${place.cell("fed", row)}=0,${still},${flowing})))`;
  const side = budget.cell("sideThere", row);
  const blows = `IF(${side}=2,IF(${budget.cell("leakThere", row)}>0,${noteFormula("blowsDustOut")},""),"")`;
  return `IF(${side}=1,MID(${says},${BETWEEN_NOTES.length + 1},999),${blows})`;
}

/** SOLVE's note of the fan, as a formula on any sheet. */
export function noteOfFan(place: SolvePlace): string {
  const { scalar } = place.onOtherSheets;
  const airflow = scalar(`fanAirflow${SWEEPS}`);
  const share = `(${scalar("leaks")}/${airflow}*100)`;
  const lost = noteFormula("lost", { percent: `IF(${share}>0,ROUND(${share},2-INT(LOG(${share}))),0)` });
  return `IF(${airflow}=0,${noteFormula("allShut")},IF(${scalar("leaks")}=0,${noteFormula("noLeak")},${lost}))`;
}
