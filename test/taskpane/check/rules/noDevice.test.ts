import { foundIn } from "../../../support/books";

const RULE = "No filter";
const HEADER = ["Run", "To", "Diameter (mm)", "Airflow (m³/h)", "Device loss (Pa)", "Device airflow (m³/h)"];

const found = (...rows: (string | number | null)[][]) =>
  foundIn({ Runs: { rows: [HEADER, ...rows] } }).filter(({ rule }) => rule === RULE);

const saw = ["saw", "main", 125, 900, null, null];
const fan = (loss: string | number | null, airflow: number | null) => ["main", "fan", 150, null, loss, airflow];

describe("ducts without a separator, filter or bag", () => {
  const told = { rule: RULE, what: "No separator, filter or bag is counted.", sheet: "Runs" };

  test("are told, beside the run that joins the fan", () => {
    expect(found(saw, fan(null, null))).toEqual([{ ...told, at: "E3" }]);
    expect(found(fan(null, null), saw)).toEqual([{ ...told, at: "E2" }]);
  });

  test("are not where one run has a device, or a 0 says that there is none", () => {
    expect(found(saw, fan(500, 1500))).toEqual([]);
    expect(found(saw, fan(0, null))).toEqual([]);
    expect(found(saw, fan("0", null))).toEqual([]);
  });

  test("are not in a table that has no column for one", () => {
    const rows = [
      ["Run", "To", "Diameter (mm)", "Airflow (m³/h)"],
      ["saw", "fan", 125, 900],
    ];
    expect(foundIn({ Runs: { rows } }).filter(({ rule }) => rule === RULE)).toEqual([]);
  });
});
