// Jest's own environment keeps the globals of a test file behind a proxy, and every use of Math or Object passes through it: what
// computes much took three to four times as long. Here each file has a context of its own as before, without the proxy.
const vm = require("node:vm");
const { TestEnvironment } = require("jest-environment-node");

const withPlainContext = (Environment) =>
  class extends Environment {
    constructor(...args) {
      const { createContext } = vm;
      vm.createContext = () => createContext(vm.constants.DONT_CONTEXTIFY);
      try {
        super(...args);
      } finally {
        vm.createContext = createContext;
      }
      // Jest has each error write down a hundred callers, and makes an error for every expectation, also for one that is met: a
      // fifteenth of the time of the quick tests. Ten are Node's own usual, and lead to the line of the test.
      this.global.Error.stackTraceLimit = 10;
    }
  };

// A worker that has nothing left to do ends at once: to clear up all its memory first, a gigabyte or more, takes longer on a busy machine
// than the half second that jest allows, and jest then blames a test. What a test left open still keeps the worker, and is told.
if (process.connected) process.once("beforeExit", () => process.exit());

module.exports = Object.assign(withPlainContext(TestEnvironment), { withPlainContext });
