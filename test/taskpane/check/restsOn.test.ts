import { restsOn } from "../../../src/taskpane/check/named/restsOn";
import { runsWith, seenOf, type SheetOfTest, soundRuns } from "../../support/books";

const said = (sheets: Record<string, SheetOfTest>, names: Parameters<typeof seenOf>[1] = []): string =>
  restsOn(seenOf(sheets, names));
const call = (formula: string, row: SheetOfTest["rows"][number] = [1]): string =>
  said({ One: { rows: [row], formulas: { A1: formula } } });

const END = ". Measure, or look them up, before much hangs on them.";

describe("what a book rests on", () => {
  // Of the sound runs: hose and branch 30 are from memory, the state of a gate is an estimate; elbows, flanged ends and the
  // dust are read.
  test("is told of a runs table: each name once, memory and estimates apart", () => {
    expect(said({ Runs: { rows: soundRuns } })).toBe(
      `Rests on 2 values from memory: branch 30, hose; and on 1 value of common practice: shut seated${END}`,
    );
  });

  test("is nothing where all was seen in print", () => {
    const rows = [
      ["Run", "To", "Airflow (cfm)", "Diameter (in)", "Hood", "Fittings", "Material"],
      ["saw", "fan", 400, 4, "plain end", "elbow 1.5; branch 45; 0.4", "pvc"],
    ];
    expect(said({ Runs: { rows } })).toBe("");
    expect(said({ Empty: { rows: [] } })).toBe("");
  });

  test.each([
    ["Material", "flexible metal duct", "flexible duct metallic"],
    ["Hood", "tapered hood 45", "tapered hood round 45"],
    ["Fittings", "mitre 45", "mitre 45"],
    ["Fittings", "mitre 50", "mitre 50"],
    ["Fittings", "mitre", "mitre"],
    ["Dust", "sawdust hsg258", "light dust hsg258"],
  ])("sees %s %s in its row", (column, name, expected) => {
    const rows = [
      ["Run", "To", "Airflow (cfm)", "Diameter (in)", "Hood", "Fittings", "Material", "Dust"],
      ["saw", "fan", 400, 4, "", "", "", ""],
    ];
    rows[1]![rows[0]!.indexOf(column)] = name;
    expect(said({ Runs: { rows } })).toBe(`Rests on 1 value from memory: ${expected}${END}`);
  });

  test("takes a fitting that goes by diameter at the duct's own", () => {
    // CD3-5 at 90 degrees: 250 mm is from memory, 100 mm is read; 4 in lie between 100 and 150 mm, both read.
    const pleated = (inches: number) => runsWith("main", "Fittings", "elbow pleated").map((row, at) => (at === 3 ? row.map((cell, i) => (i === 3 ? inches : cell)) : row)); // prettier-ignore
    expect(said({ Runs: { rows: pleated(9.84) } })).toContain("elbow pleated");
    expect(said({ Runs: { rows: pleated(5) } })).not.toContain("elbow pleated");
  });

  test.each([
    ['=DUCT.LOSSCOEFFICIENT("branch",,30)', "1 value from memory: branch 30"],
    ['=2*DUCT.LOSSCOEFFICIENT("mitre",,45)', "1 value from memory: mitre 45"],
    [
      '=DUCT.FITTINGLOSS(400,4,"branch 30; elbow drain")',
      "1 value from memory: branch 30; and on 1 value of common practice: elbow drain",
    ],
    ['=DUCT.HOODSUCTION(400,4,"booth")', "1 value from memory: booth"],
    ['=DUCT.FRICTION(400,4,"hose")', "1 value from memory: hose"],
    ['=_xldudf_DUCT_RUNLOSS(400,4,3,"hose")', "1 value from memory: hose"],
    ['=DUCT.EQUIVLENGTH("branch 60",400,4)', "1 value from memory: branch 60"],
    ['=DUCT.GATELEAK("open bare slot",6,3)', "1 value of common practice: open bare slot"],
    ['=INDEX(DUCT.REFERENCE("machines","lathe","airflow (cfm)"),1,1)', "1 value from memory: lathe"],
    ['=DUCT.REFERENCE("exposure","alberta","region")', "1 value not read: alberta"],
    ['=DUCT.VELOCITY(400,DUCT.LOSSCOEFFICIENT("branch 30"))', "1 value from memory: branch 30"],
  ])("is told of %s", (formula, expected) => {
    expect(call(formula)).toBe(`Rests on ${expected}${END}`);
  });

  test.each([
    '=DUCT.LOSSCOEFFICIENT("branch")',
    '=DUCT.FRICTION(400,4,"pvc")',
    "=DUCT.AREA(4)",
    '="branch 30"',
    "=DUCT.(",
    '=DUCT.REFERENCE("materials")',
    '=DUCT.LOSSCOEFFICIENT("no such fitting")',
  ])(
    // prettier-ignore
    "has nothing to tell of %s",
    (formula) => {
      expect(call(formula)).toBe("");
    },
  );

  test("reads the names in the cells that a call refers to, by address, range or name", () => {
    const rows = [
      [1, "booth", "hose"],
      [1, "trap"],
    ];
    const of = (formula: string) => said({ One: { rows, formulas: { A1: formula } } }, [{ name: "entry", sheet: "One", at: "B2" }]); // prettier-ignore
    expect(of("=DUCT.HOODSUCTION(400,4,B1)")).toContain(" from memory: booth.");
    expect(of("=DUCT.HOODSUCTION(400,4,One!B1:B2)")).toContain("2 values from memory: booth, trap.");
    expect(of("=DUCT.HOODSUCTION(400,4,entry)")).toContain(" from memory: trap.");
    expect(of("=DUCT.FRICTION(400,4,C1)")).toContain(" from memory: hose.");
    expect(of("=DUCT.FRICTION(400,4,C1:XFD1048576)")).toContain(" from memory: hose.");
  });

  test("reads a diameter in the units of the call", () => {
    expect(call('=DUCT.LOSSCOEFFICIENT("elbow pleated",250,,"SI")')).toContain("elbow pleated");
    expect(call('=DUCT.LOSSCOEFFICIENT("elbow pleated",100,,"SI")')).toBe("");
    expect(call('=DUCT.LOSSCOEFFICIENT("elbow pleated",5)')).toBe("");
  });
});
