// The suites. What a test needs stands in its name, so that the fast loop knows without a list: *.engine.test.ts starts another
// program or computes with another's library (LibreOffice, IronCalc, EPANET), *.grid.test.ts computes whole books in the grid of the
// sheet in the browser, *.large.test.ts reads or writes what is large. All else of src/ is "unit". "built" runs what `npm run build`
// wrote, and "browser" drives it in Chromium.
const fs = require("node:fs");
const os = require("node:os");

// The workers inherit it. More room (MB) for short-lived objects, or an eighth of their time goes into clearing up.
process.env.NODE_OPTIONS = `--max-semi-space-size=128 ${process.env.NODE_OPTIONS ?? ""}`;

const swc = ["@swc/jest", { jsc: { parser: { syntax: "typescript", tsx: true }, target: "es2022" } }];
const suite = (displayName, testMatch, more = {}) => ({
  displayName,
  id: `${displayName} of ${__dirname}`, // the parts of a suite have one store of what is compiled, or each would compile the same sources
  rootDir: __dirname,
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

/** The tests of a folder of test/, in order. */
const testsIn = (folder) =>
  fs
    .readdirSync(`${__dirname}/test/${folder}`, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".test.ts"))
    .map((file) => `${folder}/${file}`)
    .sort();
const needs = (need) => (file) => file.endsWith(`.${need}.test.ts`);
const isQuick = (file) => !NEEDS.some((need) => needs(need)(file));

const folders = fs.readdirSync(`${__dirname}/test`).filter((folder) => !PLACES.includes(folder));

function groupsBy(keyOf, files) {
  const groups = {};
  for (const file of files) (groups[keyOf(file)] ??= []).push(file);
  return Object.values(groups);
}

/** A word on the command line that is no option, no suite and no count names files: then each stands by itself, to be found. */
const namesAPart = process.argv
  .slice(2)
  .some((word) => !/^[-\d]/.test(word) && !["unit", ...NEEDS, ...PLACES].includes(word));

const together = (name, files) =>
  suite(name, ["<rootDir>/test/support/together.js"], { globals: { testsTogether: files } });

/** What tries numbers and cells; the other folders of test/ make books, files and pages. Either half takes about as long. */
const OF_NUMBERS = ["core", "functions", "published", "reference", "scripts"];

/** A part of the quick tests: half of the folders where two can run at once, and each folder by itself where more can. */
function partOf(file) {
  const [folder] = file.split("/");
  return os.availableParallelism() > 2 ? folder : OF_NUMBERS.includes(folder);
}

// The quick tests as a few large files: what many of them import is loaded once, not once for each, which took three times as long as
// the tests themselves.
const unit = namesAPart
  ? [
      suite("unit", ["<rootDir>/test/**/*.test.ts"], {
        testPathIgnorePatterns: [...NEEDS.map((need) => `\\.${need}\\.test\\.ts$`), ...PLACES.map(outside)],
      }),
    ]
  : groupsBy(partOf, folders.flatMap(testsIn).filter(isQuick)).map((files) => together("unit", files));

const eachApart = (need, others = []) =>
  suite(need, [`<rootDir>/test/**/*.${need}.test.ts`], {
    testPathIgnorePatterns: [...PLACES.map(outside), ...others.map((file) => `<rootDir>/test/${file}$`)],
  });

const textOf = (file) => fs.readFileSync(`${__dirname}/test/${file}`, "utf8");

/** What may share a context: with the page's plugins the grid's library is another, and stays so; who changes it amid a file or loads modules anew is alone. */
function contextOf(file) {
  const text = textOf(file);
  if (/\b(jest\.\w*[mM]ock\(|withLists|addPlugins)/.test(text)) return file;
  return text.includes("setUpGrid") ? "page" : file.split("/")[0];
}

// The grid's tests likewise, in three large parts that take about as long and a few small ones: each context loads the library, compiles it and
// registers our functions, which took a third of the time.
const grid = namesAPart
  ? [eachApart("grid")]
  : groupsBy(contextOf, folders.flatMap(testsIn).filter(needs("grid"))).map((files) => together("grid", files));

// Of those that start LibreOffice some look at one and the same copy, which takes longer to make than to look at.
const sharesCopy = folders
  .flatMap(testsIn)
  .filter((file) => needs("engine")(file) && textOf(file).includes("flowCopy"));
const engine = namesAPart ? [eachApart("engine")] : [together("engine", sharesCopy), eachApart("engine", sharesCopy)];

module.exports = {
  testTimeout: 600_000, // no test reads a clock; this ends one that hangs, on however busy a machine
  // Nor is a worker blamed that takes long to give a gigabyte back as it ends; one that a test left something open in is told all the same.
  workerGracefulExitTimeout: 30_000, // ms
  // One more than there are processors: a test waits a third of its time, for a browser's answer or for LibreOffice to begin and end.
  maxWorkers: os.availableParallelism() + 1,
  testSequencer: "<rootDir>/test/support/slowestFirst.js",
  projects: [
    ...unit,
    ...grid,
    ...engine,
    eachApart("large"),
    ...PLACES.map((place) => suite(place, [`<rootDir>/test/${place}/**/*.test.ts`])),
  ],
};
