import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import type { Network, Run } from "../../../src/core/network/network";
import { buildNetwork, MOST_RUNS } from "../../../src/core/network/tree";
import { expectRefusal } from "../../support/coreRefusal";
import { makeRun } from "../../support/runs";
import { trees } from "../../support/trees";

const main = makeRun("main", "fan");
const saw = makeRun("saw", "main");
const chimney = makeRun("chimney", "", { side: "discharge" });

/** Every suction run stands once in the order, after all that join it. */
function expectOrdered({ order, joining, joins, runs, last }: Network): void {
  const place = new Map(order.map((run, index) => [run, index]));
  expect(place.size).toBe(runs.filter(({ side }) => side === "suction").length);
  expect(order.at(-1)).toBe(last);
  joining.forEach((list, run) => list.forEach((other) => expect(place.get(other)!).toBeLessThan(place.get(run)!)));
  joins.forEach((to, run) => {
    if (to >= 0) expect(joining[to]).toContain(run);
  });
}

describe("buildNetwork", () => {
  test("joins runs by name, whatever the case and blanks", () => {
    const network = buildNetwork([makeRun("Table Saw", " MAIN "), makeRun("Main", " Fan"), makeRun("sander", "main")]);
    expect(network.joins).toEqual([1, -1, 1]);
    expect(network.joining).toEqual([[], [0, 2], []]);
    expect(network.last).toBe(1);
    expect(network.discharge).toEqual([]);
    expectOrdered(network);
  });

  test("keeps the discharge runs apart, with or without a way out", () => {
    const rows = ["", "fan", "Outside", "open air", "room", "chimney"].map((to, index) =>
      makeRun(`d${index}`, to, { side: "discharge" }),
    );
    const network = buildNetwork([main, chimney, ...rows]);
    expect(network.discharge).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(network.joins.slice(1)).toEqual(Array(7).fill(-1));
    expect(network.order).toEqual([0]);
  });

  test("puts every run after those that join it, on random trees in random order", () => {
    fc.assert(fc.property(trees, (runs) => expectOrdered(buildNetwork(runs))));
  });

  test("does so along a chain as long as a table may be, first to last and last to first", () => {
    const length = MOST_RUNS;
    const chain = Array.from({ length }, (_, index) => makeRun(`r${index}`, index === 0 ? "fan" : `r${index - 1}`));
    const forward = buildNetwork(chain);
    expect(forward.order).toEqual(chain.map((_, index) => length - 1 - index));
    expect(buildNetwork([...chain].reverse()).order).toEqual(chain.map((_, index) => index));
  });

  describe("refuses", () => {
    test.each<[string, Run[], string]>([
      [
        "a name twice",
        [main, saw, { ...makeRun("SAW ", "main"), label: 'run "SAW" (row 4)' }],
        'Run of run "SAW" (row 4) must be a name of its own: run "saw" has it too; got "SAW"',
      ],
      [
        "a discharge run with a suction run's name",
        [main, makeRun("main", "", { side: "discharge" })],
        'Run of run "main" must be a name of its own: run "main" has it too; got "main"',
      ],
      [
        "a run called fan",
        [main, makeRun("Fan", "main")],
        'Run of run "Fan" must be another word: "fan" is where the last run ends; got "Fan"',
      ],
      [
        // "mai" is one letter from "main" and two from both others: then the table's order, and the fan last
        "an unknown To, with the nearest names",
        [main, makeRun("saw", "mai")],
        'To of run "saw" must be the name of another run, or "fan" for the last one (nearest: "main", "fan"); got "mai"',
      ],
      [
        // "chimny" is one letter from the chimney, but a suction run cannot join that: four from "main", five from "fan"
        "an unknown To, without a discharge run among the nearest names",
        [chimney, main, makeRun("saw", "chimny")],
        'To of run "saw" must be the name of another run, or "fan" for the last one (nearest: "main", "fan"); got "chimny"',
      ],
      [
        "a To left blank",
        [main, makeRun("saw", "")],
        'To of run "saw" must be the name of another run, or "fan" for the last one (nearest: "fan", "main"); got a blank cell',
      ],
      [
        "a suction run that joins the discharge side",
        [main, chimney, makeRun("saw", "chimney")],
        'To of run "saw" must be a suction run or "fan": that run is on the discharge side; got "chimney"',
      ],
      [
        "a discharge run that joins the suction side",
        [main, makeRun("chimney", "main", { side: "discharge" })],
        'To of run "chimney" must be blank, "outside" or another discharge run; got "main"',
      ],
      [
        "a discharge run to nowhere",
        [main, makeRun("chimney", "roof", { side: "discharge" })],
        'To of run "chimney" must be blank, "outside" or another discharge run; got "roof"',
      ],
      ["no run at all", [], 'To must be "fan" in one row: no run ends at the fan; got a blank cell'],
      ["no last run", [chimney], 'To must be "fan" in one row: no run ends at the fan; got a blank cell'],
      [
        "two last runs",
        [main, makeRun("saw", "fan")],
        'To must be "fan" in one row only: run "main" and run "saw" both end there, so let one join the other; got "fan"',
      ],
      [
        "a loop",
        [main, makeRun("a", "b"), makeRun("b", "c"), makeRun("c", "a"), makeRun("saw", "a")],
        'To of run "a" must be a way to the fan: these runs join each other in a loop; got "b"',
      ],
      [
        "a run that joins itself",
        [main, makeRun("a", "a")],
        'To of run "a" must be a way to the fan: these runs join each other in a loop; got "a"',
      ],
      [
        "a hood that another run joins",
        [main, { ...saw, hood: 0.93 }, makeRun("hose", "saw")],
        'Hood of run "saw" must be left blank: a hood is an open end, and another run joins this one; got "hose"',
      ],
    ])("%s", (_, runs, message) => {
      expectRefusal(() => buildNetwork(runs), DomainError, message);
    });

    test("more rows than a workshop has", () => {
      const runs = Array<Run>(MOST_RUNS + 1).fill(main);
      expectRefusal(() => buildNetwork(runs), DomainError, "runs must be at most 20000 rows; got 20001");
    });

    test("a loop anywhere in a random tree", () => {
      fc.assert(
        fc.property(trees, fc.nat(), (runs, pick) => {
          const { joins, last } = buildNetwork(runs);
          const others = runs.map((_, index) => index).filter((index) => index !== last);
          fc.pre(others.length > 0);
          // the run below the last one on the way of a picked run now joins that picked run
          const start = others[pick % others.length]!;
          let below = start;
          while (joins[below] !== last) below = joins[below]!;
          const looped = runs.map((run, index) => ({
            ...run,
            hood: null,
            to: index === below ? runs[start]!.name : run.to,
          }));
          expect(() => buildNetwork(looped)).toThrow(
            /^To of run "r\d+" must be a way to the fan: these runs join each other in a loop; got "r\d+"$/,
          );
        }),
      );
    });
  });
});
