/** The entries of a list of fittings that every copy knows. */
import { listCoefficient, parseFittingList } from "../../../src/core/fittings/fittingList";
import { DomainError } from "../../../src/core/errors";
import { offeredEntries, unlessRefused } from "../../../src/share/translate/tableBlocks/offeredEntries";

const MM = 0.001;
const entries = () => offeredEntries();
const texts = (): string[] => entries().map(({ text }) => text);

test.each([
  ["a name alone, where it has a usual shape and angle", ["elbow", "branch", "tee", "plain end", "bell mouth"]],
  ["other spellings", ["segmented elbow", "wye", "slide gate", "bellmouth"]],
  ["each printed shape", ["elbow 4 piece 0.75", "elbow 2", "bell mouth 0.21", "reducer 2"]],
  ["each printed angle", ["branch 10", "wye 90", "mitre 75"]],
  ["an elbow by any of its names at the usual turns", ["elbow smooth 2.5 30", "smooth elbow 0.5 90", "elbow 1.5 60"]],
  ["shape and angle, by a fitting's first name", ["contraction 2 60", "cone 0.25 45"]],
  ["what goes by the duct's diameter, by its angle", ["elbow pleated", "elbow pleated 45", "pleated elbow 90"]],
])("%s", (_, offered) => expect(texts()).toEqual(expect.arrayContaining(offered)));

test.each([
  ["contraction", "it has no usual shape"],
  ["reducer 2 60", "shape and angle are offered by the first name"],
  ["elbow 1.5 75", "no usual turn"],
  ["branch 12", "no printed angle"],
  ["elbow pleated 0.1", "its shape is the duct's own"],
  ["elbow pleated 30", "nothing is printed for it"],
])("not %j: %s", (text) => expect(texts()).not.toContain(text));

test("each text once", () => expect(new Set(texts()).size).toBe(texts().length));

test("each as the functions read it", () => {
  for (const { text, family, coefficient, item } of entries()) {
    const items = parseFittingList("list", text, MM, "any");
    expect(items.map((one) => [text, one.family?.key, one.count])).toEqual([[text, family.key, 1]]);
    if (item === null) expect([text, coefficient]).toEqual([text, listCoefficient(items, null)]);
    else expect([text, coefficient, item.angle]).toEqual([text, null, items[0]!.angle]);
  }
});

test("an item that goes by diameter is called by its fitting and its angle", () => {
  const itemOf = (text: string) => entries().find((one) => one.text === text)?.item?.name;
  expect(["elbow pleated", "pleated elbow", "elbow pleated 45"].map(itemOf)).toEqual([
    "elbow pleated",
    "elbow pleated",
    "elbow pleated 45",
  ]);
});

test("a refusal makes nothing, a mistake of ours is not hidden", () => {
  expect(unlessRefused(() => [1])).toEqual([1]);
  const failing = (error: Error) => () => {
    throw error;
  };
  expect(unlessRefused(failing(new DomainError("K", -1, "at least 0")))).toEqual([]);
  expect(() => unlessRefused(failing(new TypeError("ours")))).toThrow(new TypeError("ours"));
});
