// The order of the test files. A fresh machine knows no durations, so jest would go by the size of the files, and a long test in a
// short file would start last, alone on its core. The suites that open browsers and offices take longest, so they start first.
const Sequencer = require("@jest/test-sequencer").default;

const RANKS = [
  /\/test\/browser\//,
  /\/test\/built\/(share|file|hostile)/,
  /\/test\/share\/(translate\/engines|budget|fixed\/fingerprint)/,
];

const rankOf = ({ path }) => {
  const rank = RANKS.findIndex((pattern) => pattern.test(path.replaceAll("\\", "/")));
  return rank === -1 ? RANKS.length : rank;
};

module.exports = class SlowestFirst extends Sequencer {
  sort(tests) {
    return super.sort(tests).sort((one, other) => rankOf(one) - rankOf(other)); // within a rank as jest would
  }
};
