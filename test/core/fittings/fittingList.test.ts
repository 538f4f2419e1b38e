import fc from "fast-check";
import { DomainError } from "../../../src/core/errors";
import { type FittingItem, listCoefficient, parseFittingList } from "../../../src/core/fittings/fittingList";
import { lossFamilies } from "../../../src/reference/lossFamilies";
import { expectRefusal } from "../../support/coreRefusal";
import { relative } from "../../support/printed";
import { lawRuns } from "../../support/lawRuns";

const INCH = 0.0254;
const MILLIMETRE = 0.001;

/** An item as the tests write it: family, shape, angle, count; or a bare coefficient and its count. */
const short = (item: FittingItem): unknown[] =>
  item.family === null ? [item.coefficient, item.count] : [item.family.key, item.shape, item.angle, item.count];

const read = (text: string, inch = INCH, kind: "hood" | "any" = "any"): unknown[][] =>
  parseFittingList("fitting", text, inch, kind).map(short);

describe("parseFittingList reads", () => {
  test.each<[string, unknown[][]]>([
    ["", []],
    [" ; ;\n", []],
    ["elbow", [["elbow 4-piece", null, null, 1]]],
    [
      "elbow 1.5 x2; branch 30; 0.4",
      [
        ["elbow 4-piece", 1.5, null, 2],
        ["branch", null, 30, 1],
        [0.4, 1],
      ],
    ],
    [
      "elbow 1.5\nbranch 45\n",
      [
        ["elbow 4-piece", 1.5, null, 1],
        ["branch", null, 45, 1],
      ],
    ],
    ["  Elbow   SMOOTH 1,5  45 ", [["elbow smooth", 1.5, 45, 1]]],
    ["elbow 1,5x2", [["elbow 4-piece", 1.5, null, 2]]],
    ["elbow ×3", [["elbow 4-piece", null, null, 3]]],
    ["elbow x 3", [["elbow 4-piece", null, null, 3]]],
    ["miter 60°", [["mitre", null, 60, 1]]],
    ["branch 45 deg", [["branch", null, 45, 1]]],
    ["branch 45 degrees x2", [["branch", null, 45, 2]]],
    ["elbow 4 piece 1.5", [["elbow 4-piece", 1.5, null, 1]]],
    ["Elbow-Smooth 1.5", [["elbow smooth", 1.5, null, 1]]],
    ["contraction 2 60", [["contraction", 2, 60, 1]]],
    ["fan inlet elbow at two diameters 0.5", [["fan inlet elbow at two diameters", 0.5, null, 1]]],
    ["0", [[0, 1]]],
    ["0,5 x3", [[0.5, 3]]],
    [".5", [[0.5, 1]]],
    ["plain end", [["plain end", null, null, 1]]],
  ])("%p", (text, items) => {
    expect(read(text)).toEqual(items);
  });

  // A fitting that goes by diameter takes the duct's own, so that a single number is its angle.
  test.each<[string, number, unknown[]]>([
    ["elbow stamped", INCH, ["elbow stamped", null, null, 1]],
    ["elbow stamped 45", INCH, ["elbow stamped", null, 45, 1]],
    ["elbow stamped 100 mm 45", INCH, ["elbow stamped", 0.1, 45, 1]],
    ["elbow stamped 100mm", INCH, ["elbow stamped", 0.1, null, 1]],
    ["elbow stamped 45 100 mm", INCH, ["elbow stamped", 0.1, 45, 1]],
    ["elbow stamped 4 in", MILLIMETRE, ["elbow stamped", 4 * 0.0254, null, 1]],
    ["elbow stamped 4 45", INCH, ["elbow stamped", 4 * 0.0254, 45, 1]],
    ["elbow stamped 100 45 x2", MILLIMETRE, ["elbow stamped", 0.1, 45, 2]],
    ["elbow 7-gore 4", INCH, ["elbow 7-gore", 4 * 0.0254, null, 1]],
    ["elbow 7-gore 100", MILLIMETRE, ["elbow 7-gore", 0.1, null, 1]],
    ["elbow 7-gore 100 mm", INCH, ["elbow 7-gore", 0.1, null, 1]],
  ])("%p by diameter, one number unit being %d m", (text, inch, item) => {
    expect(read(text, inch)).toEqual([item]);
  });

  test("what it is told in our words, whatever the family", () => {
    const withNumbers = lossFamilies.filter((family) => family.shape?.quantity !== "diameter");
    const number = fc.integer({ min: 1, max: 9999 }).map((hundredths) => hundredths / 100);
    const item = fc.record({
      family: fc.constantFrom(...withNumbers),
      a: number,
      b: number.map((angle) => angle + 5), // a smaller turn of an elbow is refused
      count: fc.integer({ min: 1, max: 1000 }),
    });
    fc.assert(
      fc.property(fc.array(item, { maxLength: 6 }), fc.boolean(), (items, comma) => {
        const texts = items.map(({ family, a, b, count }) => {
          const numbers = [...(family.shape === null ? [] : [a]), ...(family.angle === null ? [] : [b])].join(" ");
          return `${family.key} ${comma ? numbers.replaceAll(".", ",") : numbers} x${count}`;
        });
        const expected = items.map(({ family, a, b, count }) => [
          family.key,
          family.shape === null ? null : a,
          family.angle === null ? null : b,
          count,
        ]);
        expect(read(texts.join("; "))).toEqual(expected);
      }),
    );
  });

  test("every name and alias as its own family", () => {
    for (const family of lossFamilies) {
      for (const name of [family.key, ...family.aliases]) expect(read(name)).toEqual([[family.key, null, null, 1]]);
    }
  });

  test("hood entries only, where a hood is asked for", () => {
    expect(read("bell mouth 0.1", INCH, "hood")).toEqual([["bell mouth", 0.1, null, 1]]);
    expect(read("0.9", INCH, "hood")).toEqual([[0.9, 1]]);
    expect(() => read("elbow", INCH, "hood")).toThrow(
      /^fitting must be a hood entry's name or its K \(nearest: .*\); got "elbow"$/,
    );
  });
});

