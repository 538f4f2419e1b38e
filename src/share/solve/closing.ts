import type { BudgetPlace } from "../budget/blockNames";
import type { CurveInSI } from "./curveInSI";
import type { Closing, SolveColumn, SolvePlace } from "./solveNames";

interface Single {
  readonly heading: string;
  readonly formula: string;
}

/**
 * Where the ducts, straight as a sweep leaves them, meet the fan: the piece of its curve between two points, and on that cubic a
 * few Newton steps. What stands after the fan is taken off its pressure.
 */
export function closingCells(
  place: SolvePlace,
  budget: BudgetPlace,
  curve: CurveInSI,
  sweep: number,
): Readonly<Record<Closing, Single>> {
  const now = (name: Closing): string => place.scalar(`${name}${sweep}`);
  const last = place.scalar(`fanAirflow${sweep - 1}`);
  const thick = place.scalar("thickness");
  const atFan = (column: SolveColumn): string => `SUMIF(${budget.all("next")},0,${place.all(column)})`;
  const afterFan = (column: SolveColumn): string => `SUMIF(${budget.all("sideThere")},2,${place.all(column)})`;
  const still = (rest: string, formula: string): string => `IF(${place.scalar("lastKind")}=0,${rest},${formula})`;
  const asked = (airflow: string): string =>
    `${now("afterLoss")}+${now("afterSlope")}*(${airflow}-${last})+(${airflow}-${now("fanOffset")})/${now("fanRate")}`;
  const spare = `${curve.pressures}*${thick}-(${asked(curve.airflows)})>=0`;
  const at = (column: string, next = 0): string => `INDEX(${column},${now("piece")}${next === 0 ? "" : "+1"})`;
  const newton = (before: Closing): string => {
    const t = now(before);
    const [start, end, rise] = [now("slopeThere"), now("slopeNext"), now("rise")];
    const second = `(3*${rise}-2*${start}-${end})`;
    const third = `(${start}+${end}-2*${rise})`;
    const airflow = `(${now("from")}+${t}*${now("wide")})`;
    const surplus = `${now("high")}+${t}*(${start}+${t}*(${second}+${t}*${third}))-(${asked(airflow)})`;
    const slope = `${start}+${t}*(2*${second}+3*${t}*${third})-(${now("afterSlope")}+1/${now("fanRate")})*${now("wide")}`;
    return `MEDIAN(0,1,${t}-(${surplus})/(${slope}))`;
  };
  return {
    afterLoss: { heading: `Sweep ${sweep}: after the fan (Pa)`, formula: afterFan(`loss${sweep}`) },
    afterSlope: { heading: "its slope", formula: afterFan(`slope${sweep}`) },
    fanOffset: { heading: "Air of the ducts = this", formula: atFan(`offset${sweep}`) },
    fanRate: { heading: "+ this × suction at the fan", formula: still("1", atFan(`rate${sweep}`)) },
    piece: {
      heading: "Piece of the curve",
      formula: `MAX(1,MIN(${curve.count}-1,SUMPRODUCT(1*(${spare}))))`,
    },
    from: { heading: "from (m³/s)", formula: at(curve.airflows) },
    wide: { heading: "wide", formula: `${at(curve.airflows, 1)}-${now("from")}` },
    high: { heading: "high (Pa)", formula: `${at(curve.pressures)}*${thick}` },
    rise: { heading: "rise", formula: `${at(curve.pressures, 1)}*${thick}-${now("high")}` },
    slopeThere: { heading: "slope × width", formula: `${at(curve.slopes)}*${thick}*${now("wide")}` },
    slopeNext: { heading: "at its end", formula: `${at(curve.slopes, 1)}*${thick}*${now("wide")}` },
    share0: { heading: "Share of the piece", formula: `MEDIAN(0,1,(${last}-${now("from")})/${now("wide")})` },
    share1: { heading: "step 1", formula: newton("share0") },
    share2: { heading: "step 2", formula: newton("share1") },
    share3: { heading: "step 3", formula: newton("share2") },
    share4: { heading: "step 4", formula: newton("share3") },
    fanAirflow: {
      heading: "Airflow of the fan (m³/s)",
      formula: still("0", `${now("from")}+${now("share4")}*${now("wide")}`),
    },
    fanSuction: {
      heading: "Suction at the fan (Pa)",
      formula: still(place.scalar("shutOff"), `(${now("fanAirflow")}-${now("fanOffset")})/${now("fanRate")}`),
    },
  };
}

/** The fan's own pressure at the end of the last sweep. */
export function pressureOfFan(place: SolvePlace, sweep: number): string {
  const now = (name: Closing): string => place.scalar(`${name}${sweep}`);
  const [t, start, end, rise] = [now("share4"), now("slopeThere"), now("slopeNext"), now("rise")];
  const curve = `${now("high")}+${t}*(${start}+${t}*((3*${rise}-2*${start}-${end})+${t}*(${start}+${end}-2*${rise})))`;
  return `IF(${place.scalar("lastKind")}=0,${place.scalar("shutOff")},${curve})`;
}
