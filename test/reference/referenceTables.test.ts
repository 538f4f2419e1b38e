import { referenceTables, TABLES_DATE } from "../../src/reference";
import { sources } from "../../src/reference/sources";
import { repeated, typed } from "./allRows";

const named = referenceTables.map((table) => [table.name, table] as const);

/** A cell by table, key and header. */
function cell(name: string, key: string, column: string, unit = ""): string | number | null {
  const table = referenceTables.find((one) => one.name === name)!;
  const place = table.columns.findIndex((one) => one.name === column && one.unit === unit);
  expect(place).toBeGreaterThanOrEqual(0);
  return table.rows.find((row) => row[0] === key)![place]!;
}

describe("the tables of REFERENCE", () => {
  test("are these, by the names that people type", () => {
    expect(referenceTables.map((table) => table.name)).toEqual([
      "materials",
      "fittings",
      "hoods",
      "transport",
      "machines",
      "leakage",
      "gates",
      "dampers",
      "filters",
      "devices",
      "traverse",
      "meters",
      "input errors",
      "claims",
      "exposure",
      "hazards",
      "trade sizes",
      "cautions",
      "units",
      "sources",
    ]);
  });

  test("carry their date", () => {
    expect(TABLES_DATE).toBe("2026-11-25");
  });
});

describe.each(named)("the table %s", (_name, table) => {
  test("is a rectangle with rows", () => {
    expect(table.rows.length).toBeGreaterThan(0);
    expect(table.rows.filter((row) => row.length !== table.columns.length)).toEqual([]);
  });

  test("has headers that differ, key first, label second, trust last", () => {
    const headers = table.columns.map(({ name, unit }) => `${name} (${unit})`);
    expect(repeated(headers)).toEqual([]);
    const names = table.columns.map(({ name }) => name);
    expect(names.slice(0, 2)).toEqual(["key", "label"]);
    expect(names.slice(-4)).toEqual(["basis", "weak", "source", "where"]);
  });

  test("has keys that differ, whatever the case, blanks and hyphens", () => {
    expect(repeated(table.rows.map((row) => typed(String(row[0]))))).toEqual([]);
  });

  test("has cells that are text, finite numbers or empty", () => {
    const odd = table.rows.flat().filter((value) => typeof value === "number" && !Number.isFinite(value));
    expect(odd).toEqual([]);
    expect(table.rows.flat().filter((value) => value === undefined)).toEqual([]);
  });

  test("names only sources that stand in the list of sources", () => {
    const titles: string[] = Object.values(sources).map((source) => source.title);
    const place = table.columns.length - 2;
    expect(table.rows.filter((row) => !titles.includes(String(row[place])))).toEqual([]);
  });

  test("never starts a cell like a formula", () => {
    const texts = table.rows.flat().filter((value) => typeof value === "string");
    expect(texts.filter((value) => /^[=+\-@]/.test(value))).toEqual([]);
  });
});

describe("cells of the tables", () => {
  test("show a roughness in mm and in inches: 0.0005 ft is 0.1524 mm and 0.006 in", () => {
    expect(cell("materials", "galvanised steel", "roughness", "mm")).toBe(0.1524);
    expect(cell("materials", "galvanised steel", "roughness", "in")).toBe(0.006);
  });

  test("show a velocity in m/s and fpm: 4000 fpm is 20.32 m/s", () => {
    expect(cell("transport", "heavy dust", "low", "m/s")).toBe(20.32);
    expect(cell("transport", "heavy dust", "low", "fpm")).toBe(4000);
    expect(cell("transport", "heavy moist waste", "high", "fpm")).toBeNull();
  });

  test("show an airflow in m³/h and cfm", () => {
    expect(cell("machines", "pendulum saw", "airflow", "m³/h")).toBe(820);
    expect(Math.round(Number(cell("machines", "pendulum saw", "airflow", "cfm")))).toBe(483); // as printed beside it
  });

  test("name each printed coefficient as a person types it", () => {
    expect(cell("fittings", "elbow smooth 1.5", "coefficient")).toBe(0.15);
    expect(cell("fittings", "elbow stamped 100 mm 45", "coefficient")).toBe(0.13);
    expect(cell("fittings", "elbow stamped 254 mm 90", "diameter", "in")).toBe(10);
    expect(cell("fittings", "branch 45", "coefficient")).toBe(0.28);
    expect(cell("hoods", "plain end", "coefficient")).toBe(0.93);
    expect(cell("hoods", "cone 0.25 60", "coefficient")).toBe(0.17);
  });

  test("say what is weak", () => {
    expect(cell("fittings", "branch 45", "weak")).toBe("");
    expect(cell("fittings", "branch 30", "weak")).toBe("weak");
    expect(cell("gates", "open bare slot", "weak")).toBe("weak");
  });

  test("show each system's leakage class in its own unit", () => {
    expect(cell("leakage", "en a", "coefficient", "L/(s m²) per Pa^0.65")).toBe(0.027);
    expect(cell("leakage", "en a", "class", "cfm per 100 ft² at 1 in.w.g.")).toBeNull();
  });

  test("show a limit in mg/m³, a pressure drop in Pa and in.w.g., and a unit's definition in full", () => {
    expect(cell("exposure", "uk hardwood", "limit", "mg/m³")).toBe(3);
    expect(cell("filters", "cyclone pressure drop", "high", "SI")).toBe(1493.04);
    expect(cell("filters", "cyclone pressure drop", "high", "I-P")).toBe(6);
    expect(cell("units", "airflow cfm", "one of it in SI")).toBe(0.0004719474432); // NIST SP 811: 0.4719474432 L/s
  });
});