/** The names that a refusal of this text offers. */
function offered(text: string, kind: "hood" | "any"): string[] {
  try {
    parseFittingList("fitting", text, INCH, kind);
  } catch (error) {
    const nearest = /nearest: (.*)\); got/.exec((error as DomainError).message);
    return [...nearest![1]!.matchAll(/"([^"]+)"/g)].map(([, name]) => name!);
  }
  throw new Error(`"${text}" is a fitting`);
}

test("for a hood only hood entries are offered, three of them", () => {
  for (const text of ["elbow", "bel mouth", "branch 30"]) {
    const kinds = offered(text, "hood").map((name) => lossFamilies.find(({ key }) => key === name)?.kind);
    expect(kinds).toEqual(["hood", "hood", "hood"]);
  }
});

test("the numbers after a misspelt name do not change what is offered", () => {
  for (const name of ["elbwo smoth", "brnch", "weather kap"]) {
    expect(offered(`${name} 1234567890 0,123456789`, "any")).toEqual(offered(name, "any"));
  }
});

// A word that a name shares counts for it, and "weather cap" alone shares two; run together they would share none.
test("the words of a misspelt name are compared one by one", () => {
  expect(offered("cap against the weather 0.5", "any")[0]).toBe("weather cap");
});

// The printed multiplier of the turn runs from 0 at 0 degrees to 0.31 at 20: a quarter of that at 5.
test("an elbow may turn by 5 degrees, or by none", () => {
  const at = (text: string) => listCoefficient(parseFittingList("fitting", text, INCH, "any"), null);
  expect(at("elbow 1.5 5") / at("elbow 1.5")).toBeCloseTo(0.31 / 4, 12);
  expect(at("elbow 1.5 0")).toBe(0);
});

