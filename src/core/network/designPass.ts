import { velocityPressure } from "../air/velocityPressure";
import { ownLeak } from "../leaks/ownLeak";
import { meanVelocity, sectionArea } from "../section/section";
import { dischargeLoss } from "./dischargeLoss";
import { idlePart } from "./idlePart";
import { lossesInto, type Meeting, meetingsOf } from "./junction/meeting";
import { cutOff, type Network, type Run } from "./network";
import { runLoss, type RunLoss } from "./runLoss";

/** A run's losses, where it carries air that a hood asked for. [Pa] */
interface RunCost extends RunLoss {
  readonly entry: number; // into the hood or open end
  readonly total: number; // entry + friction + fittings + device
  readonly toFan: number; // from the run's upstream end (a hood: from the open air) to the fan inlet; discharge: to the open air
}

/** What the pass finds for one run. Everything is SI. */
export interface RunBudget {
  /** idle: no open hood upstream of it asks for air; cut: a shut gate stands between it and the fan */
  readonly state: "asked" | "idle" | "shut" | "cut" | "discharge";
  readonly airflow: number; // [m3/s] leak included
  readonly velocity: number; // [m/s]
  readonly velocityPressure: number; // [Pa]
  readonly leak: number; // [m3/s] at its own upstream end
  readonly cost: RunCost | null; // null where the pass neglects losses
  readonly suctionAtEnd: number; // [Pa] total-pressure deficit at the downstream end
  readonly governs: boolean; // strongest path at its junction
  readonly junctionRatio: number | null; // [-] the junction's suction / this path's own
}

/** While the pass goes along, junctions write into the runs that join them. */
type Written<Part> = { -readonly [Key in keyof Part]: Part[Key] };
type WrittenBudget = Written<Omit<RunBudget, "cost">> & { cost: Written<RunCost> | null };

export interface SystemBudget {
  readonly runs: readonly RunBudget[];
  readonly airflow: number; // [m3/s] at the fan
  readonly suction: number; // [Pa] total-pressure deficit at the fan inlet
  readonly dischargeLoss: number; // [Pa]
  readonly staticPressure: number; // [Pa] fan static pressure asked for
  readonly leaks: number; // [m3/s] all leaks together
}

export interface Surroundings {
  readonly density: number; // [kg/m3]
  readonly hoseRoughness: number; // [m]
  readonly plainEnd: number; // [-] entry coefficient of a pipe end that names no hood
}

/**
 * The design pass: from the hoods towards the fan, each open hood gets the airflow it asks for.
 *
 * At a junction the joining path with the largest suction governs, and its suction is the upstream end's of the run they
 * join; a weaker path would draw Q sqrt(p_governing / p_path) unthrottled. What a path loses in the junction itself, by the
 * airflows that are asked for there, is its own; the air of idle parts is not counted in it, since it hangs on the
 * junction's suction. Each run's own leak flows at the suction that
 * the pass finds at its upstream end. A part of the tree in which no open hood asks for air does not govern: its leaks
 * are taken at the junction's suction and added.
 *
 * @param network the tree
 * @param surroundings density, and what a run takes that names nothing else
 * @returns per run and at the fan; fan static pressure = suction at the fan inlet + losses of the discharge runs, as
 *   dischargeLoss counts them against it
 * @throws DomainError if a leak is as large as its duct or a run's value is outside its range
 * @source acgihMemory velocity-pressure method with the square-root correction at junctions; crane410 as meetingLosses
 */
export function designPass(network: Network, surroundings: Surroundings): SystemBudget {
  const { runs, joining, last, discharge } = network;
  const cut = cutOff(network);
  const meetings = meetingsOf(network, surroundings.density);
  const atJunctions: AtJunctions = { asked: new Float64Array(runs.length), losses: new Float64Array(runs.length) };
  const budgets = runs.map((run, index) => stillRun(run.gate === "shut" ? "shut" : cut[index] ? "cut" : "idle"));
  for (const index of network.order) {
    const run = runs[index]!;
    if (budgets[index]!.state !== "idle") continue;
    const legs = joining[index]!;
    if (legs.length === 0 && run.wantedAirflow > 0) {
      budgets[index] = hoodRun(run, surroundings);
    } else if (legs.some((other) => budgets[other]!.state === "asked")) {
      throughJunction(meetings[index]!, budgets, atJunctions);
      let [suction, arriving] = [0, 0];
      for (const other of legs) suction = Math.max(suction, budgets[other]!.suctionAtEnd); // 0 of those not asked
      for (const other of legs) {
        settle(network, other, suction, budgets, surroundings.density);
        arriving += budgets[other]!.airflow;
      }
      budgets[index] = carryingRun(run, arriving, suction, 0, surroundings);
    }
  }
  const atFan = budgets[last]!;
  if (atFan.state === "asked") {
    atFan.governs = true;
    atFan.junctionRatio = 1;
  }
  for (const index of discharge) budgets[index] = dischargeRun(network, index, atFan.airflow, surroundings);
  addPathLosses(network, budgets);
  const dischargeLoss = discharge.reduce((sum, index) => sum + (budgets[index]!.cost?.total ?? 0), 0);
  const leaks = budgets.reduce((sum, budget) => sum + budget.leak, 0);
  const { airflow, suctionAtEnd: suction } = atFan;
  return { runs: budgets, airflow, suction, dischargeLoss, staticPressure: suction + dischargeLoss, leaks };
}

