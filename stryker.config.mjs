// `npm run mutate`: changes the source one place at a time and asks whether a test notices. docs/mutation.md tells what came out.
import fs from "node:fs";
import path from "node:path";
import jestConfig from "./jest.config.js";

const [unit] = jestConfig.projects;

/** A part is asked of the tests of the same folders: that is quick, and no test elsewhere notices a change by luck. */
const asked = [
  ...process.argv
    .slice(2)
    .join(" ")
    .matchAll(/(?<!!)src[/]((?:\w+[/])*)/g),
].map(([, folder]) => folder);

/** The nearest folder of tests: what stands in folders of its own may be tested by one file for each function. */
const withTests = (folder) => (fs.existsSync(`test/${folder}`) ? folder : withTests(`${path.dirname(folder)}/`));
const testFolders = asked.length > 0 ? asked.map(withTests) : ["core/", "functions/", "share/"];

/** The cells remember answers, so that a test may reach a place only because another did not: all tests are asked, each time. */
const remembers = testFolders.every((folder) => folder.startsWith("functions/"));

/** What its name says to start another program, compute whole books or read much: a second or more for each of thousands of changes. */
const isSlow = (file) => /[.](engine|grid|large)[.]test[.]ts$/.test(file);

/** What computes each function's formulas in a grid takes seconds, too: asked for its own folder only. */
const isOwnGrid = (file) =>
  /^share[/]\w+[/]quick\w+[.]grid[.]test[.]ts$/.test(file) && testFolders.includes(`${path.dirname(file)}/`);
const isAsked = (file) => testFolders.some((folder) => file.startsWith(folder)) && (!isSlow(file) || isOwnGrid(file));

/** It reads the source as text, and a changed source is another text. */
const readsSource = "core/docstrings.test.ts";

const tests = fs
  .readdirSync("test", { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".test.ts") && isAsked(file) && file !== readsSource);

export default {
  mutate: ["src/core/**/*.ts", "src/functions/**/*.ts", "src/share/**/*.ts"],
  testRunner: "jest",
  jest: {
    config: {
      ...unit,
      projects: [],
      testEnvironment: path.resolve("test/support/untilFirstFailure.js"),
      testMatch: ["<rootDir>/test/support/together.js"],
      globals: { testsTogether: tests.sort() },
    },
    enableFindRelatedTests: false,
  },
  coverageAnalysis: remembers ? "all" : "perTest",
  ignoreStatic: !remembers, // what is computed once on loading needs every test again for each change; these are tables and words
  incremental: true, // tests are known by name: after a change inside one, run with --force
  incrementalFile: "coverage/mutation/incremental.json",
  tempDirName: "coverage/mutating",
  ignorePatterns: ["/dist", "/coverage", "/assets", "/docs"],
  concurrency: 2,
  timeoutMS: 3000,
  reporters: ["progress-append-only", "clear-text", "json", "html"],
  clearTextReporter: { allowColor: false, allowEmojis: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: "coverage/mutation/report.json" },
  htmlReporter: { fileName: "coverage/mutation/report.html" },
};
