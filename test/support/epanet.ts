import { LinkProperty, NodeProperty, Project, Workspace } from "epanet-js";
import { AIR_VISCOSITY, STANDARD_DENSITY } from "../../src/core/air/constants";
import type { FanCurve } from "../../src/core/fan/fanCurve";
import type { Surroundings } from "../../src/core/network/designPass";
import type { Network, Run } from "../../src/core/network/network";
import { DISCHARGE_COEFFICIENT } from "../../src/core/leaks/openingLeak";

/*
 * Our network in the words of a general-purpose hydraulic engine, EPANET 2.3 (npm epanet-js, MIT), with air as its fluid.
 *
 * - Sign: the fan is a pump that delivers into the tree and the hoods let out into the room, a reservoir of head 0. So a
 *   node's head is our suction P as a column of air, and every flow keeps its size.
 * - A hood is a pipe with a minor loss into the room. A shut end that leaks is an emitter (exponent 0.5): such a run carries
 *   only its leak, so P + p_v drives L = g A sqrt(2 P / rho) / sqrt(1 - g^2) with g = C_d A_leak / A. A leak beside arriving
 *   air, driven by P + p_v(Q), has no element there; those are worked by hand in the tests.
 * - A device must have exponent 2 and becomes a minor loss. A run that lets nothing in is left out.
 * - Its constants are rounded: a minor loss is 0.02517 K q^2 / D^4 (ft, ft3/s), friction is f L q^2 / (2 x 32.2 D A^2), and
 *   1 ft3/s is 101.94 m3/h. With heads, lengths and flows scaled by exactly these, nothing but its formulas is compared.
 */
const FOOT = 0.3048; // m
const MINOR = 0.02517; // s2/ft, EPANET's 8 / (pi^2 g)
const GRAVITY = 32.2; // ft/s2
const FLOW_UNIT = 101.94 / FOOT ** 3; // EPANET's m3/h in one m3/s
const VISCOSITY_UNIT = 1.1e-5; // ft2/s, what EPANET's viscosity is relative to
const SAME_FRICTION = (GRAVITY * MINOR * Math.PI ** 2) / 8; // its two constants of gravity differ by this
const NO_LENGTH = 1e-9; // m; EPANET refuses a pipe of no length

/** Our pressure [Pa] in one metre of EPANET's head. */
const headUnit = (density: number): number => (8 * density * FOOT) / (Math.PI ** 2 * MINOR);

interface EpanetAnswer {
  readonly airflow: readonly number[]; // [m3/s] per run, in the order of the network; 0 where left out
  readonly suction: readonly number[]; // [Pa] at the upstream end; NaN where left out
  readonly fanAirflow: number; // [m3/s]
}

/** An engine with our network loaded; `solve` runs its hydraulics from its own start, `read` fetches the answer. */
export interface Engine {
  readonly solve: () => void;
  readonly read: () => EpanetAnswer;
  readonly close: () => void;
  readonly again: () => Engine; // the same input file, opened anew
}

export async function newWorkspace(): Promise<Workspace> {
  const workspace = new Workspace();
  await workspace.loadModule();
  return workspace;
}

/** @param accuracy the largest change of flow, as a share of all flow, at which EPANET stops; it takes no less than 1e-5 */
export function loadEngine(
  workspace: Workspace,
  network: Network,
  curve: FanCurve,
  air: Surroundings,
  accuracy: "tightest" | "usual",
): Engine {
  workspace.writeFile("net.inp", epanetInput(network, curve, air, accuracy));
  return openEngine(workspace, network, air);
}

function openEngine(workspace: Workspace, network: Network, air: Surroundings): Engine {
  const project = new Project(workspace);
  project.open("net.inp", "net.rpt", "net.out");
  const modelled = modelledRuns(network);
  const read = (): EpanetAnswer => {
    const flow = (id: string): number => project.getLinkValue(project.getLinkIndex(id), LinkProperty.Flow) / FLOW_UNIT;
    const head = (id: string): number => project.getNodeValue(project.getNodeIndex(id), NodeProperty.Head);
    return {
      airflow: modelled.map((there, index) => (there ? flow(`run${index}`) : 0)),
      suction: modelled.map((there, index) => (there ? head(`up${index}`) * headUnit(air.density) : NaN)),
      fanAirflow: flow("fan"),
    };
  };
  // runH alone, so that the answer can still be read; solveH would close the hydraulics first.
  const solve = (): void => {
    project.openH();
    project.initH(10);
    project.runH();
  };
  const close = (): void => {
    project.closeH();
    project.close();
  };
  return { solve, read, close, again: () => openEngine(workspace, network, air) };
}

