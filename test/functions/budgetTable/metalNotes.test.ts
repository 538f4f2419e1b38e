import "../../support/customFunctions";
import { budget } from "../../../src/functions/systems/budget";
import { byName, type Row, table } from "../../support/tables";

const CERTAIN = "metal with wood: sparks or metal and dust that burns share this duct";
const LIKELY = "metal with wood: by their names, sparks and dust that burns may share this duct";

const hood = (Run: string, To: string, rest: Row = {}): Row => ({
  Run,
  To,
  Diameter: 4,
  Length: 3,
  Hood: "plain end",
  Airflow: 400,
  Gate: "open",
  ...rest,
});
const carrier = (Run: string, To: string, rest: Row = {}): Row => ({ Run, To, Diameter: 6, Length: 5, ...rest });

/** What BUDGET notes of each run about metal and wood, by its name. */
const told = (rows: readonly Row[]): Record<string, string> =>
  Object.fromEntries(
    Object.entries(byName(budget(table(rows), [[null]], [["IP"]])))
      .map(([run, { Note: note }]) => [
        run,
        String(note)
          .split("; ")
          .filter((part) => part.startsWith("metal"))
          .join("; "),
      ])
      .filter(([, note]) => note !== ""),
  );

describe("a grinder and a saw on one main", () => {
  test("get a note at the main, certain where the grinder's dust is typed", () => {
    const rows = [hood("saw", "main"), hood("wheel", "main", { Dust: "grinding branch" }), carrier("main", "fan")];
    expect(told(rows)).toEqual({ main: CERTAIN });
  });

  test("likely by the grinder's name or hood, also where one dust is typed for all", () => {
    for (const Dust of [null, "wood dust"]) {
      const main = carrier("main", "fan", { Dust });
      expect(told([hood("saw", "main", { Dust }), hood("bench grinder", "main", { Dust }), main])).toEqual({
        main: LIKELY,
      });
      expect(
        told([hood("saw", "main", { Dust }), hood("corner", "main", { Dust, Hood: "grinder hood" }), main]),
      ).toEqual({
        main: LIKELY,
      });
    }
  });

  test("on mains of their own get it where the mains meet, and only there; a shut gate changes nothing", () => {
    const rows = [
      hood("saw", "wood main"),
      hood("wheel", "metal main", { Dust: "abrasive dust branch", Gate: "shut" }),
      carrier("wood main", "trunk"),
      carrier("metal main", "trunk"),
      carrier("trunk", "separator"),
      carrier("separator", "fan"),
    ];
    expect(told(rows)).toEqual({ trunk: CERTAIN });
  });

  test("stand beside the other notes of the run", () => {
    const rows = [
      hood("saw", "main"),
      hood("wheel", "main", { Dust: "grinding branch" }),
      carrier("main", "fan", { Diameter: 12 }),
    ];
    const { main } = byName(budget(table(rows), [[null]], [["IP"]]));
    // 800 cfm in 12 in: 800 / 0.7854 ft² = 1019 fpm
    expect(main!.Note).toBe(`dust settles: "wood dust" needs 3937 fpm; ${CERTAIN}`);
  });
});

describe("nothing is said", () => {
  test.each<[string, readonly Row[]]>([
    ["of wood alone", [hood("saw", "main"), hood("planer", "main", { Dust: "planer chips" }), carrier("main", "fan")]],
    [
      "of grinding alone",
      ["a", "b"].map((run) => hood(run, "main", { Dust: "grinding branch" })).concat(carrier("main", "fan")),
    ],
    [
      "of one dust for all that may be either",
      ["a", "b"].map((run) => hood(run, "main", { Dust: "heavy dust" })).concat(carrier("main", "fan")),
    ],
    [
      "of a sander that borrows a grinder's hood",
      [hood("saw", "main"), hood("disc sander", "main", { Hood: "grinder hood" }), carrier("main", "fan")],
    ],
    [
      "across the fan, where no duct is shared",
      [hood("saw", "fan"), { Run: "stack", To: "outside", Side: "discharge", Diameter: 6, Dust: "grinding main" }],
    ],
  ])("%s", (_, rows) => expect(told(rows)).toEqual({}));
});
