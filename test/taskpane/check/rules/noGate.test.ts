import { foundIn } from "../../../support/books";

const RULE = "No gate";
const HEADER = ["Run", "To", "Diameter (mm)", "Airflow (m³/h)", "Gate", "Leak (mm²)", "Leak open", "Leak shut"];

const found = (...saw: (string | number | null)[]) =>
  foundIn({
    Runs: { rows: [HEADER, ["saw", "main", 125, 900, ...saw], ["main", "fan", 125, null, null, 40, null, null]] },
  }).filter(({ rule }) => rule === RULE);

describe("a leak of a gate beside a run without one", () => {
  test("is told, since it counts for nothing", () => {
    expect(found(null, null, "open bare slot", null)).toEqual([
      {
        rule: RULE,
        what: "saw has a leak under Leak open but no gate: it is not counted.",
        sheet: "Runs",
        at: "G2",
      },
    ]);
    expect(found(null, 30, null, 200)).toMatchObject([
      { what: "saw has a leak under Leak shut but no gate: it is not counted.", at: "H2" },
    ]);
    expect(found(0, null, null, "shut seated")).toHaveLength(1); // some programs send a blank as 0
  });

  test("is none where a gate is told, or one that is refused, or no such leak is there", () => {
    expect(found("open", null, null, "shut seated")).toEqual([]);
    expect(found("ajar", null, null, "shut seated")).toEqual([]);
    expect(found(null, 30, null, null)).toEqual([]);
    expect(found(null, null, 0, 0)).toEqual([]);
  });
});
