import { cite } from "../../reference/citation";
import type { UnitSystem } from "../../reference/quantities";
import { type ClaimRow, rowOf } from "./claimRow";
import { LEVEL_UNITS, NEAR, NO_DISTANCE, NO_LEVEL, tidyInWords } from "../../reference/claimWords";
import type { Facts } from "./facts";
import { practice } from "../../reference/claimLaws";

/** A level alone is no loudness. */
export function soundLevel({ sound, "noise distance": distance }: Facts, system: UnitSystem): ClaimRow[] {
  if (sound === undefined) return [];
  const level = levelOf(String(sound));
  const near = NEAR[system];
  const there = Math.round(Number(level) + 20 * Math.log10((distance ?? near) / near));
  const open =
    distance === undefined
      ? NO_DISTANCE
      : level === undefined
        ? NO_LEVEL
        : `In the open ${level} dB at ${tidyInWords(distance, "length", system)} are ${there} dB at ${tidyInWords(near, "length", system)}, 6 dB less at twice the distance`;
  const why = `${open}; the room and the load decide too.`;
  const asks = [`at which ${distance === undefined ? "distance and " : ""}load the sound was measured`];
  return [rowOf({ check: "Sound", claimed: sound, verdict: "cannot tell", why, source: cite(practice), asks })];
}

/** The number of a level in dB and of nothing else: not of 8.0 B, 75-80 dB or a sound power, which is at no distance. */
function levelOf(text: string): string | undefined {
  const [, level, rest = ""] = /^\s*(\d+(?:\.\d+)?)([\s\S]*)$/.exec(text.replaceAll(",", ".")) ?? [];
  return LEVEL_UNITS.includes(rest.toLowerCase().replace(/[\s.]/g, "")) ? level : undefined;
}
