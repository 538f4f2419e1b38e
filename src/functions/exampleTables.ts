import type { ExampleTable } from "./guide";

/** Small invented tables for the examples, plain enough to work out with a pocket calculator. */

/** A fan whose curve is one straight line. */
export const exampleCurve: ExampleTable = [
  ["Airflow (cfm)", "Pressure (in.w.g.)"],
  [0, 8],
  [2000, 0],
];

/** Two hoods and a main, without lengths, so that every loss is a K times a velocity pressure. */
export const exampleRuns: ExampleTable = [
  ["Run", "To", "Airflow (cfm)", "Diameter (in)", "Hood", "K", "Gate"],
  ["saw", "main", 400, 4, 0.5, "", "open"],
  ["sander", "main", 400, 4, 0.5, "", "open"],
  ["main", "fan", "", 6, "", 0.3, ""],
];

/** Which gates are open, a row each: the name and the open runs. */
export const exampleScenarios: ExampleTable = [
  ["saw alone", "saw"],
  ["both", "saw; sander"],
];

/** A made-up vendor's numbers. */
export const exampleFacts: ExampleTable = [
  ["rated point", "1000 at 10"],
  ["motor power", 1],
];

/** What somebody read in those ducts: the open runs, where, and the quantity. */
export const exampleReadings: ExampleTable = [
  ["Open", "At", "Airflow (cfm)", "Suction (in.w.g.)"],
  ["saw", "saw", 905, ""],
  ["saw; sander", "fan", "", 5.1],
];

/** What somebody read in front of that fan at three throttles. */
export const exampleThrottles: ExampleTable = [
  ["Airflow (cfm)", "Suction (in.w.g.)"],
  [400, 5.8],
  [800, 5],
  [1200, 4.2],
];
