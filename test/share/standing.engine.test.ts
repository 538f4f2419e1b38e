/** A copy has a formula in each cell of an answer: one that is typed or pasted over is told like a table that is, in LibreOffice, too. */
import { type Edit, editsInOffice } from "../support/editsInOffice";
import { flowCopy } from "../support/flowCopy";
import { hasLibreOffice } from "../support/libreOffice";

const LOOKS = [
  { sheet: "Budget", range: "C3" },
  { sheet: "Budget", range: "K4" },
  { sheet: "Runs", range: "A9" },
  { sheet: "Fan", range: "B28" },
  { sheet: "Flow", range: "C3" },
  { sheet: "Flow", range: "C7" },
  { sheet: "Fan", range: "B26" },
] as const;
const typedInto = (sheet: string, row: number): string =>
  `Look: something was typed or pasted into ${sheet}'s table (row ${row} on), which formulas fill: undo that`;
const type = (sheet: string, at: string, value: string | number): Edit => ({ does: "type", sheet, at, value });

(hasLibreOffice ? test : test.skip)(
  "one cell of an answer typed over in a copy leaves no total as if it were new; the fixed ± is none",
  async () => {
    const { bytes } = await flowCopy();
    const sorted: Edit = { does: "sort", sheet: "Flow", range: "B11:I14", by: 1, rising: true };
    const anew: Edit = { does: "open anew", sheet: "" };
    const steps = [[], [sorted], [anew, type("Budget", "M12", 500)], [type("Flow", "B13", "drum sander")]];
    const [sound, byAirflow, budget, both] = editsInOffice(bytes, steps, LOOKS, true).map((looks) => looks.flat(2));
    expect(sound).toEqual(["", expect.any(Number), expect.stringMatching(/^ok: /), expect.any(Number), expect.stringMatching(/^Further: /), expect.any(Number), expect.any(Number)]); // prettier-ignore
    // beside the sorted runs stand the airflows with all sealed in the order of before
    expect(byAirflow).toEqual([...sound!.slice(0, 4), typedInto("Flow", 10), "see C3", "see Flow C3"]);
    const ofBudget = [typedInto("Budget", 8), "see C3", "see Budget C3", "see Budget C3"];
    expect(budget).toEqual([...ofBudget, typedInto("Budget", 8), expect.any(Number), expect.any(Number)]);
    expect(both).toEqual([...ofBudget, typedInto("Flow", 10), "see C3", "see Flow C3"]);
  },
);
