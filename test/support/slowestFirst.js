// The order of the test files. A fresh machine knows no durations, so jest would go by the size of the files, and a long test in a
// short file would start last, alone on its core. The suites whose files take longest start first.
const Sequencer = require("@jest/test-sequencer").default;

const LONGEST_FIRST = ["grid", "browser", "engine", "large", "built", "unit"];
const rankOf = ({ context }) => LONGEST_FIRST.indexOf(context.config.displayName.name);

module.exports = class SlowestFirst extends Sequencer {
  sort(tests) {
    return super.sort(tests).sort((one, other) => rankOf(one) - rankOf(other)); // within a rank as jest would
  }
};
