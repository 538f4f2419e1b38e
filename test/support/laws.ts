import fc from "fast-check";

// Laws hold for all inputs: the whole check tries each on a hundred of them, the fast loop on fewer.
fc.configureGlobal({ numRuns: process.env.npm_lifecycle_event === "test:unit" ? 20 : 100 });