test("two hundred entries are a list", () => {
  const items = parseFittingList("fitting", Array.from({ length: 200 }, () => "0.1").join(";"), INCH, "any");
  expect(relative(listCoefficient(items, null), 20)).toBeLessThan(1e-12);
});

// The shape of a smooth elbow is r/D: a duct of 2.5 m does not make it one of r/D 2.5.
test("only a family that is printed by diameter takes the duct's own", () => {
  expect(listCoefficient(parseFittingList("fitting", "elbow smooth", INCH, "any"), 2.5)).toBe(
    listCoefficient(parseFittingList("fitting", "elbow smooth", INCH, "any"), null),
  );
});

describe("parseFittingList refuses", () => {
  test.each([
    ["-1", "fitting must be from 0 to 10000; got -1"],
    ["elbow 1.5 45 90", 'fitting must be two numbers (shape, angle) after "elbow 4-piece"; got "1.5 45 90"'],
    ["branch 30 45", 'fitting must be one number (angle) after "branch"; got "30 45"'],
    ["elbow 7-gore 4 90", 'fitting must be one number (shape) after "elbow 7-gore"; got "4 90"'],
    ["elbow 7-gore 100 mm 90", 'fitting must be no number after "elbow 7-gore"; got "90"'],
    ["exit 1", 'fitting must be no number after "exit"; got "1"'],
    ["elbow 1.5 wide", 'fitting must be only numbers after "elbow 4-piece"; got "1.5 wide"'],
    ["elbow 100 mm", 'fitting must be without a unit after "elbow 4-piece"; got "100mm"'],
    ["elbow smooth 2in 45", 'fitting must be without a unit after "elbow smooth"; got "2in 45"'],
    ["elbow stamped 5inch", 'fitting must be only numbers after "elbow stamped"; got "5inch"'],
    ["elbow x2 45", 'fitting must be only numbers after "elbow 4-piece"; got "x2 45"'],
    [
      "elbow 1.5 2",
      'fitting must be a turn of at least 5 degrees after "elbow 4-piece" ("x2" says two of them); got "1.5 2"',
    ],
    [
      "elbow stamped 3",
      'fitting must be a turn of at least 5 degrees after "elbow stamped" ("x2" says two of them); got "3"',
    ],
    [
      "elbow 1.5 4.9",
      'fitting must be a turn of at least 5 degrees after "elbow 4-piece" ("x2" says two of them); got "1.5 4.9"',
    ],
    ["elbow 1.5 x2.5", 'fitting: the count of "elbow 1.5" must be a whole number; got 2.5'],
    ["branch 30 x1,5", 'fitting: the count of "branch 30" must be a whole number; got 1.5'],
    ["elbow x0", 'fitting: the count of "elbow" must be from 1 to 1000; got 0'],
    ["elbow x1001", 'fitting: the count of "elbow" must be from 1 to 1000; got 1001'],
    [
      "Elbow 1.5,  Branch 30",
      'fitting must be parted by ";", as in "elbow 1.5; branch 30"; got "elbow 1.5, branch 30"',
    ],
    ["elbow 1.5+gate", 'fitting must be parted by ";", as in "elbow 1.5; gate"; got "elbow 1.5+gate"'],
    ["elbow and wheel", 'fitting must be parted by ";", as in "elbow; wheel"; got "elbow and wheel"'],
    ["elbow 1.5, 90", 'fitting must be only numbers after "elbow 4-piece"; got "1.5, 90"'], // a K of 90 is not what was meant
    [
      "2 elbows",
      `fitting must be a fitting's name, then its numbers, then how many, as in "elbow 1.5 x2"; got "2 elbows"`,
    ],
    [
      "90° elbow",
      `fitting must be a fitting's name, then its numbers, then how many, as in "elbow 1.5 x2"; got "90° elbow"`,
    ],
    ["0.4;".repeat(201), 'fitting must be at most 200 entries; got "0.4;0.4;0.4;0.4;0.4;0.4;0.4;0.4;0.4;0.4;…"'],
  ])("%.20s", (text, message) => {
    expectRefusal(() => read(text), DomainError, message);
  });

  test.each([
    ["elbwo", '"elbow 4-piece"'],
    ["brnch 45", '"branch"'],
    ["smooth elbo", '"elbow smooth"'],
    ["mitter", '"mitre"'],
    ["weathercap", '"weather cap"'],
  ])("an unknown name, with the nearest ones: %s", (text, near) => {
    expect(() => read(text)).toThrow(DomainError);
    expect(() => read(text)).toThrow(
      new RegExp(`^fitting must be a fitting's name or its K \\(nearest: ("[^"]+", )*${near}.*\\); got "${text}"$`),
    );
  });

  test.each(["x2", "x5000"])("a count of nothing as a wrong name: %s", (text) => {
    expect(() => read(text)).toThrow(new RegExp(`^fitting must be a fitting's name or its K .*; got "${text}"$`));
  });

  test("a count before the name without calling a good name wrong", () => {
    expect(() => read("2 elbow")).toThrow(DomainError);
    expect(() => read("2 elbow")).toThrow(/got "2 elbow"$/);
  });

  test("numbers without a name without calling them a blank cell", () => {
    expect(() => read("1.5 45")).toThrow(/got "1.5 45"$/);
  });

  test("two diameters, rather than dropping one of them", () => {
    const message = 'fitting must be one diameter only after "elbow stamped"; got "100mm 4in"';
    expectRefusal(() => read("elbow stamped 100 mm 4 in"), DomainError, message);
  });

  test("a long wrong text with a short sentence", () => {
    for (const text of ["x".repeat(5000), `${"x".repeat(5000)} x0`]) {
      expect(() => read(text)).toThrow(DomainError);
      expect(() => read(text)).toThrow(/^.{1,250}$/);
    }
  });
});

