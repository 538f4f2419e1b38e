import fc from "fast-check";
import { fromFileText, toFileText } from "../../../src/hosts/file/xlsxText";

// signs of the first page, where the control characters are, as often as all others
const anySign = fc.oneof(fc.integer({ min: 0, max: 0xff }), fc.integer({ min: 0, max: 0x10ffff }));
const anyText = fc.array(anySign).map((codes) => String.fromCodePoint(...codes));

describe("texts that XML cannot say", () => {
  test("control characters, halves of a pair and what looks like an escape are escaped as ECMA-376 has it", () => {
    expect(toFileText("a\u0000b\u000bc\rd")).toBe("a_x0000_b_x000B_c_x000D_d");
    expect(toFileText("\ud800x\udfff")).toBe("_xD800_x_xDFFF_");
    expect(toFileText("\ud83d\ude00")).toBe("\ud83d\ude00");
    expect(toFileText("_x0041_")).toBe("_x005F_x0041_");
    expect(toFileText("line\nand\ttab")).toBe("line\nand\ttab");
  });

  test("every text comes back, and what is written can be said in UTF-8", () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom("", "_x0041_", "\ud800", "\uffff"), (text, odd) => {
        const written = toFileText(text + odd);
        expect(new TextDecoder().decode(new TextEncoder().encode(written))).toBe(written);
        expect(fromFileText(written)).toBe(text + odd);
      }),
    );
  });
});
