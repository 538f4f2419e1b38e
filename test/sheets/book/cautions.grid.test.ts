import { machines } from "../../../src/reference/machines";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import { gridOfBook } from "../../support/gridOfBook";
import { type SheetKey, sheetKeys, usualNames } from "../../../src/sheets/sheetKeys";

const book = budgetBook({ units: "IP", sheets: sheetKeys, contents: "example" }, { sheets: [], names: [] });

/** The texts above the first table of a sheet. */
const headOf = (key: SheetKey): string =>
  book.sheets
    .find(({ name }) => name === usualNames[key])!
    .cells.flatMap((cell) => ("value" in cell && /^[A-D][1-5]$/.test(cell.at) ? [String(cell.value)] : []))
    .join("\n");

describe("cautions stand where the task is", () => {
  test.each<[SheetKey, readonly RegExp[]]>([
    ["tables", [/Nothing that grinds metal on a duct that carries wood dust/, /Plastic pipe charges itself/]],
    ["readings", [/Power off, all at rest/, /open inlet/]],
    ["fan", [/Never turn a wheel faster than its maker allows/, /flue/]],
    ["flow", [/Power off before you reach/, /No grinding on a wood duct/, /not yet capture/]],
    ["leaks", [/Cut the power and let the wheel stop/]],
  ])("at the head of the sheet %s", (key, says) => {
    for (const words of says) expect(headOf(key)).toMatch(words);
    if (key !== "leaks") expect(headOf(key)).toMatch(/More: Cautions\./);
  });

  test("and speak of the sheet Cautions only where it is there", () => {
    const alone = budgetBook({ units: "SI", sheets: ["readings"], contents: "empty" }, { sheets: [], names: [] });
    const texts = alone.sheets.flatMap(({ cells }) => cells.flatMap((cell) => ("value" in cell ? [cell.value] : [])));
    expect(texts.some((value) => String(value).includes("Power off, all at rest"))).toBe(true);
    expect(texts.filter((value) => String(value).includes("More: "))).toEqual([]);
  });

  test("in every row of a wheel, disc or belt for metal", () => {
    const metal = machines.filter(({ key }) => /wheel|^belt|disc grinder/.test(key) && !key.includes("sander"));
    expect(metal.length).toBeGreaterThan(15);
    for (const { note } of metal) expect(note).toMatch(/Never on a duct that carries wood dust: sparks light it\./);
  });

  test("at the head of Runs as soon as a run is of plastic pipe", () => {
    const shows = gridOfBook(
      budgetBook({ units: "IP", sheets: ["runs"], contents: "example" }, { sheets: [], names: [] }),
    );
    expect(shows.value("Runs", "C4")).toBe("");
    shows.type("Runs", "K9", "PVC");
    expect(shows.value("Runs", "K8")).toBe("Material");
    expect(shows.value("Runs", "C4")).toMatch(/^Plastic pipe: dust charges it/);
    shows.type("Runs", "K9", "plastic coated pipe");
    expect(shows.value("Runs", "C4")).toBe("");
  });
});
