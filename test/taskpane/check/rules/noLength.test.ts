import { foundIn } from "../../../support/books";

const RULE = "No length";
const HEADER = ["Run", "To", "Diameter (mm)", "Length (m)", "Flex (m)", "Airflow (m³/h)"];

const found = (...rows: (string | number | null)[][]) =>
  foundIn({ Runs: { rows: [HEADER, ...rows] } }).filter(({ rule }) => rule === RULE);

const main = ["main", "fan", 125, 4, null, null];

describe("a run whose length was left blank", () => {
  test("is told, since it counts as none", () => {
    expect(found(["saw", "main", 125, null, null, 900], main)).toEqual([
      { rule: RULE, what: "saw has no length: it counts as 0.", sheet: "Runs", at: "D2" },
    ]);
    expect(found(["saw", "main", 125, 3, null, 900], ["main", "fan", 125, null, null, null])).toMatchObject([
      { what: "main has no length: it counts as 0.", at: "D3" },
    ]);
  });

  test("is not where a 0 was typed, or the run is all hose", () => {
    expect(found(["saw", "main", 125, 0, null, 900], main)).toEqual([]);
    expect(found(["saw", "main", 125, null, 2, 900], main)).toEqual([]);
    expect(found(["saw", "main", 125, null, "2 as it hangs", 900], main)).toEqual([]);
  });

  test("is not in a table that has no lengths at all", () => {
    const rows = [
      ["Run", "To", "Diameter (mm)", "Airflow (m³/h)"],
      ["saw", "fan", 125, 900],
    ];
    expect(foundIn({ Runs: { rows } }).filter(({ rule }) => rule === RULE)).toEqual([]);
  });
});
