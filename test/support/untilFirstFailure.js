// For `npm run mutate`: one failing test is enough to tell that a change was noticed, so the others are not run. And the tests to
// run come as one expression of up to a thousand full names: a look-up of a name takes a thousandth of the time.
const StrykerEnvironment = require("@stryker-mutator/jest-runner/jest-env/node");
const { withPlainContext } = require("./plainContext");

const NONE = { test: () => false };
const namesIn = (pattern) =>
  pattern
    .slice(1, -1)
    .split(")|(")
    .map((name) => name.replace(/\\(.)/g, (_, character) => (character === "n" ? "\n" : character)));

module.exports = class extends withPlainContext(StrykerEnvironment) {
  async handleTestEvent(event, state) {
    if (event.name === "run_start" && state.testNamePattern !== null) {
      const wanted = new Set(namesIn(state.testNamePattern.source));
      state.testNamePattern = { test: (name) => wanted.has(name) };
    }
    if (event.name === "test_done" && event.test.errors.length > 0) state.testNamePattern = NONE;
  }
};
