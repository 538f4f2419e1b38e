import { LAMINAR_END, LAMINAR_END_FACTOR, TURBULENT_START } from "../../core/friction/flowRegime";
import type { BudgetPlace } from "../budget/blockNames";
import { newton } from "../budget/frictionCells";
import { moreInSlowAir, slopeInSlowAir } from "../translate/expressions/slowAir";
import { num } from "../translate/expressions/text";
import { legLine, mainLine, throughSlope } from "./meetingCells";
import type { MeetingColumn, SolvePlace, StillColumn, SweepColumn } from "./solveNames";
import type { Column } from "./stillCells";

const FIRST_ROOT = "7"; // 1/sqrt(f) of a workshop's duct, near enough

/** A first state: the airflow shared over the open ends by their area, and every leak at half of the fan's pressure. */
export function startCells(
  place: SolvePlace,
  budget: BudgetPlace,
): Readonly<Record<"pipeRoot" | "hoseRoot" | "arriving" | "leak" | "airflow", Column>> {
  const at = place.cell;
  const half = `${place.scalar("shutOff")}/2`;
  const joined = (row: number): string =>
    `SUMIF(${budget.above("next", row)},${budget.cell("own", row)},${place.above("airflow0", row)})`;
  const shared = (row: number): string =>
    `${place.scalar("most")}/2*${budget.cell("area", row)}/${place.scalar("openArea")}`;
  return {
    pipeRoot: { heading: "Pipe: 1/√f", formula: () => FIRST_ROOT },
    hoseRoot: { heading: "Hose: 1/√f", formula: () => FIRST_ROOT },
    arriving: {
      heading: "Arriving (m³/s)",
      formula: (row) => `IF(${at("kind", row)}=2,${shared(row)},IF(${at("kind", row)}=1,${joined(row)},0))`,
    },
    leak: {
      heading: "Leak (m³/s)",
      formula: (row) =>
        `IF(${at("kind", row)}=0,0,IF(${at("kind", row)}=3,SQRT(${half}/${at("end", row)}),SQRT(${half}/${at("perVelocity", row)})*${at("share", row)}))`,
    },
    airflow: {
      heading: "Airflow (m³/s)",
      formula: (row) =>
        `IF(${budget.cell("sideThere", row)}=2,${place.scalar("fanAirflow0")},${at("arriving0", row)}+${at("leak0", row)})`,
    },
  };
}

/** A run's losses at the airflow that the sweep before has left; the check after the last sweep has no slopes. */
export function lossCells(
  place: SolvePlace,
  sweep: number,
): Readonly<
  Record<"pipeRoot" | "hoseRoot" | "pipeLoss" | "hoseLoss" | "pipeSlope" | "hoseSlope" | "loss" | "slope", Column>
> {
  const at = place.cell;
  const before = (column: SweepColumn, row: number): string => at(`${column}${sweep - 1}`, row);
  const now = (column: SweepColumn, row: number): string => at(`${column}${sweep}`, row);
  const flow = (row: number): string => `ABS(${before("airflow", row)})`;
  const reynolds = (row: number): string => `(${at("perReynolds", row)}*${flow(row)})`;
  const straight = (of: "pipe" | "hose", row: number) => ({
    resistance: at(of, row),
    wall: at(`${of}Wall`, row),
    last: before(`${of}Root`, row),
    root: now(`${of}Root`, row),
    band: bandRise(at(`${of}Band3` as StillColumn, row)),
  });
  const root = (of: "pipe" | "hose") => (row: number) => {
    const { resistance, wall, last } = straight(of, row);
    const still = `OR(${resistance}=0,${reynolds(row)}<${TURBULENT_START})`;
    return `IF(${still},${last},${newton(wall, reynolds(row), last)})`;
  };
  const loss = (of: "pipe" | "hose") => (row: number) => {
    const [{ resistance, root: x, band }, re, q] = [straight(of, row), reynolds(row), flow(row)];
    const layers = `64/${at("perReynolds", row)}*${q}`;
    const between = `(${num(LAMINAR_END_FACTOR)}+${band}*(${re}-${LAMINAR_END}))*${q}^2`;
    return `IF(${resistance}=0,0,${resistance}*${byRegime(re, layers, between, `${q}^2/${x}^2`)})`;
  };
  const slope = (of: "pipe" | "hose") => (row: number) => {
    const [{ resistance, wall, root: x, band }, re, q] = [straight(of, row), reynolds(row), flow(row)];
    const between = `${q}*(2*(${num(LAMINAR_END_FACTOR)}+${band}*(${re}-${LAMINAR_END}))+${band}*${re})`;
    const s = `(2/LN(10)*2.51/${re}/(${wall}+2.51/${re}*${x}))`;
    const turbulent = `${q}/${x}^2*(2-2*${s}/(1+${s}))`;
    return `IF(${resistance}=0,0,${resistance}*${byRegime(re, `64/${at("perReynolds", row)}`, between, turbulent)})`;
  };
  const slower = (row: number, formula: string): string =>
    `IF(${at("mitres", row)}=0,0,${at("mitres", row)}*${formula})`;
  const device = (row: number, formula: string): string =>
    `IF(AND(${at("deviceFactor", row)}>0,${flow(row)}>0),${at("deviceFactor", row)}*${formula},0)`;
  return {
    pipeRoot: { heading: `Sweep ${sweep}: pipe 1/√f`, formula: root("pipe") },
    hoseRoot: { heading: "hose 1/√f", formula: root("hose") },
    pipeLoss: { heading: "pipe (Pa)", formula: loss("pipe") },
    hoseLoss: { heading: "hose (Pa)", formula: loss("hose") },
    pipeSlope: { heading: "pipe (Pa s/m³)", formula: slope("pipe") },
    hoseSlope: { heading: "hose (Pa s/m³)", formula: slope("hose") },
    loss: {
      heading: "Loss (Pa)",
      formula: (row) => {
        const [q, n] = [flow(row), at("deviceExponent", row)];
        const mitres = slower(row, `${q}^2*${moreInSlowAir(reynolds(row))}`);
        const all = `${at("fixed", row)}*${q}^2+${mitres}+${device(row, `${q}^${n}`)}+${now("pipeLoss", row)}+${now("hoseLoss", row)}`;
        return `IF(${before("airflow", row)}<0,0-1,1)*(${all})`;
      },
    },
    slope: {
      heading: "its slope (Pa s/m³)",
      formula: (row) => {
        const [q, n] = [flow(row), at("deviceExponent", row)];
        const mitres = slower(
          row,
          `${q}*(2*${moreInSlowAir(reynolds(row))}+${reynolds(row)}*${slopeInSlowAir(reynolds(row))})`,
        );
        return `2*${at("fixed", row)}*${q}+${mitres}+${device(row, `MAX(${n},1)*${q}^(${n}-1)`)}+${now("pipeSlope", row)}+${now("hoseSlope", row)}`;
      },
    },
  };
}

