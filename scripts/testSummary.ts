import { existsSync, readFileSync } from "node:fs";
import path from "node:path";

/** What this needs of the file that `jest --json` writes. */
export interface TestResults {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numRuntimeErrorTestSuites: number; // files that broke before their tests could run
}

/** The closing line in plain words, and whether the run was good: something ran, and nothing failed. */
export function summarise(results: TestResults | null): { line: string; good: boolean } {
  const passed = results?.numPassedTests ?? 0;
  const failed = (results?.numFailedTests ?? 0) + (results?.numRuntimeErrorTestSuites ?? 0);
  return { line: `${passed} passed, ${failed} failed`, good: passed > 0 && failed === 0 };
}

if (require.main === module) {
  const file = path.join(__dirname, "../coverage/test-results.json");
  const results = existsSync(file) ? (JSON.parse(readFileSync(file, "utf8")) as TestResults) : null;
  if (results === null) console.error("no test ran: the checks before the tests failed");
  const { line, good } = summarise(results);
  console.log(line);
  process.exitCode = good ? 0 : 1;
}