/** Whether a run lets air in anywhere upstream: an open end, or a leak. */
function modelledRuns({ runs, joining, order }: Network): boolean[] {
  const letsIn = runs.map(({ leakArea }) => leakArea > 0);
  for (const index of order) {
    const ends = joining[index]!.length === 0;
    letsIn[index] ||= ends ? runs[index]!.gate !== "shut" : joining[index]!.some((other) => letsIn[other]);
  }
  return letsIn;
}

/** The network as an EPANET input file. */
function epanetInput(network: Network, curve: FanCurve, air: Surroundings, accuracy: "tightest" | "usual"): string {
  const { runs, joins, joining, discharge } = network;
  const modelled = modelledRuns(network);
  const [junctions, pipes, emitters]: [string[], string[], string[]] = [["outlet", "inlet"], [], []];
  const pipe = (id: string, from: string, to: string, run: Run, length: number, wall: number, K: number): void => {
    pipes.push(
      [id, from, to, length * SAME_FRICTION || NO_LENGTH, run.diameter * 1000, wall * 1000 || 1e-6, K].join(" "),
    );
  };
  runs.forEach((run, index) => {
    if (!modelled[index]) return;
    const down = joins[index]! < 0 ? "inlet" : `up${joins[index]!}`;
    const hose = run.hoseLength > 0;
    pipe(`run${index}`, down, hose ? `mid${index}` : `up${index}`, run, run.length, run.roughness, minorLoss(run));
    junctions.push(`up${index}`);
    if (hose) {
      junctions.push(`mid${index}`);
      pipe(`hose${index}`, `mid${index}`, `up${index}`, run, run.hoseLength, air.hoseRoughness, 0);
    }
    if (run.gate === "shut") emitters.push(`up${index} ${emitter(run, air)}`);
    else if (joining[index]!.length === 0)
      pipe(`hood${index}`, `up${index}`, "room", run, 0, 0, run.hood ?? air.plainEnd);
  });
  discharge.forEach((index, place) => {
    const run = runs[index]!;
    const to = place === discharge.length - 1 ? "inlet" : `outlet${place}`;
    if (to !== "inlet") junctions.push(to);
    pipe(
      `out${index}`,
      place === 0 ? "outlet" : `outlet${place - 1}`,
      to,
      run,
      run.length,
      run.roughness,
      minorLoss(run),
    );
  });
  const fanEnd = discharge.length === 0 ? "inlet" : "outlet";
  const thickness = air.density / STANDARD_DENSITY;
  const points = curve.points.map(
    ({ airflow, pressure }) => `curve ${airflow * FLOW_UNIT} ${(pressure * thickness) / headUnit(air.density)}`,
  );
  const viscosity = AIR_VISCOSITY / air.density / FOOT ** 2 / VISCOSITY_UNIT;
  const nodes = junctions.filter((name) => name !== "outlet" || fanEnd === "outlet");
  const limits = accuracy === "tightest" ? ["HEADERROR 1e-9", "FLOWCHANGE 1e-9"] : [];
  return [
    ["[JUNCTIONS]", ...nodes.map((name) => `${name} 0`)],
    ["[RESERVOIRS]", "room 0"],
    ["[PIPES]", ...pipes],
    ["[PUMPS]", `fan room ${fanEnd} HEAD curve`],
    ["[CURVES]", ...points],
    ["[EMITTERS]", ...emitters],
    ["[OPTIONS]", "UNITS CMH", "HEADLOSS D-W", `VISCOSITY ${viscosity}`, "EMITTER EXPONENT 0.5", "TRIALS 200"],
    ["ACCURACY 0.00001", ...limits],
    ["[REPORT]", "STATUS NO", "[END]", ""],
  ]
    .flat()
    .join("\n");
}

/** K of a run's fittings and its device, rated in standard air: p0 (Q/Q0)^2 rho/rho0 = K rho Q^2 / (2 A^2). */
function minorLoss({ coefficient, device, diameter }: Run): number {
  if (device === null) return coefficient;
  if (device.exponent !== 2) throw new Error("a minor loss goes with the square of the airflow");
  const area = (Math.PI * diameter ** 2) / 4;
  return coefficient + (device.ratedLoss * 2 * area ** 2) / (STANDARD_DENSITY * device.ratedAirflow ** 2);
}

/** Flow at one metre of head, in EPANET's m3/h. */
function emitter({ leakArea, diameter }: Run, { density }: Surroundings): number {
  const area = (Math.PI * diameter ** 2) / 4;
  const share = (DISCHARGE_COEFFICIENT * leakArea) / area;
  return ((share * area) / Math.sqrt(1 - share ** 2)) * Math.sqrt((2 * headUnit(density)) / density) * FLOW_UNIT;
}
