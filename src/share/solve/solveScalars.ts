import { STANDARD_DENSITY } from "../../core/air/constants";
import type { BudgetPlace } from "../budget/blockNames";
import type { BlockScalar } from "../budget/block";
import { quotedText } from "../references";
import { num } from "../translate/expressions/text";
import { closingCells, pressureOfFan } from "./closing";
import type { CurveInSI } from "./curveInSI";
import { leftOfList, openList, openText } from "./openGates";
import { type SolvePlace, type SolveScalar, solveScalarNames, type solveScalars, SWEEPS } from "./solveNames";

const PROMISED = "0.000000001"; // relative misfit that an answer may have, as the function promises

/** The single numbers of a solved network, those that close its sweeps among them. */
export function scalarCells(
  place: SolvePlace,
  budget: BudgetPlace,
  curve: CurveInSI,
  open: string | null,
  hasGates: boolean,
): BlockScalar<SolveScalar>[] {
  const { scalar, all, cell, rows } = place;
  const end = `fanAirflow${SWEEPS}` as const;
  const suction = `fanSuction${SWEEPS}` as const;
  const checked = `loss${SWEEPS + 1}` as const;
  const atFan = `SUMIF(${budget.all("next")},0,${all("perVelocity")})*${scalar(end)}^2`;
  const after = `SUMIF(${budget.all("sideThere")},2,${all(checked)})`;
  const missed = `MAX(MAX(${all("missed")}),IF(${scalar("lastKind")}=0,0,ABS(${scalar("fanPressure")}-(${after})-${scalar(suction)})))`;
  const known: Record<(typeof solveScalars)[number], readonly [heading: string, formula: string]> = {
    open: ["Open gates, to compare", openText(open)],
    list: ["one by one", openList(place, budget)],
    left: ["of them no run", leftOfList(cell("rest", rows))],
    thickness: ["Density over standard", `${budget.scalar("density")}/${num(STANDARD_DENSITY)}`],
    shutOff: ["Fan at its least airflow (Pa)", `INDEX(${curve.pressures},1)*${scalar("thickness")}`],
    least: ["Least airflow of its curve (m³/s)", `INDEX(${curve.airflows},1)`],
    most: ["Most", `INDEX(${curve.airflows},${curve.rows})`],
    humped: ["1: its curve rises somewhere", `MAX(${curve.rises})`],
    smallest: ["Smallest loss (Pa)", `0.000000000000000001*${scalar("shutOff")}`],
    openArea: ["Area of the open ends (m²)", `SUMIF(${all("kind")},2,${budget.all("area")})`],
    lastKind: ["Air enters the last run so", `SUMIF(${budget.all("next")},0,${all("kind")})`],
    leaks: ["All leaks (m³/s)", `SUM(${all(`leak${SWEEPS}`)})`],
    fanPressure: ["Fan static pressure (Pa)", pressureOfFan(place, SWEEPS)],
    misfit: ["Largest misfit of an equation, relative", `(${missed})/(ABS(${scalar(suction)})+${atFan})`],
    why: ["Why there is no answer", whyNot(place, budget, hasGates)],
    ok: ["1: solved", `IF(${scalar("why")}="",1,0)`],
  };
  const closed = Array.from({ length: SWEEPS }, (_, index) =>
    Object.entries(closingCells(place, budget, curve, index + 1)).map(
      ([name, single]) => [`${name}${index + 1}`, single] as const,
    ),
  ).flat();
  const singles = new Map<string, { readonly heading: string; readonly formula: string }>([
    ...Object.entries(known).map(([name, [heading, formula]]) => [name, { heading, formula }] as const),
    ["fanAirflow0", { heading: "First airflow of the fan (m³/s)", formula: `${scalar("most")}/2` }],
    ...closed,
  ]);
  return solveScalarNames.map((name) => ({ name, ...singles.get(name)! }));
}

/** The first reason that holds; an empty text where all is well. */
function whyNot(place: SolvePlace, budget: BudgetPlace, hasGates: boolean): string {
  const { scalar, all } = place;
  const end = scalar(`fanAirflow${SWEEPS}`);
  const density = budget.scalar("density");
  const wrong = (test: string): string => `IF(ISERROR(${test}),TRUE,${test})`;
  const notSettled = wrong(`${scalar("misfit")}>${PROMISED}`);
  const reasons: readonly (readonly [when: string, why: string])[] = [
    [`${budget.scalar("troubles")}>0`, "a row of the runs table cannot be computed"],
    [`${budget.scalar("ends")}<>1`, `one run must end at the fan: write "fan" into its column To`],
    [wrong(`OR(${density}<0.2,${density}>5)`), "the density is none of air"],
    ...(hasGates
      ? []
      : ([[`${scalar("open")}<>""`, "the table has no column Gate, so no gate can be opened"]] as const)),
    [`${scalar("left")}<>""`, "the list of open gates names a run that the table does not have"],
    [wrong(`MAX(${all("share")})>=1`), "a leak is as large as its duct"],
    [
      wrong(`${scalar("shutOff")}<=0`),
      "the fan's curve cannot be read: its heading and its rows must stay those of the day this copy was made",
    ],
    [
      `${scalar("humped")}=1`,
      "the fan's curve rises somewhere, and then the ducts may meet it more than once: only the function itself finds every point",
    ],
    [
      `AND(${scalar("lastKind")}=0,${scalar("least")}>0)`,
      "every end is shut, and the fan's curve does not begin at no airflow",
    ],
    [
      `AND(${notSettled},${wrong(`${end}>=${scalar("most")}*0.999999999`)})`,
      "the fan's curve ends before the ducts meet it",
    ],
    [
      `AND(${notSettled},${wrong(`${end}<=${scalar("least")}*1.000000001`)})`,
      "the fan's curve begins beyond what the ducts let through",
    ],
    [notSettled, `not settled after ${SWEEPS} sweeps`],
  ];
  return reasons.reduceRight((rest, [when, why]) => `IF(${when},${quotedText(why)},${rest})`, '""');
}