/**
 * A run in which the pass finds no air.
 *
 * @returns its zeros
 * @source house
 */
export const stillRun = (state: Exclude<RunBudget["state"], "asked">): WrittenBudget => ({
  state,
  airflow: 0,
  velocity: 0,
  velocityPressure: 0,
  leak: 0,
  cost: null,
  suctionAtEnd: 0,
  governs: false,
  junctionRatio: null,
});

function hoodRun(run: Run, surroundings: Surroundings): WrittenBudget {
  const wanted = run.wantedAirflow;
  const velocity = meanVelocity(wanted, sectionArea(run.diameter, null));
  const entry = (run.hood ?? surroundings.plainEnd) * velocityPressure(velocity, surroundings.density);
  return carryingRun(run, wanted, entry, entry, surroundings);
}

/** A run that carries asked-for air: what arrives, its own leak, its losses. */
function carryingRun(
  run: Run,
  arriving: number,
  suction: number,
  entry: number,
  surroundings: Surroundings,
): WrittenBudget {
  const leak = ownLeak(run.label, run.leakArea, arriving, suction, run.diameter, surroundings.density);
  const losses = runLoss(run, arriving + leak, surroundings.hoseRoughness, surroundings.density);
  const { velocity, velocityPressure, friction, fittings, device } = losses;
  const along = friction + fittings + device;
  return {
    state: "asked",
    airflow: arriving + leak,
    velocity,
    velocityPressure,
    leak,
    cost: { velocity, velocityPressure, friction, fittings, device, entry, total: entry + along, toFan: 0 },
    suctionAtEnd: suction + along,
    governs: false,
    junctionRatio: null,
  };
}

/** Columns by run on which all junctions of a pass write, since each run joins one of them. */
interface AtJunctions {
  readonly asked: Float64Array; // [m3/s] that it brings of what is asked for
  readonly losses: Float64Array; // [Pa]
}

/** Adds to the runs that join a junction what it costs each; only air that is asked for meets there. */
function throughJunction(
  meeting: Meeting | null,
  budgets: readonly WrittenBudget[],
  { asked, losses }: AtJunctions,
): void {
  if (meeting === null) return;
  for (const leg of meeting.legs) if (budgets[leg]!.state === "asked") asked[leg] = budgets[leg]!.airflow;
  lossesInto(meeting, asked, losses);
  for (const leg of meeting.legs) {
    const budget = budgets[leg]!;
    if (budget.state !== "asked" || budget.cost === null) continue;
    budget.cost.fittings += losses[leg]!;
    budget.cost.total += losses[leg]!;
    budget.suctionAtEnd += losses[leg]!;
  }
}

function dischargeRun(network: Network, index: number, airflow: number, surroundings: Surroundings): WrittenBudget {
  const losses = dischargeLoss(network, index, airflow, surroundings);
  const { velocity, velocityPressure } = losses;
  const total = losses.friction + losses.fittings + losses.device;
  const cost = { ...losses, entry: 0, total, toFan: 0 };
  return { ...stillRun("discharge"), airflow, velocity, velocityPressure, cost };
}

const SAME = 1e-9; // relative: equal paths all govern, whatever the last digit

/** Fills in what a run that joins a junction owes to the junction's suction. */
function settle(
  network: Network,
  index: number,
  suction: number,
  budgets: readonly WrittenBudget[],
  density: number,
): void {
  const budget = budgets[index]!;
  if (budget.state === "asked") {
    const own = budget.suctionAtEnd;
    budget.governs = own >= suction * (1 - SAME);
    budget.junctionRatio = own > 0 ? suction / own : null;
    return;
  }
  for (const { index: still, leak, airflow } of idlePart(network, index, suction, density)) {
    const velocity = meanVelocity(airflow, sectionArea(network.runs[still]!.diameter, null));
    const pressure = velocityPressure(velocity, density);
    Object.assign(budgets[still]!, { leak, airflow, velocity, velocityPressure: pressure, suctionAtEnd: suction });
  }
}

function addPathLosses({ order, joins, discharge }: Network, budgets: readonly WrittenBudget[]): void {
  for (let place = order.length - 1; place >= 0; place--) {
    const index = order[place]!;
    const { cost } = budgets[index]!;
    if (cost !== null) cost.toFan = cost.total + (budgets[joins[index]!]?.cost?.toFan ?? 0);
  }
  for (const index of discharge) {
    const { cost } = budgets[index]!;
    if (cost !== null) cost.toFan = cost.total;
  }
}
