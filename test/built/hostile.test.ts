import { hostile } from "../support/hostile";
import { lots } from "../support/lots";
import { HostError, loadBundle, readMetadata } from "./loadBundle";

const SEED = 20261125;
const CALLS = 300_000;

/** What a whole network costs is a hundred times the rest, so these are called less often. */
const HEAVY: Readonly<Record<string, number>> = {
  BUDGET: 6000,
  SOLVE: 4000,
  SCENARIOS: 4000,
  GAINS: 4000,
  UNCERTAINTY: 1500,
  BUDGETUNCERTAINTY: 500,
  CALIBRATE: 500,
  CALIBRATEDRUNS: 500,
  CALIBRATEDCURVE: 500,
  CALIBRATEDUNCERTAINTY: 500,
  FANCURVE: 10_000,
  GAINUNCERTAINTY: 1500,
  LEAKGAINS: 1500,
  TOGETHER: 1500,
  SIZES: 1500,
  CLAIM: 10_000,
};

const { functions } = readMetadata();
const heavyCalls = Object.values(HEAVY).reduce((sum, count) => sum + count, 0);
const usual = Math.ceil((CALLS - heavyCalls) / (functions.length - Object.keys(HEAVY).length));
const callsOf = (name: string): number => HEAVY[name] ?? usual;

const { call } = loadBundle();

/** The longest sentence that still reads as one: what a user typed is cut, not repeated for pages. */
const LONGEST = 600;

/** Why an answer is not what a cell may be given; empty where it is right. */
function fault(value: unknown): string {
  if (typeof value === "number") return Number.isFinite(value) ? "" : `the number ${value}`;
  if (typeof value === "string" || typeof value === "boolean") return "";
  if (value instanceof HostError) return faultOfError(value); // an item of a range that is refused
  return `a ${value === null ? "null" : typeof value}`;
}

function faultOfAnswer(answer: unknown): string {
  if (!Array.isArray(answer)) return fault(answer);
  const rows = answer as unknown[][];
  if (rows.length === 0 || !rows.every((row) => Array.isArray(row) && row.length === rows[0]!.length && row.length > 0))
    return "an answer that is no rectangle";
  return (
    rows
      .flat()
      .map(fault)
      .find((words) => words !== "") ?? ""
  );
}

function faultOfError(error: unknown): string {
  if (!(error instanceof HostError)) return `threw ${error instanceof Error ? error.stack : String(error)}`;
  if (!["#VALUE!", "#N/A"].includes(error.code)) return `threw the code ${error.code}`;
  if (error.message === undefined || error.message === "") return "threw an error without a sentence";
  return error.message.length > LONGEST ? `threw a sentence of ${error.message.length} characters` : "";
}

interface Asked {
  readonly args: readonly unknown[];
  readonly outcome: string;
}

/** Calls one function with a seed's arguments, and says the first that went wrong. */
function tryOut(id: string, seed: number, count: number): { faults: string[]; first: Asked[]; answered: number } {
  const drawn = hostile(lots(seed), HostError);
  const { parameters } = functions.find((entry) => entry.id === id)!;
  const faults: string[] = [];
  const first: Asked[] = [];
  let answered = 0;
  for (let at = 0; at < count && faults.length < 5; at++) {
    const args = drawn.args(parameters.map(({ name }) => name));
    let wrong: string;
    let outcome: string;
    try {
      const answer = call(id, ...args);
      wrong = faultOfAnswer(answer);
      answered += 1;
      outcome = at < 200 ? inWords(answer) : "";
    } catch (error) {
      wrong = faultOfError(error);
      outcome = String((error as Error).message);
    }
    if (at < 200) first.push({ args, outcome });
    if (wrong !== "") faults.push(`${wrong} for ${inShort(args)}`);
  }
  return { faults, first, answered };
}

/** An answer with the sentences of its errors. */
const inWords = (answer: unknown): string =>
  JSON.stringify(answer, (_, value: unknown) =>
    value instanceof HostError ? `${value.code} ${value.message ?? ""}` : value,
  );

const inShort = (args: readonly unknown[]): string =>
  (
    JSON.stringify(args, (_, value: unknown) =>
      typeof value === "number" && !Number.isFinite(value) ? String(value) : value,
    ) ?? ""
  ).slice(0, 400);

describe(`every function under ${CALLS} calls with hostile arguments, seed ${SEED}`, () => {
  test("adds up to the calls that the title says", () => {
    expect(functions.reduce((sum, { name }) => sum + callsOf(name), 0)).toBeGreaterThanOrEqual(CALLS);
  });

  test.each(functions)(
    "$name answers with finite values, text or an error with its sentence, and is the same afterwards",
    ({ id, name }) => {
      const { faults, first, answered } = tryOut(id, SEED, callsOf(name));
      expect(faults).toEqual([]);
      expect(answered).toBeGreaterThan(0); // or it would have been tried on refusals only
      const again = tryOut(id, SEED, Math.min(200, callsOf(name))).first;
      expect(again.map(({ outcome }) => outcome)).toEqual(first.map(({ outcome }) => outcome));
    },
  );
});
