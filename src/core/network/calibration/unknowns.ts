import type { Input, InputKind } from "../derivative/inputs";
import type { Network, Run } from "../network";

/** What readings may tell, as the logarithm of a factor on what the table, the curve or the meter says. */
export interface Unknown {
  readonly kind: Exclude<InputKind, "density" | "diameter" | "junction"> | "meter";
  readonly run: number; // whose it is; -1 where all runs share it; of a meter: its number
  readonly gate: Run["gate"] | null; // of a leak: the state in which it is there
  readonly deviation: number; // [-] standard deviation of the logarithm before anyone read anything
}

/** How far off each kind may be; what is not in it is taken as told. */
export type Priors = ReadonlyMap<string, number>;

/**
 * Every input of a system that readings may tell. A run's leak is another one with its gate open than with its gate shut, one opening
 * for both states among them: a slide that moves changes what lies around it, and nobody told that it does not.
 *
 * Diameters are not among them: a tape tells those. Nor is what a junction costs by its airflows, which no table can say otherwise. Nor are fittings after the fan, which a table can't tell apart from its exit.
 *
 * @param networks the same runs with their gates in the states in which somebody read
 * @param priors by kind
 * @param meters how many meters share an error among their readings
 * @returns the inputs, without those that are certain
 * @source house
 */
export function unknownsOf(networks: readonly Network[], priors: Priors, meters: number): Unknown[] {
  const [first] = networks;
  if (first === undefined) return [];
  const found: Unknown[] = [];
  const add = (kind: Unknown["kind"], run: number, isThere: boolean, gate: Unknown["gate"] = null): void => {
    const deviation = priors.get(kind) ?? 0;
    if (isThere && deviation > 0) found.push({ kind, run, gate, deviation });
  };
  add("fan pressure", -1, true);
  add("fan speed", -1, true);
  add("pipe", -1, first.runs.some(({ length }) => length > 0)); // prettier-ignore
  add("hose", -1, first.runs.some(({ hoseLength }) => hoseLength > 0)); // prettier-ignore
  first.runs.forEach(({ side, coefficient, device }, run) => {
    const isEnd = side === "suction" && first.joining[run]!.length === 0;
    add("fittings", run, side === "suction" && coefficient > 0);
    add("entry", run, isEnd);
    add("device", run, device !== null);
    for (const state of ["none", "open", "shut"] as const)
      add("leak", run, networks.some(({ runs }) => leaks(runs[run]!, state)), state); // prettier-ignore
  });
  for (let meter = 0; meter < meters; meter++) add("meter", meter, true);
  return found;
}

const leaks = ({ gate, leakArea }: Run, state: Run["gate"]): boolean => gate === state && leakArea > 0;

/** An unknown's place in the list, and the input that it is in one state of the gates. */
export interface InputThere {
  readonly place: number;
  readonly input: Input;
}

/**
 * The unknowns that do something while the gates of a network are as they are.
 *
 * @returns those that are inputs of the network
 * @source house
 */
export function inputsThere(unknowns: readonly Unknown[], { runs }: Network): InputThere[] {
  return unknowns.flatMap(({ kind, run, gate }, place): InputThere[] => {
    if (kind === "meter" || (gate !== null && !leaks(runs[run]!, gate))) return [];
    return [{ place, input: { kind, run } }];
  });
}
