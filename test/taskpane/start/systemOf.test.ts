import "../../support/customFunctions";
import { budget } from "../../../src/functions/systems/budget";
import { fanpressure } from "../../../src/functions/fan/fanpressure";
import { solve } from "../../../src/functions/systems/solve";
import { together } from "../../../src/functions/systems/together";
import { exampleCurve, exampleRuns } from "../../../src/functions/exampleTables";
import { findingsIn } from "../../../src/taskpane/check/findingsIn";
import type { Calculate } from "../../../src/taskpane/functions/askWorker";
import { systemOf } from "../../../src/taskpane/start/systemOf";
import { seenOf } from "../../support/books";

const functions: Record<string, (...args: never[]) => unknown> = {
  BUDGET: budget,
  SOLVE: solve,
  FANPRESSURE: fanpressure,
  TOGETHER: together,
};
const calculate: Calculate = async ({ id, args }) => {
  try {
    return { rows: functions[id]!(...(args as never[])) as number[][] };
  } catch (error) {
    return { error: "#VALUE!", message: (error as Error).message };
  }
};
const curve = { rows: [["Airflow (cfm)", "Fan static pressure (in.w.g.)"], ...exampleCurve.slice(1)] };
const gated = exampleRuns;
const ungated = exampleRuns.map((row) => row.slice(0, -1));

describe("an owner's system at a glance", () => {
  test("has a line for each machine, as SOLVE finds it with that gate alone open, and the first that Check finds", async () => {
    const seen = seenOf({ Runs: { rows: gated }, Fan: curve });
    const { picture, alone, next } = await systemOf(seen, calculate);
    expect(typeof picture).toBe("object");
    if (typeof alone === "string") throw new Error(alone);
    expect(alone.map(({ machine }) => machine)).toEqual(["saw", "sander"]);
    for (const { machine, facts, verdict } of alone) {
      const rows = solve(gated as never, exampleCurve as never, [[machine]] as never) as (string | number)[][];
      const own = rows.find(([name]) => name === machine)!;
      expect(facts).toContain(`It gets ${Math.round(Number(own[1])).toLocaleString("en-GB")} cfm, `);
      expect(verdict).not.toBe("");
    }
    expect(next).toEqual(findingsIn(seen).slice(0, 3));
  });

  test("says what it waits for", async () => {
    expect((await systemOf(seenOf({}), calculate)).alone).toMatch(/^Type your ducts on the sheet Runs/);
    expect((await systemOf(seenOf({ Runs: { rows: gated } }), calculate)).alone).toMatch(
      /points or more of the fan's curve/,
    );
  });

  test("and why there is no answer: no hood has a gate", async () => {
    const { alone } = await systemOf(seenOf({ Runs: { rows: ungated }, Fan: curve }), calculate);
    expect(alone).toMatch(/^What each machine gets alone has no answer: .*gate/);
  });
});