/** How much f rises with the Reynolds number between layers and turbulence. */
const bandRise = (root: string): string =>
  `((1/${root}^2-${num(LAMINAR_END_FACTOR)})/${TURBULENT_START - LAMINAR_END})`;

const byRegime = (reynolds: string, layers: string, between: string, turbulent: string): string =>
  `IF(${reynolds}<=${LAMINAR_END},${layers},IF(${reynolds}<${TURBULENT_START},${between},${turbulent}))`;

/**
 * To the fan: every law made straight at the state of the sweep before and eliminated, so that a run's airflow is known by the
 * suction at its downstream end. Then back from the fan: each run's suction and flows. The core's `sweep.ts` says why.
 */
export function walkCells(
  place: SolvePlace,
  budget: BudgetPlace,
  sweep: number,
): Readonly<Record<Exclude<SweepColumn, MeetingColumn | keyof ReturnType<typeof lossCells>>, Column>> {
  const at = place.cell;
  const before = (column: SweepColumn, row: number): string => at(`${column}${sweep - 1}`, row);
  const now = (column: SweepColumn, row: number): string => at(`${column}${sweep}`, row);
  const kind = (row: number): string => at("kind", row);
  const smallest = place.scalar("smallest");
  const joined = (column: "offset" | "rate", row: number): string =>
    `SUMIF(${budget.above("next", row)},${budget.cell("own", row)},${place.above(`${column}${sweep}`, row)})`;
  const atEnd = (column: "arriving" | "leak", row: number) => {
    const [r, q] = [at("end", row), before(column, row)];
    const slope = `MAX(2*${r}*ABS(${q}),2*SQRT(${r}*${smallest}))`;
    return { offset: `${q}-${r}*${q}*ABS(${q})/${slope}`, rate: `1/${slope}` };
  };
  const opening = (row: number): string => `(${at("perVelocity", row)}/${at("share", row)}^2)`;
  const leaksBeside = (row: number): string => `AND(${at("share", row)}>0,OR(${kind(row)}=1,${kind(row)}=2))`;
  /**
   * Between the leak that the sweep before has left and the one that its suction would drive: from far above its answer a square
   * law alone comes nearer by a half in each sweep, which is slow where the air of a branch all but stands.
   */
  const leakNear = (row: number): string => {
    const drive = `(${before("suction", row)}+${at("perVelocity", row)}*${before("airflow", row)}^2)`;
    const leak = `ABS(${before("leak", row)})`;
    return `IF(${drive}<0,0-1,1)*MAX(${leak}/4,SQRT(${leak}*SQRT(ABS(${drive})/${opening(row)})))`;
  };
  const moves = (row: number, formula: string): string => `IF(${kind(row)}=0,0,${formula})`;
  const entering = (row: number): string => `(${now("arrivingOffset", row)}+${now("leakOffset", row)})`;
  const perSuction = (row: number): string =>
    `(${now("leakBase", row)}+(1+${now("leakTimes", row)})*${now("arrivingRate", row)})`;
  const downstream = (row: number): string =>
    `IF(${at("joins", row)}=0,${place.scalar(`fanSuction${sweep}`)},INDEX(${place.below(`suction${sweep}`, row)},${at("joins", row)}))`;
  return {
    arrivingOffset: {
      heading: "Arriving = this",
      formula: (row) =>
        `IF(${kind(row)}=2,${atEnd("arriving", row).offset},IF(${at("hasMeeting", row)}=1,${mainLine(place, budget, sweep, row).offset},IF(${kind(row)}=1,${joined("offset", row)},0)))`,
    },
    arrivingRate: {
      heading: "+ this × suction",
      formula: (row) =>
        `IF(${kind(row)}=2,${atEnd("arriving", row).rate},IF(${at("hasMeeting", row)}=1,${mainLine(place, budget, sweep, row).rate},IF(${kind(row)}=1,${joined("rate", row)},0)))`,
    },
    leakAt: {
      heading: "Leak made straight at (m³/s)",
      formula: (row) => (sweep === 1 ? before("leak", row) : `IF(${leaksBeside(row)},${leakNear(row)},0)`),
    },
    own: {
      heading: "its slope",
      formula: (row) =>
        `IF(${leaksBeside(row)},MAX(2*${opening(row)}*ABS(${now("leakAt", row)}),2*SQRT(${opening(row)}*${smallest})),0)`,
    },
    coupling: {
      heading: "by the duct's air",
      formula: (row) => {
        const coupled = `2*${at("perVelocity", row)}*${before("airflow", row)}`;
        return `IF(AND(${before("airflow", row)}>0,${coupled}<0.99*${now("own", row)}),${coupled},0)`;
      },
    },
    leakOffset: {
      heading: "Leak = this",
      formula: (row) => {
        const [q, s, l] = [before("airflow", row), before("arriving", row), before("leak", row)];
        const [near, own, coupling] = [now("leakAt", row), now("own", row), now("coupling", row)];
        const drive = `${at("perVelocity", row)}*${q}^2-${opening(row)}*${near}*ABS(${near})`;
        const beside = `(${own}*${near}+${drive}+${coupling}*(${now("arrivingOffset", row)}-${s}-${l}))/(${own}-${coupling})`;
        return `IF(${kind(row)}=3,${atEnd("leak", row).offset},IF(${leaksBeside(row)},${beside},0))`;
      },
    },
    leakBase: {
      heading: "Leak: × suction",
      formula: (row) =>
        `IF(${kind(row)}=3,${atEnd("leak", row).rate},IF(${leaksBeside(row)},1/(${now("own", row)}-${now("coupling", row)}),0))`,
    },
    leakTimes: {
      heading: "+ this × what arrives by it",
      formula: (row) =>
        `IF(${leaksBeside(row)},${now("coupling", row)}/(${now("own", row)}-${now("coupling", row)}),0)`,
    },
    rate: {
      heading: "Airflow: × suction downstream",
      formula: (row) => moves(row, throughSlope(place, sweep, now("slope", row), row)),
    },
    flowOffset: {
      heading: "Airflow = this",
      formula: (row) =>
        `IF(${at("isLeg", row)}=1,${moves(row, legLine(place, sweep, row).offset)},${now("offset", row)})`,
    },
    flowRate: {
      heading: "+ this × suction downstream",
      formula: (row) => `IF(${at("isLeg", row)}=1,${moves(row, legLine(place, sweep, row).rate)},${now("rate", row)})`,
    },
    offset: {
      heading: "+ this",
      formula: (row) =>
        moves(
          row,
          `${entering(row)}-${now("rate", row)}*(${now("loss", row)}+${now("slope", row)}*(${entering(row)}-${before("airflow", row)}))`,
        ),
    },
    down: {
      heading: "Suction downstream (Pa)",
      formula: (row) => `IF(${budget.cell("sideThere", row)}<>1,0,${downstream(row)})`,
    },
    airflow: {
      heading: "Airflow (m³/s)",
      formula: (row) =>
        `IF(${budget.cell("sideThere", row)}=2,${place.scalar(`fanAirflow${sweep}`)},${now("flowOffset", row)}+${now("flowRate", row)}*${now("down", row)})`,
    },
    suction: {
      heading: "Suction at its start (Pa)",
      formula: (row) =>
        `IF(${budget.cell("sideThere", row)}<>1,0,IF(${kind(row)}=0,IF(${at("cut", row)}=1,0,${downstream(row)}),(${now("flowOffset", row)}+${now("flowRate", row)}*${downstream(row)}-${entering(row)})/${perSuction(row)}))`,
    },
    arriving: {
      heading: "Arriving (m³/s)",
      formula: (row) => moves(row, `${now("arrivingOffset", row)}+${now("arrivingRate", row)}*${now("suction", row)}`),
    },
    leak: {
      heading: "Leak (m³/s)",
      formula: (row) =>
        moves(
          row,
          `${now("leakOffset", row)}+(${now("leakBase", row)}+${now("leakTimes", row)}*${now("arrivingRate", row)})*${now("suction", row)}`,
        ),
    },
  };
}
