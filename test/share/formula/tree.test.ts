import fc from "fast-check";
import { callsOurs } from "../../../src/sheets/ourCalls";
import { formulaTree, isNothing, type OurCall, type Piece, UnreadableFormula } from "../../../src/share/formula/tree";

const isCall = (piece: Piece): piece is OurCall => piece.type === "our call";

const textOf = (pieces: readonly Piece[]): string =>
  pieces.map((piece) => (isCall(piece) ? `<${piece.name}:${piece.args.map(textOf).join("|")}>` : piece.value)).join("");

const callIn = (formula: string): OurCall => formulaTree(formula).find(isCall)!;

// Formulas of a spreadsheet without any call of ours.
const leaf = fc.oneof(
  fc.constantFrom(
    "A1",
    "$B$4",
    "Runs!$B$8:$S$48",
    "'It''s'!C3",
    "units",
    '"DUCT.AREA("',
    '"a;b ""c"""',
    "12.5",
    "TRUE",
    "{1,2;3,4}",
    "#N/A",
  ),
  fc.nat().map(String),
);
const { native } = fc.letrec<{ native: string; call: string; sum: string }>((tie) => ({
  native: fc.oneof({ maxDepth: 4 }, leaf, tie("call"), tie("sum")),
  call: fc
    .tuple(
      fc.constantFrom("SUM", "IF", "INDEX", "DUCTS.AREA", "MAX"),
      fc.array(tie("native"), { minLength: 1, maxLength: 3 }),
    )
    .map(([name, args]) => `${name}(${args.join(", ")})`),
  sum: fc
    .tuple(tie("native"), fc.constantFrom("+", "&", "<=", "^"), tie("native"))
    .map(([a, sign, b]) => `(${a}${sign}${b})`),
}));

test("a formula without our calls comes back as it was", () => {
  fc.assert(
    fc.property(native, (text) => {
      expect(callsOurs(`=${text}`)).toBe(false);
      expect(textOf(formulaTree(`=${text}`))).toBe(`=${text}`);
    }),
  );
});

test("a call is found wherever it stands, with each of its arguments whole", () => {
  fc.assert(
    fc.property(native, native, (one, other) => {
      const formula = `=ROUND(DUCT.VELOCITY(${one},${other},,"SI"),1)`;
      expect(callsOurs(formula)).toBe(true);
      expect(textOf(formulaTree(formula))).toBe(`=ROUND(<VELOCITY:${one}|${other}||"SI">,1)`);
    }),
  );
});

test("the stored form, any case, and a blank before the bracket are read alike", () => {
  for (const formula of [
    "=DUCT.AREA(B4)",
    "=duct.area(B4)",
    "=_xldudf_DUCT_AREA(B4)",
    "=_xldudf_duct_area(B4)",
    "=DUCT.AREA (B4)",
  ])
    expect(textOf(formulaTree(formula))).toBe("=<AREA:B4>");
});

test("calls inside calls, left-out arguments and no arguments", () => {
  expect(textOf(formulaTree("=DUCT.TRADESIZE(DUCT.DIAMETER(A1,B1),,units)"))).toBe(
    "=<TRADESIZE:<DIAMETER:A1|B1>||units>",
  );
  expect(callIn("=DUCT.ABOUT()").args).toEqual([]);
  expect(callIn("=DUCT.AREA(A1, )").args.map(isNothing)).toEqual([false, true]);
});

test.each([
  ["=DUCT.AREA(A1", "a bracket is not closed"],
  ["=SUM((A1)", "a bracket is not closed"],
  ["=DUCT.AREA(A1))", "a bracket closes that was never opened"],
])("%s cannot be read", (formula, sentence) => {
  expect(() => formulaTree(formula)).toThrow(new UnreadableFormula(sentence));
});

test("a union outside of every bracket is a formula, and our name without a bracket no call", () => {
  expect(textOf(formulaTree("=A1,B1"))).toBe("=A1,B1");
  expect(textOf(formulaTree("=DUCT.AREA+1"))).toBe("=DUCT.AREA+1");
});
