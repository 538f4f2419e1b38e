import type { DomainError, NoAnswerError } from "../../src/core/errors";

/** Asserts that the core refuses, with this class and exactly this sentence. */
export function expectRefusal(
  call: () => unknown,
  kind: typeof DomainError | typeof NoAnswerError,
  message: string,
): void {
  let caught: unknown = null;
  let refused = false;
  try {
    call();
  } catch (error) {
    caught = error;
    refused = true;
  }
  expect(refused).toBe(true);
  expect(caught).toBeInstanceOf(kind);
  expect((caught as Error).message).toBe(message);
}
