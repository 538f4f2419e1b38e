/** A copy that LibreOffice has just opened shows new numbers after the first change, without being told to compute everything. */
import { gridModel } from "../../src/hosts/local/gridModel";
import { shownWith } from "../../src/hosts/local/readGrid";
import { makeCopy } from "../../src/hosts/makeCopy";
import { budgetBook } from "../../src/sheets/book/budgetBook";
import { runCell, RUNS_FIRST } from "../../src/sheets/book/layout";
import { editsInOffice, type Seen } from "../support/editsInOffice";
import { gridOfBook } from "../support/gridOfBook";
import { hasLibreOffice } from "../support/libreOffice";

const LIST = "elbow 1.5; elbow 1.5; elbow 2; branch 30; elbow 1.5; elbow 2; elbow 1.5";

/** To nine digits: a sum that is computed in another order differs in its last. */
const rounded = (looks: readonly Seen[]) =>
  looks.map((rows) => rows.map((row) => row.map((cell) => (typeof cell === "number" ? cell.toPrecision(9) : cell))));

(hasLibreOffice ? test : test.skip)(
  "a longer list of fittings counts at once, as when everything is computed",
  async () => {
    const workbook = budgetBook({ units: "IP", sheets: ["budget"], contents: "example" }, { sheets: [], names: [] });
    const book = gridOfBook(workbook).calculated(workbook);
    const order = { kind: "formulas", date: "2026-11-29", version: "1.1.0" } as const;
    const copy = await makeCopy(
      book,
      order,
      (one) => shownWith(gridModel(one), one).shown,
      () => undefined,
    );
    if (!copy.made) throw new Error(copy.why);
    const typed = { sheet: "Runs", does: "type", at: runCell("Fittings", RUNS_FIRST), value: LIST } as const;
    const looks = [{ sheet: "Budget", range: "A9:Z20" }];
    const computed = { sheet: "Runs", does: "compute all" } as const;
    const [atOnce, all] = editsInOffice(copy.bytes, [[typed], [computed]], looks, true);
    const [before] = editsInOffice(copy.bytes, [[computed]], looks, true);
    expect(rounded(atOnce!)).not.toEqual(rounded(before!));
    expect(rounded(atOnce!)).toEqual(rounded(all!));
  },
);
