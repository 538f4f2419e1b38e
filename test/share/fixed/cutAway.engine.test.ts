/** The same in LibreOffice: a cell that is cut takes its comparison along, and the range that it stood in stays. */
import { writeBook } from "../../../src/hosts/file/writeBook";
import { type Edit, editsInOffice } from "../../support/editsInOffice";
import { hasLibreOffice } from "../../support/libreOffice";
import { AS_OF, OLD, tableCopy } from "./tableCopy";

const cut = (range: string, to: string): Edit => ({ sheet: "T", does: "cut", range, to });
const type = (at: string, value: number): Edit => ({ sheet: "T", does: "type", at, value });
const anew: Edit = { sheet: "", does: "open anew" };

(hasLibreOffice ? test : test.skip)(
  "in LibreOffice what is cut and typed otherwise makes the fixed number old",
  async () => {
    const bytes = await writeBook(tableCopy(), { title: "A copy", recalculate: true });
    const steps: Edit[][] = [
      [{ sheet: "", does: "compute all" }],
      [cut("B2", "E20"), type("B2", 5)],
      [anew, cut("B2", "E20"), cut("B3", "B2"), cut("E20", "B3")],
      [anew, cut("B2", "E20"), type("B2", 4)],
      [anew, { sheet: "T", does: "insert row", row: 3 }],
      [anew, type("B2", 5)],
    ];
    const seen = editsInOffice(bytes, steps, [
      { sheet: "F", range: "B1:B1" },
      { sheet: "Fixed numbers", range: "D6:D6" },
    ]);
    const said = seen.map(([word, count]) => [word![0]![0], count![0]![0]]);
    expect(said.map(([word]) => word)).toEqual([AS_OF, OLD, OLD, AS_OF, AS_OF, OLD]);
    expect([said[0]![1], said[5]![1]]).toEqual([0, 1]);
  },
);
