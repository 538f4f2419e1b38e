/** A copy that LibreOffice has just opened shows new numbers after the first change, without being told to compute everything. */
import { gridModel } from "../../src/hosts/local/gridModel";
import { shownWith } from "../../src/hosts/local/readGrid";
import { makeCopy } from "../../src/hosts/makeCopy";
import { budgetBook } from "../../src/sheets/book/budgetBook";
import { FLOW_FIRST } from "../../src/sheets/book/flow/flowLayout";
import { runCell, RUNS_FIRST } from "../../src/sheets/book/layout";
import type { SheetKey } from "../../src/sheets/sheetKeys";
import { editsInOffice, type Seen } from "../support/editsInOffice";
import { gridOfBook } from "../support/gridOfBook";
import { hasLibreOffice } from "../support/libreOffice";

const LIST = "elbow 1.5; elbow 1.5; elbow 2; branch 30; elbow 1.5; elbow 2; elbow 1.5";

async function copyOf(...sheets: readonly SheetKey[]): Promise<Uint8Array> {
  const workbook = budgetBook({ units: "IP", sheets, contents: "example" }, { sheets: [], names: [] });
  const order = { kind: "formulas", date: "2026-11-29", version: "1.1.0" } as const;
  const copy = await makeCopy(
    gridOfBook(workbook).calculated(workbook),
    order,
    (one) => shownWith(gridModel(one), one).shown,
    () => undefined,
  );
  if (!copy.made) throw new Error(copy.why);
  return copy.bytes;
}

/** To nine digits: a sum that is computed in another order differs in its last. */
const rounded = (looks: readonly Seen[]) =>
  looks.map((rows) => rows.map((row) => row.map((cell) => (typeof cell === "number" ? cell.toPrecision(9) : cell))));

(hasLibreOffice ? describe : describe.skip)(
  "the first change in a copy counts at once, as when everything is computed",
  () => {
    const computed = { sheet: "Runs", does: "compute all" } as const;
    const changes = [
      {
        change: "a longer list of fittings",
        edit: { sheet: "Runs", at: runCell("Fittings", RUNS_FIRST), value: LIST },
        look: { sheet: "Budget", range: "A9:Z20" },
      },
      {
        change: "a gate that is shut",
        edit: { sheet: "Flow", at: `A${FLOW_FIRST}`, value: "shut band saw" },
        look: { sheet: "Flow", range: "A1:I20" },
      },
    ] as const;
    let bytes: Uint8Array;
    let before: readonly Seen[]; // of each change its look
    beforeAll(async () => {
      bytes = await copyOf("budget", "flow");
      [before = []] = editsInOffice(bytes, [[computed]], changes.map(({ look }) => look), true); // prettier-ignore
    });

    test.each(changes.map((change, index) => ({ ...change, index })))("$change", ({ edit, look, index }) => {
      const typed = { ...edit, does: "type" } as const;
      const [atOnce, all] = editsInOffice(bytes, [[typed], [computed]], [look], true);
      expect(rounded(atOnce!)).not.toEqual(rounded([before[index]!]));
      expect(rounded(atOnce!)).toEqual(rounded(all!));
    });
  },
);
