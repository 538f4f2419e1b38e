import fc from "fast-check";
import { USUAL_LAW_RUNS } from "./lawRuns";

// Laws hold for all inputs: the whole check tries each on a hundred of them, the fast loop on fewer. While the source is being
// changed under them (`npm run mutate`) they are tried on the same few each time, so that two runs say the same.
const isMutated = process.env.npm_lifecycle_event === "mutate";
fc.configureGlobal({ numRuns: USUAL_LAW_RUNS, ...(isMutated ? { seed: 1, endOnFailure: true } : {}) });
