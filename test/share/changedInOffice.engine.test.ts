/** A copy that LibreOffice has just opened shows new numbers after the first change, without being told to compute everything. */
import { FLOW_FIRST } from "../../src/sheets/book/flow/flowLayout";
import { runCell, RUNS_FIRST } from "../../src/sheets/book/layout";
import { type Edit, editsInOffice, type Seen } from "../support/editsInOffice";
import { flowCopy } from "../support/flowCopy";
import { hasLibreOffice } from "../support/libreOffice";

const LIST = "elbow 1.5; elbow 1.5; elbow 2; branch 30; elbow 1.5; elbow 2; elbow 1.5";

/** To nine digits: a sum that is computed in another order differs in its last. */
const rounded = (rows: Seen) =>
  rows.map((row) => row.map((cell) => (typeof cell === "number" ? cell.toPrecision(9) : cell)));

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
    let before: readonly Seen[]; // of each change its look
    let after: readonly (readonly Seen[])[]; // of each change in turn: at once, and when everything is computed
    beforeAll(async () => {
      const { bytes } = await flowCopy();
      const steps = changes.flatMap(({ edit }): Edit[][] => [
        [
          { sheet: "", does: "open anew" },
          { ...edit, does: "type" },
        ],
        [computed],
      ]);
      [before = [], ...after] = editsInOffice(bytes, [[computed], ...steps], changes.map(({ look }) => look), true); // prettier-ignore
    });

    test.each(changes.map((change, index) => ({ ...change, index })))("$change", ({ index }) => {
      const [atOnce, all] = [after[2 * index]![index]!, after[2 * index + 1]![index]!];
      expect(rounded(atOnce)).not.toEqual(rounded(before[index]!));
      expect(rounded(atOnce)).toEqual(rounded(all));
    });
  },
);
