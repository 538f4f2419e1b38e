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
    }
  };

module.exports = Object.assign(withPlainContext(TestEnvironment), { withPlainContext });
