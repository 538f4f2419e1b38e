import { meetingsOf } from "../junction/meeting";
import type { Network } from "../network";

/** What may be off, each as a factor on what the table or the curve says; the derivative goes by the factor's logarithm. */
export type InputKind =
  | "fan pressure"
  | "fan speed"
  | "pipe"
  | "hose"
  | "density"
  | "fittings"
  | "junction"
  | "entry"
  | "device"
  | "leak"
  | "diameter";

export interface Input {
  readonly kind: InputKind;
  readonly run: number; // whose it is; -1 where all runs share it
}

/**
 * Every input of a system that is there: one for the fan's pressure and speed, for all pipe and all hose; one of its own for each
 * run's fittings, for what its junction costs it, device, diameter and leak, and for each open end's entry.
 *
 * @param network the tree, with its gates as they are
 * @param isEnd whether a run's upstream end is open, so that its entry counts
 * @returns the inputs, those that all runs share first; density is not among them
 * @source house
 */
export function inputsOf(network: Network, isEnd: (run: number) => boolean): Input[] {
  const { runs } = network;
  const atJunctions = new Set(
    meetingsOf(network, 1).flatMap((meeting) => meeting?.legs.filter((_, place) => meeting.factors[place]! > 0) ?? []),
  );
  const shared: Input[] = [
    { kind: "fan pressure", run: -1 },
    { kind: "fan speed", run: -1 },
  ];
  if (runs.some(({ length }) => length > 0)) shared.push({ kind: "pipe", run: -1 });
  if (runs.some(({ hoseLength }) => hoseLength > 0)) shared.push({ kind: "hose", run: -1 });
  const own = runs.flatMap(({ coefficient, device, leakArea }, run): Input[] => [
    ...(coefficient > 0 ? [{ kind: "fittings", run } as const] : []),
    ...(atJunctions.has(run) ? [{ kind: "junction", run } as const] : []),
    ...(isEnd(run) ? [{ kind: "entry", run } as const] : []),
    ...(device === null ? [] : [{ kind: "device", run } as const]),
    ...(leakArea > 0 ? [{ kind: "leak", run } as const] : []),
    { kind: "diameter", run },
  ]);
  return [...shared, ...own];
}
