/** Formulas that are filled down a column, moved by us as the library that reads other programs' files moves them. */
import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";
import fc from "fast-check";
import { oneRowBelow } from "../../../src/hosts/file/write/sharedFormulas";

const addresses = ["A1", "$B7", "C$3", "$XFD$9", "A9:A10", "$A$2:B99", "AB10"];
const others = ['"A1 or ""B2"""', "LOG10(2)", "1E5", "1.5", "units", "duct_1", "Q1_x", "TRUE", 'IF(A1="",NA(),$D$4)'];
const formula = fc
  .array(fc.constantFrom(...addresses, ...others), { minLength: 1, maxLength: 6 })
  .map((pieces) => pieces.join("+"));

test("a formula moves down a row as another program moves it", () => {
  fc.assert(
    fc.property(formula, (code) => {
      expect(oneRowBelow(code)).toBe(translateFormulaToA1(translateFormulaToR1C1(code, "D9"), "D10"));
    }),
  );
});
