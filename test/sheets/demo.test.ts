import { placeOf } from "../../src/sheets/address";
import { demoBook } from "../../src/sheets/demo";
import { singleCellsSheet } from "../../src/sheets/demo/singleCellsSheet";
import { sheetKeys, usualNames } from "../../src/sheets/sheetKeys";

const demo = demoBook();

const valueAt = (at: string): unknown => {
  const cell = singleCellsSheet.cells.find((one) => one.at === at);
  return cell !== undefined && "value" in cell ? cell.value : undefined;
};

describe("the demo workbook", () => {
  test("is the whole budget, and single cells last", () => {
    expect(demo.sheets.map(({ name }) => name)).toEqual([...sheetKeys.map((key) => usualNames[key]), "Single cells"]);
  });

  test("says that it is invented on its first sheet", () => {
    const first = demo.sheets[0]!.cells.flatMap((cell) => ("value" in cell ? [cell.value] : []));
    expect(
      first.some((value) => String(value).startsWith("Invented for trying out: a shared boat-building shed. No such")),
    ).toBe(true);
  });

  test("each example of the single cells shows the formula that it computes", () => {
    const examples = singleCellsSheet.cells.filter(
      (cell) => "formula" in cell && /^C([5-9]|1\d)$/.test(cell.at) && placeOf(cell.at).row < 14,
    );
    expect(examples.length).toBe(9);
    for (const cell of examples) expect(valueAt(cell.at.replace("C", "B"))).toBe("formula" in cell ? cell.formula : "");
  });
});
