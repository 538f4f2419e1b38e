import fc from "fast-check";

// Laws hold for all inputs: the whole check tries each on a hundred of them, the fast loop on fewer. While the source is being
// changed under them (`npm run mutate`) they are tried on the same few each time, so that two runs say the same.
const command = process.env.npm_lifecycle_event;
fc.configureGlobal(
  command === "mutate" ? { numRuns: 10, seed: 1, endOnFailure: true } : { numRuns: command === "test:unit" ? 20 : 100 },
);
