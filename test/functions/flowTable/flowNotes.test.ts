import { flowNotes, type RunFlow } from "../../../src/functions/flowTable/flowNotes";
import { runsOf } from "../../support/runsOf";
import type { Row } from "../../support/tables";

/** An open hood through which 0.2 m3/s of air go at 24 m/s: fast enough for wood dust (20 m/s), not too fast (28 m/s). */
const flow: RunFlow = { airflow: 0.2, leak: 0, velocity: 24, fed: true, end: true, beyondShut: false };

const note = (run: Row, facts: Partial<RunFlow>): string =>
  flowNotes(runsOf([{ Run: "saw", To: "fan", Diameter: 100, ...run }], "SI").runs[0]!, { ...flow, ...facts }, "SI"); // prettier-ignore

const settles = 'dust settles: "wood dust" needs 20 m/s';

test.each<[string, Row, Partial<RunFlow>, string]>([
  ["a run in order", {}, {}, ""],
  ["slow air", {}, { velocity: 19 }, settles],
  ["fast air", {}, { velocity: 29 }, "too fast: over 28 m/s only costs pressure and wears the duct"],
  ["a shut gate", { Gate: "shut" }, { fed: false, beyondShut: true }, "gate shut: only its leak flows"],
  ["a run beyond a shut gate", {}, { fed: false, beyondShut: true }, "a shut gate cuts it off"],
  ["only leaks", {}, { fed: false, velocity: 1 }, "no open hood: only leaks flow"],
  ["nothing", {}, { fed: false, airflow: 0 }, "no open hood: nothing flows"],
  ["the discharge side, whatever goes on there", { Side: "discharge", To: null, Airflow: 9999 }, { velocity: 1, fed: false, end: false }, ""],
  ["a leak on the discharge side", { Side: "discharge", To: null, Leak: 100 }, { fed: false, end: false }, "a leak on the discharge side blows dust out and is not counted"],
  ["a leak of more than a tenth", {}, { leak: 0.03 }, "its leak carries 15 % of its air"],
  ["a hood that is asked for nothing and gets a rounding error less", { Airflow: 0 }, { airflow: 0.2, leak: 0.2 + 1e-16 }, "its leak carries 100 % of its air"],
  ["slow air and a leak", {}, { velocity: 19, leak: 0.1 }, `${settles}; its leak carries 50 % of its air`],
])("%s", (_, run, facts, words) => expect(note(run, facts)).toBe(words)); // prettier-ignore

// 0.2 m3/s are 720 m3/h; 95 % of 757 m3/h are 719.2, of 759 m3/h 721.1.
test("a hood that gets less than 95 % of what it asks for is told its share, its own leak not counted", () => {
  expect(note({ Airflow: 757 }, {})).toBe("");
  expect(note({ Airflow: 759 }, {})).toBe("the hood gets 95 % of the 759 m³/h wanted");
  expect(note({ Airflow: 720 }, { leak: 0.015 })).toBe("the hood gets 93 % of the 720 m³/h wanted");
  expect(note({ Airflow: 1000 }, { end: false })).toBe("");
  expect(note({ Airflow: 1440 }, { velocity: 12, leak: 0.1 })).toBe(
    `${settles}; the hood gets 25 % of the 1440 m³/h wanted; its leak carries 50 % of its air`,
  );
});

// -0.05 m3/s of the 0.2 that are wanted, 720 m3/h: a share of -25 % would say nothing that a person understands, and its leak carries no part of such air.
test("a hood out of which air blows gets nothing", () => {
  const blows = { airflow: -0.05, leak: 0, velocity: -6 };
  expect(note({ Airflow: 720 }, blows)).toBe(
    `${settles}; the hood gets nothing (air blows out of it) of the 720 m³/h wanted`,
  );
  expect(note({ Airflow: 720 }, { ...blows, leak: -0.01 })).not.toMatch(/its leak/);
  expect(note({ Airflow: 720 }, { airflow: -1e-12 })).toBe("the hood gets 0 % of the 720 m³/h wanted"); // a rounding error
});
