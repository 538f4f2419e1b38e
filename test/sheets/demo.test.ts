import { lossFamilies } from "../../src/reference/lossFamilies";
import { gateConditions } from "../../src/reference/gateConditions";
import { materials } from "../../src/reference/materials";
import { placeOf } from "../../src/sheets/address";
import { demo } from "../../src/sheets/demo";
import { shedRuns } from "../../src/sheets/demo/shed";
import type { Sheet, SheetCell } from "../../src/sheets/workbook";

const sheets = demo.sheets.map((sheet) => [sheet.name, sheet] as const);
const formulas = (sheet: Sheet): string[] => sheet.cells.flatMap((cell) => ("formula" in cell ? [cell.formula] : []));
const valueAt = (sheet: Sheet, at: string): unknown => {
  const cell: SheetCell | undefined = sheet.cells.find((one) => one.at === at);
  return cell !== undefined && "value" in cell ? cell.value : undefined;
};

describe("the demo workbook", () => {
  test("says that it is invented on its first sheet's first line", () => {
    expect(valueAt(demo.sheets[0]!, "C1")).toMatch(/^Invented for trying out: a shared boat-building shed\. No such/);
  });

  test.each(sheets)("%s: each cell stands once, and every address is one", (_, sheet) => {
    const addresses = sheet.cells.map(({ at }) => at);
    expect(new Set(addresses).size).toBe(addresses.length);
    addresses.forEach((at) => expect(() => placeOf(at)).not.toThrow());
  });

  test.each(sheets)("%s: formulas avoid what one of the spreadsheets reads differently or not at all", (_, sheet) => {
    for (const code of formulas(sheet)) {
      expect(code).toMatch(/^=/);
      expect(code).not.toMatch(/LOG10|LET\(|LAMBDA\(|XLOOKUP|FILTER\(|AGGREGATE/);
      expect(code).not.toMatch(/\[|#/); // table references, spill references
      expect(code).not.toMatch(/(^|[=(,*/+<>&-])-[A-Z0-9.$]+\^/); // -2^2 is 4 in one and -4 in another
      expect(code.replace(/"[^"]*"/g, "").split("(").length).toBe(code.replace(/"[^"]*"/g, "").split(")").length);
    }
  });

  test.each(sheets)(
    "%s: no formula but the one of a table keeps a custom function inside a flag or a list",
    (_, sheet) => {
      const texts = [
        ...sheet.flags.map(({ containsText }) => containsText),
        ...sheet.lists.flatMap(({ choices }) => choices),
      ];
      texts.forEach((words) => expect(words).not.toMatch(/DUCT\./));
    },
  );

  test("a named cell is filled, and every function that has units is told them", () => {
    for (const { sheet, at } of demo.names) {
      expect(
        valueAt(
          demo.sheets.find(({ name }) => name === sheet)!,
          at,
        ),
      ).not.toBeUndefined();
    }
    expect(formulas(demo.sheets[0]!).filter((code) => code.includes("DUCT."))).toEqual([
      "=DUCT.BUDGET(B10:S22,density,units)",
    ]);
  });

  test("each example of the single cells shows the formula that it computes", () => {
    const sheet = demo.sheets[2]!;
    const examples = sheet.cells.filter(
      (cell) => "formula" in cell && /^C([5-9]|1\d)$/.test(cell.at) && placeOf(cell.at).row < 14,
    );
    expect(examples.length).toBe(9);
    for (const cell of examples)
      expect(valueAt(sheet, cell.at.replace("C", "B"))).toBe("formula" in cell ? cell.formula : "");
  });

  test("nothing fills the cells that BUDGET spills into: 13 columns, a header, twelve rows and the fan", () => {
    const inTheWay = demo.sheets[0]!.cells.filter((cell) => {
      const { column, row } = placeOf(cell.at);
      const inside = column >= 2 && column <= 14 && row >= 26 && row <= 39 && cell.at !== "B26";
      return inside && ("formula" in cell || cell.value !== null);
    });
    expect(inTheWay).toEqual([]);
  });
});

describe("the invented shed", () => {
  const names = new Set(shedRuns.map((run) => run.Run));

  test("has the machines, the two mains, the separator before the fan and the filter after it", () => {
    const machines = ["band saw", "planer", "drum sander", "router table"];
    for (const name of [...machines, "north main", "south main", "separator", "filter"]) expect(names).toContain(name);
    expect(shedRuns.find((run) => run.Run === "separator")).toMatchObject({ To: "fan", Side: "suction" });
    expect(shedRuns.find((run) => run.Run === "filter")).toMatchObject({ To: "outside", Side: "discharge" });
    expect(shedRuns.filter((run) => run.To === "fan").length).toBe(1);
  });

  test("uses only names that the tables have", () => {
    const named = new Set(lossFamilies.flatMap(({ key, aliases }) => [key, ...aliases]));
    for (const run of shedRuns) {
      expect(materials.map(({ key }) => key)).toContain(run.Material);
      if (run.Hood !== undefined) expect(named).toContain(run.Hood);
      for (const [column, state] of [
        ["Leak open", "open"],
        ["Leak shut", "shut"],
      ] as const) {
        if (run[column] === undefined) continue;
        expect(gateConditions.find(({ key }) => key === run[column])?.state).toBe(state);
      }
      expect(run.To === "fan" || run.To === "outside" || names.has(run.To)).toBe(true);
    }
  });
});
