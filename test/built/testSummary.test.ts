import { summarise } from "../../scripts/testSummary";

const results = { numPassedTests: 12, numFailedTests: 0, numRuntimeErrorTestSuites: 0 };

describe("the closing line of a test run", () => {
  test.each([
    ["all passed", results, "12 passed, 0 failed", true],
    ["one failed", { ...results, numPassedTests: 11, numFailedTests: 1 }, "11 passed, 1 failed", false],
    ["a file broke before its tests ran", { ...results, numRuntimeErrorTestSuites: 2 }, "12 passed, 2 failed", false],
    ["none ran", { ...results, numPassedTests: 0 }, "0 passed, 0 failed", false],
    ["there are no results", null, "0 passed, 0 failed", false],
  ])("when %s", (_, run, line, good) => {
    expect(summarise(run)).toEqual({ line, good });
  });
});
