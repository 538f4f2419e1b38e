import { controlFacts } from "./hazards/controlFacts";
import { designFacts } from "./hazards/designFacts";
import { explosionFacts } from "./hazards/explosionFacts";
import { healthFacts } from "./hazards/healthFacts";
import type { HazardRow } from "./schema";

/**
 * Facts about health, explosion, siting, design and law, each part sorted by key.
 * Left out: one survey of sawmills (no rule), the order of chapters of NFPA 660 (no fact for a shop), and the earlier
 * text of rows that were read a second time.
 */
export const hazards: readonly HazardRow[] = [...healthFacts, ...explosionFacts, ...designFacts, ...controlFacts];
