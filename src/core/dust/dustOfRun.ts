import {
  BURNS,
  type DustHazard,
  otherHazards,
  sparkWords,
  woodGrinderWords,
  woodMachineWords,
} from "../../reference/dustHazards";
import { plain } from "../naming/findNamed";

interface NamedRun {
  readonly name: string;
  readonly hood: string; // as typed; empty where none is
  readonly dust: string | null; // as typed; null where none is
  readonly isEnd: boolean; // whether no other run joins it, so that its dust comes in there
}

/**
 * What a dust does by its name in the table of dusts.
 *
 * @returns whether it burns and whether it brings sparks; of a dust that the list does not single out, that it burns
 * @source house
 */
export const hazardOf = (dust: string): DustHazard => otherHazards[plain(dust)] ?? BURNS;

const HARMLESS: DustHazard = { burns: "no", sparks: "no" };

/**
 * What a run brings into the duct: the dust that is typed for it, or at an open end the dust that is taken where none is.
 * An open end whose name or hood tells of sparks may bring them even where another dust is typed, since one dust is often
 * typed for all.
 *
 * @param run its names, as they are typed
 * @returns whether it brings something that burns, and sparks
 * @source commonPractice
 */
export function dustOfRun({ name, hood, dust, isEnd }: NamedRun): DustHazard {
  const typed = dust !== null ? hazardOf(dust) : isEnd ? BURNS : HARMLESS;
  return isEnd && typed.sparks !== "yes" && tellsOfSparks(name, hood) ? { burns: "no", sparks: "perhaps" } : typed;
}

function tellsOfSparks(name: string, hood: string): boolean {
  const has = (text: string, words: readonly string[]): boolean => words.some((word) => plain(text).includes(word));
  if (has(name, woodGrinderWords)) return false;
  return has(name, sparkWords) || (has(hood, sparkWords) && !has(name, woodMachineWords));
}
