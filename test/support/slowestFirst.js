// The order of the test files. A fresh machine knows no durations, so jest would go by the size of the files, and a long test in a
// short file would start last, alone on its core. The suites whose files take longest start first, and within them what is loaded
// together, which jest takes for one short file (together.js): the more there is to it, the earlier.
const fs = require("node:fs");
const path = require("node:path");
const Sequencer = require("@jest/test-sequencer").default;

const LONGEST_FIRST = ["grid", "browser", "engine", "large", "built", "unit"];
const rankOf = ({ context }) => LONGEST_FIRST.indexOf(context.config.displayName.name);

/** Of the files that are loaded together; 0 of a file by itself. */
const bytesOf = ({ context }) =>
  (context.config.globals.testsTogether ?? []).reduce(
    (sum, file) => sum + fs.statSync(path.join(__dirname, "..", file)).size,
    0,
  );

module.exports = class SlowestFirst extends Sequencer {
  sort(tests) {
    const sizes = new Map(tests.map((test) => [test, bytesOf(test)]));
    return super
      .sort(tests) // within a rank as jest would, where nothing else tells
      .sort((one, other) => rankOf(one) - rankOf(other) || sizes.get(other) - sizes.get(one));
  }
};
