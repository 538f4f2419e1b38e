/** Runs a search to its end. */
export function finished<Found>(steps: Generator<void, Found>): Found {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}
