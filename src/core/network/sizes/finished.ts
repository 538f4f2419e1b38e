/**
 * Runs a search to its end; whoever wants to hears after each step how far it is.
 *
 * @returns what it found
 * @source house
 */
export function finished<Far, Found>(steps: Generator<Far, Found>, hear: (far: Far) => void = () => undefined): Found {
  let step = steps.next();
  for (; !step.done; step = steps.next()) hear(step.value);
  return step.value;
}
