import { DomainError } from "../../../src/core/errors";
import type { Cell } from "../../../src/functions/cells";
import { cellOf, findColumns } from "../../../src/functions/runsTable/columns";
import { expectRefusal } from "../../support/coreRefusal";

const HEADERS = ["Run", "To", "Diameter"];

describe("columns by their headers", () => {
  test.each<[Cell[], object]>([
    [HEADERS, { Run: 0, To: 1, Diameter: 2 }],
    [["diameter", "RUN", " to "], { Run: 1, To: 2, Diameter: 0 }],
    [[...HEADERS, "Leak open [mm²]", "Device loss (clean) (Pa)"], { Run: 0, To: 1, Diameter: 2, "Leak open": 3, "Device loss": 4 }],
    [[...HEADERS, "Remark", null, 7, true, "device-loss"], { Run: 0, To: 1, Diameter: 2, "Device loss": 7 }],
    [["(of the shed) Run", ...HEADERS.slice(1)], { Run: 0, To: 1, Diameter: 2 }],
  ])("%j", (header, places) => expect(findColumns([header], "SI")).toEqual(places)); // prettier-ignore

  const needs = "runs must be a table whose first row has the headers Run, To and Diameter";
  test.each<[Cell[], string]>([
    [["Run", "Too", "Diameter"], `${needs} (To is missing; the nearest header there is "Too"); got "Run"`],
    [["Run", "To", 4], `${needs} (Diameter is missing); got "Run"`],
    [[null, "To", "Diameter"], `${needs} (Run is missing); got a blank cell`],
    [["Run", "To"], `${needs} (Diameter is missing); got "Run"`],
    [["Run", "To", `Diameter ${"x".repeat(40)}`], `${needs} (Diameter is missing; the nearest header there is "Diameter ${"x".repeat(21)}"); got "Run"`],
    [[...HEADERS, "Leak", "leak (in²)"], 'runs must be headed by each column once, not twice; got "Leak"'],
  ])("refused: %j", (header, sentence) => expectRefusal(() => findColumns([header], "IP"), DomainError, sentence)); // prettier-ignore

  // Left out without a word, each would make another number: a duct without its length, a gate that is open.
  test.each([
    ["Diamter", "Diameter"],
    ["Lenght (ft)", "Length"],
    ["Lengths", "Length"],
    ["Length ft", "Length"],
    ["Length, m", "Length"],
    ["Flex in ft", "Flex"],
    ["Device loss, in Pa", "Device loss"],
    ["Device loss in wg", "Device loss"],
    ["Device loss, in of water", "Device loss"],
    ["Leak in sq. in.", "Leak"],
    ["Hose, ft", "Flex"],
    ["Flex hose (ft)", "Flex"],
    ["Hose length (ft)", "Flex"],
    ["Length:", "Length"],
    ["Fitting", "Fittings"],
    ["Airflw (cfm)", "Airflow"],
    ["Leaks", "Leak"],
    ["Leak shutt", "Leak shut"],
    ["Gates", "Gate"],
    ["Gaet", "Gate"],
    ["Hoods", "Hood"],
    ["Hose (ft)", "Flex"],
    ["Device los", "Device loss"],
    ["Port-suctions", "Port suction"],
  ])("a misspelt header is refused: %s", (header, name) => {
    const others = HEADERS.filter((one) => one !== name);
    expectRefusal(
      () => findColumns([[...others, header]], "IP"),
      DomainError,
      `a header of runs must be spelt "${name}", a unit in brackets, or another word if it is your own; got "${header}"`,
    );
  });

  // As above: with the header of Flex cleared, hoses are none; with that of Gate, gates stand open.
  test.each<[Cell, Cell]>([
    [null, 3],
    [0, 3], // as some hosts send a blank
    [" ", "open"],
    ["(ft)", 3],
  ])("a header that was cleared over a filled column is refused: %j", (header, cell) => {
    const table = [["Run", "To", header, "Diameter"], ["saw", "fan", null, 4], ["planer", "fan", cell, 4]]; // prettier-ignore
    const sentence = "runs must be headed in each column that is filled (column 3 is not); got a blank cell";
    expectRefusal(() => findColumns(table, "IP"), DomainError, sentence);
  });

  test("but one over nothing is not, nor what stands beside the table", () => {
    const rows = (header: Cell[], ...row: Cell[]) => Object.keys(findColumns([header, row], "IP"));
    expect(rows(["Run", "To", null, "Diameter"], "saw", "fan", null, 4)).toHaveLength(3);
    expect(rows(["Run", "To", null, "Diameter"], "saw", "fan", 0, 4)).toHaveLength(3);
    expect(rows(["Run", "To", 7, "Diameter"], "saw", "fan", 5, 4)).toHaveLength(3); // headed, by a number
    expect(rows([null, ...HEADERS, null], "ok", "saw", "fan", 4, "a remark")).toHaveLength(3);
  });

  test("but a column of one's own is none of ours", () => {
    const own = ["Size", "Wood", "Slide", "Date", "Gate no", "Leak notes", "Notes", "Cost", "Ft", "Total", "Look", "Flow", "Lathe", "Hose"]; // prettier-ignore
    expect(findColumns([[...HEADERS, "Flex", ...own]], "IP")).toEqual({ Run: 0, To: 1, Diameter: 2, Flex: 3 });
  });

  test("a leak of one state of the gate is no leak of both", () => {
    for (const header of ["Leak (shut)", "Leak (gate open)", "leak [when closed, in²]"])
      expectRefusal(
        () => findColumns([[...HEADERS, header]], "IP"),
        DomainError,
        `a header of runs must be spelt "Leak open" or "Leak shut"; got "${header}"`,
      );
    expect(findColumns([[...HEADERS, "Leak shut (in²)"]], "IP")).toHaveProperty("Leak shut", 3);
    for (const header of ["Leak (open area, in²)", "Leak (openings)"])
      expect(findColumns([[...HEADERS, header]], "IP")).toHaveProperty("Leak", 3);
  });

  test("the unit of another quantity is refused: that column holds something else", () => {
    for (const [header, unit] of [
      ["Leak (cfm)", "in²"],
      ["Leak (in)", "in²"],
      ["Device loss (mm)", "in.w.g."],
      ["Length (in²)", "ft"],
    ])
      // prettier-ignore
      expectRefusal(
        () => findColumns([[...HEADERS, header!]], "IP"),
        DomainError,
        `a header of runs must be with (${unit}) or no unit in this call; got "${header}"`,
      );
    expect(findColumns([[...HEADERS, "Port suction (in)"]], "IP")).toHaveProperty("Port suction", 3); // of water
  });

  const IP = `or no unit in this call, unless its units are "SI"; got`;
  const SI = `or no unit in this call, unless its units are "IP"; got`;
  test.each<["IP" | "SI", string, string]>([
    ["IP", "Diameter (mm)", `with (in) ${IP}`],
    ["IP", "Length [m]", `with (ft) ${IP}`],
    ["IP", "Airflow (m3/h)", `with (cfm) ${IP}`],
    ["IP", "Device loss (clean) (Pa)", `with (in.w.g.) ${IP}`],
    ["IP", "Leak (mm²)", `with (in²) ${IP}`],
    ["IP", "Material (mm)", `with (in) ${IP}`],
    ["IP", "Length (in)", "with (ft) or no unit in this call; got"], // neither system has it
    ["SI", "Diameter (inches)", `with (mm) ${SI}`],
    ["SI", "Flex (cm)", "with (m) or no unit in this call; got"],
    ["SI", "Port suction (in. w.g.)", `with (Pa) ${SI}`],
    ["SI", "Port suction (in)", `with (Pa) ${SI}`], // inches of a pressure are those of water
    ["IP", "Diameter (millimetres)", `with (in) ${IP}`], // written out
    ["IP", "Airflow (m³ per hour)", `with (cfm) ${IP}`],
    ["SI", "Airflow (cubic feet per minute)", `with (m³/h) ${SI}`],
    ["SI", "Airflow (m^3/min)", "with (m³/h) or no unit in this call; got"],
    ["IP", "Device loss (in. Hg)", "with (in.w.g.) or no unit in this call; got"], // in which nothing is read: 13.6 of water
    ["SI", "Port suction (daPa)", "with (Pa) or no unit in this call; got"],
    ["IP", "Airflow (cfs)", "with (cfm) or no unit in this call; got"],
    ["SI", "Airflow (m³)", "with (m³/h) or no unit in this call; got"], // an hour, a minute?
    ["IP", "Diameter (inside, mm)", `with (in) ${IP}`], // among words
    ["IP", "Diameter (in mm)", `with (in) ${IP}`],
    ["SI", "Diameter (ID, in)", `with (mm) ${SI}`],
    ["IP", "Length (total m)", `with (ft) ${IP}`],
    ["IP", "Length (yards)", "with (ft) or no unit in this call; got"],
    ["IP", "Airflow (wanted in m³/h)", `with (cfm) ${IP}`],
    ["SI", "Airflow (of it: cubic feet per minute)", `with (m³/h) ${SI}`],
    ["SI", "Device loss (clean, in. w.g.)", `with (Pa) ${SI}`],
    ["IP", "Device loss (clean, in. Hg)", "with (in.w.g.) or no unit in this call; got"],
    ["IP", "Leak (measured m³/h)", "with (in²) or no unit in this call; got"],
  ])("a header that tells another unit than the call's is refused: in %s %s", (system, header, must) =>
    expectRefusal(
      () => findColumns([["Run", "To", ...(header.startsWith("Diameter") ? [] : ["Diameter"]), header]], system),
      DomainError,
      `a header of runs must be ${must} "${header}"`,
    ),
  );

  test.each([
    "Length (feet)",
    "Length (ft)",
    "Airflow (CFM)",
    "Airflow (wanted)",
    "Airflow (m)",
    "Gate (m)",
    "K (1/m)",
    "Airflow (cu. ft. per min)",
    "Length (feet, by tape)",
    "Device loss (when clean)",
    "Leak (per gate)",
    "Leak (at 3 m/s)",
    "Leak (square inches)",
    "Leak (sq. inch in all)",
    "Length (in the wall)",
    "Length (of 100 mm pipe)",
    "Airflow (what it takes in)",
    "Airflow (cfm / hood)",
    "Airflow (wanted, cu. ft. per min)",
    "Device loss (clean, in. w.g.)",
  ])("%s is no other unit than that of an IP call", (header) =>
    expect(Object.keys(findColumns([[...HEADERS, header]], "IP"))).toHaveLength(4),
  );

  test.each(["sq mm", "in square millimetres", "mm²"])("Leak (%s) is in the unit of an SI call", (unit) =>
    expect(findColumns([[...HEADERS, `Leak (${unit})`]], "SI")).toHaveProperty("Leak", 3),
  );

  test("a cell of a column that is not there is blank, and so is a 0", () => {
    const row: Cell[] = ["saw", 0, "0"];
    const cell = (column: "Run" | "To" | "Diameter" | "Leak") =>
      cellOf([row], 0, findColumns([HEADERS], "IP"), column, true);
    expect([cell("Run"), cell("To"), cell("Diameter"), cell("Leak")]).toEqual(["saw", null, null, null]);
    expect(cellOf([["saw"]], 0, findColumns([HEADERS], "IP"), "Diameter", true)).toBeNull();
  });
});
