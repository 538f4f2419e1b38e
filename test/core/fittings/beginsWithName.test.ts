import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { beginsWithName, parseFittingList } from "../../../src/core/fittings/fittingList";
import { lossFamilies } from "../../../src/reference/lossFamilies";

const INCH = 0.0254;

test.each<[string, "hood" | "any", boolean]>([
  ["elbow", "any", true],
  ["elbow 1.5 90", "any", true],
  ["elbow 90°", "any", true],
  ["elbow x 3", "any", true],
  ["elbowx2.0", "any", true], // the list takes it as two elbows
  ["elbow in wood", "any", true], // its words are refused, which is not asked
  ["elbow", "hood", false],
  ["flanged end", "hood", true],
  ["flanged", "hood", false],
  ["the elbow", "any", false],
  ["0.4", "any", false],
  ["", "any", false],
])("%s in a list of kind %s: %s", (entry, kind, begins) => {
  expect(beginsWithName(entry, kind)).toBe(begins);
});

test("law: an entry that begins with no name is refused or is a number, so that asking first loses none", () => {
  const names = lossFamilies.flatMap(({ key, aliases }) => [key, ...aliases]);
  const parts = ["x2", "x 2.0", "×3", "45", "90°", "30 deg", "4 in", "125mm", "1.5", "0,4", "plain", "and", "old"];
  const part = fc.oneof(
    fc.constantFrom(...names),
    fc.constantFrom(...names.flatMap((name) => name.split(" "))),
    fc.constantFrom(...parts),
  );
  const entry = fc
    .tuple(fc.array(part, { minLength: 1, maxLength: 4 }), fc.constantFrom(" ", " ", ""))
    .map(([words, between]) => words.join(between).toLowerCase().replace(/\s+/g, " "));
  const familyOf = (text: string, kind: "hood" | "any"): string | null => {
    try {
      return parseFittingList("fitting", text, INCH, kind)[0]?.family?.key ?? null;
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      return null;
    }
  };
  fc.assert(
    fc.property(entry, fc.constantFrom("hood" as const, "any" as const), (text, kind) => {
      expect(beginsWithName(text, kind) || familyOf(text, kind) === null).toBe(true);
    }),
  );
});
