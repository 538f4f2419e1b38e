// The suites. What a test needs stands in its name, so that the fast loop knows without a list: *.engine.test.ts starts another
// program or computes with another's library (LibreOffice, IronCalc, EPANET), *.grid.test.ts computes whole books in the grid of the
// sheet in the browser, *.large.test.ts reads or writes what is large. All else of src/ is "unit". "built" runs what `npm run build`
// wrote, and "browser" drives it in Chromium.
const os = require("node:os");

const swc = ["@swc/jest", { jsc: { parser: { syntax: "typescript", tsx: true }, target: "es2022" } }];
const suite = (displayName, testMatch, more = {}) => ({
  displayName,
  roots: ["<rootDir>/src", "<rootDir>/test", "<rootDir>/scripts"], // or each suite would list node_modules first
  testEnvironment: "<rootDir>/test/support/plainContext.js",
  transform: { "\\.(tsx?|mjs)$": swc },
  transformIgnorePatterns: ["/node_modules/(?!hucre/)"], // it comes as modules only, which jest cannot require as they are
  setupFiles: ["<rootDir>/test/support/laws.ts"],
  testMatch,
  ...more,
});

const NEEDS = ["engine", "grid", "large"];
const PLACES = ["built", "browser"];
const outside = (folder) => `<rootDir>/test/${folder}/`;

module.exports = {
  testTimeout: 600_000, // no test reads a clock; this ends one that hangs, on however busy a machine
  // One more than there are processors: a test waits a third of its time, for a browser's answer or for LibreOffice to begin and end.
  maxWorkers: os.availableParallelism() + 1,
  testSequencer: "<rootDir>/test/support/slowestFirst.js",
  projects: [
    suite("unit", ["<rootDir>/test/**/*.test.ts"], {
      testPathIgnorePatterns: [...NEEDS.map((need) => `\\.${need}\\.test\\.ts$`), ...PLACES.map(outside)],
    }),
    ...NEEDS.map((need) =>
      suite(need, [`<rootDir>/test/**/*.${need}.test.ts`], { testPathIgnorePatterns: PLACES.map(outside) }),
    ),
    ...PLACES.map((place) => suite(place, [`<rootDir>/test/${place}/**/*.test.ts`])),
  ],
};