test("nothing but a refusal comes of random text", () => {
  const scrap = fc.constantFrom(
    "elbow",
    "stamped",
    "branch",
    "x2",
    "x",
    "1,5",
    "45",
    "°",
    "mm",
    "in",
    "-3",
    ";",
    "\n",
    "e9",
    "=",
    "<b>",
    "1".repeat(400),
  );
  const text = fc.oneof(
    fc.string({ maxLength: 40 }),
    fc.string({ unit: "grapheme", maxLength: 20 }),
    fc.array(scrap, { maxLength: 8 }).map((parts) => parts.join(" ")),
  );
  fc.assert(
    fc.property(text, fc.constantFrom("hood" as const, "any" as const), (junk, kind) => {
      try {
        const sum = listCoefficient(parseFittingList("fitting", junk, INCH, kind), 0.1);
        expect(sum).toBeGreaterThanOrEqual(0);
        expect(sum).toBeLessThan(Infinity);
      } catch (error) {
        expect(error).toBeInstanceOf(DomainError);
      }
    }),
    lawRuns(300),
  );
});

describe("listCoefficient", () => {
  const sum = (text: string, diameter: number | null): number =>
    listCoefficient(parseFittingList("fitting", text, INCH, "any"), diameter);

  // Table A-7: elbow of 4 pieces 0.27 at r/D 1.5; branch entry 0.18 at 30 degrees: 2 x 0.27 + 0.18 + 0.4 = 1.12
  test("adds up counts, names and bare numbers", () => {
    expect(relative(sum("elbow 1.5 x2; branch 30; 0.4", null), 1.12)).toBeLessThan(1e-12);
    expect(sum("", null)).toBe(0);
  });

  // ASHRAE CD3-1: 0.21 at 100 mm, 0.16 at 125 mm
  test("gives a fitting that goes by diameter the duct's own, unless it has one", () => {
    expect(sum("elbow stamped", 0.1)).toBe(0.21);
    expect(sum("elbow stamped 125 mm", 0.1)).toBe(0.16);
    expectRefusal(
      () => sum("elbow stamped", null),
      DomainError,
      'shape must be given for "elbow stamped" (diameter); got a blank cell',
    );
  });
});
