import { markOf } from "../../../../src/reference/notes";
import { foundIn, runsWith, solveHeader, soundRuns } from "../../../support/books";

const header = ["Open", "Worst served hood", "Its airflow (cfm)", "Of what it wants (%)", "Slowest run", "Its velocity (fpm)", "Of what its dust needs (%)", "Verdict"]; // prettier-ignore
const alone = (gate: string, slowest: string, velocity: number, verdict: string) =>
  [gate, gate, 400, 100, slowest, velocity, 80, verdict]; // prettier-ignore
const SLOW = "too slow for the dust: main";
const saw = alone("saw", "main", 2100, SLOW);
const planer = alone("planer", "main", 2300, `${SLOW}; works with one more gate open: saw`);
const found = (together: readonly (readonly (string | number)[])[], more: Parameters<typeof foundIn>[0] = {}) =>
  foundIn({ Runs: { rows: soundRuns }, Sizes: { rows: [header, ...together] }, ...more });

describe("a main too wide for any one gate", () => {
  test("is told in one line, with its greatest velocity and what is needed, at its diameter", () => {
    expect(found([saw, planer])).toEqual([
      {
        rule: "Too wide for one machine",
        what: 'main is too wide for any scenario with one gate: with one gate open its air reaches 2,300 fpm at most (planer); "wood dust" needs 3,937 fpm.',
        sheet: "Runs",
        at: "D4",
      },
    ]);
  });

  test("without that velocity where an answer names another run as the slowest", () => {
    expect(found([saw, alone("planer", "planer", 1000, "too slow for the dust: planer, main")])[0]?.what).toBe(
      'main is too wide for any scenario with one gate: with any one gate open its air is too slow; "wood dust" needs 3,937 fpm.',
    );
  });

  test("is none where one gate alone moves its dust, or has no answer, or both gates are open", () => {
    expect(found([saw, alone("planer", "planer", 4000, markOf("worksAlone"))])).toEqual([]);
    expect(found([saw])).toEqual([]);
    expect(found([saw, alone("saw; planer", "main", 2300, SLOW)])).toEqual([]);
  });

  test("is not told again of an answer with one gate open, but where more air is too slow, too", () => {
    const solved = (velocity: number) => ({ Flow: { rows: [solveHeader, ["main", 452, velocity, 2, 0, 1, "", ""]] } });
    const rules = (velocity: number) => found([saw, planer], solved(velocity)).map(({ rule }) => rule);
    expect(rules(2300)).toEqual(["Too wide for one machine"]);
    expect(rules(3000)).toEqual(["Dust settles", "Too wide for one machine"]);
  });

  test("is another fault where the airflows asked for are too slow there already", () => {
    const budget = [["Run", "Airflow (cfm)", "Velocity (fpm)", "Path loss to fan (in.w.g.)", "Note"], ["main", 600, 3056, 2, ""]]; // prettier-ignore
    expect(found([saw, planer], { Budget: { rows: budget } }).map(({ rule }) => rule)).toEqual(["Dust settles"]);
  });

  test("is told of the main that carries most gates, and names the others", () => {
    const rows = [...runsWith("main", "To", "trunk"), ["trunk", "fan", "", 7, "", "", "", "", ""], ["lathe", "trunk", 400, 4, "", "", "", "open", ""]]; // prettier-ignore
    const slow = "too slow for the dust: main, trunk";
    const lathe = alone("lathe", "trunk", 1500, "too slow for the dust: trunk");
    const sets = [alone("saw", "trunk", 1400, slow), alone("planer", "trunk", 1450, slow), lathe];
    const [one, another] = found(sets, { Runs: { rows } });
    expect(one).toMatchObject({ what: expect.stringMatching(/^trunk is .* 1,500 fpm at most \(lathe\).* So are main\.$/), at: "D5" }); // prettier-ignore
    expect(another).toBeUndefined();
  });
});
