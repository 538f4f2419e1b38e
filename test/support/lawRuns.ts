/** On how many inputs a law is tried that needs more or fewer than the usual hundred; the quick loops take their share of it, as of all laws. */
export const lawRuns = (times: number): { numRuns: number } => ({ numRuns: Math.ceil((times * USUAL_LAW_RUNS) / 100) });

const SHARES: Readonly<Record<string, number>> = { mutate: 10, "test:unit": 20 };

/** Of laws that say nothing of it: the whole check tries each on a hundred inputs. */
export const USUAL_LAW_RUNS = SHARES[process.env.npm_lifecycle_event ?? ""] ?? 100;
