import { basesOf, cite, titlesOf, titleWithBasis, weakBases } from "../../src/reference/citation";
import type { Provenance } from "../../src/reference/schema";

const read: Provenance = { source: "smacna4th", locator: "Table A-7", basis: "read", checked: null };
const memory: Provenance = { ...read, basis: "from memory" };
const practice: Provenance = { source: "commonPractice", locator: "estimate", basis: "common practice", checked: null };

test("a title carries its basis behind it, once", () => {
  expect(titleWithBasis("A handbook", "from memory")).toBe("A handbook (from memory)");
  expect(titleWithBasis("A handbook, from memory", "from memory")).toBe("A handbook, from memory");
  expect(titleWithBasis("Common practice, no source", "common practice")).toBe("Common practice, no source");
  expect(titleWithBasis("A table of sources", "")).toBe("A table of sources");
});

test("rows are cited with place and basis, once where they share all three", () => {
  const book = "SMACNA HVAC Systems Duct Design, 4th ed., Table A-7";
  expect(cite(read)).toBe(`${book} (read)`);
  expect(cite(read, read, memory)).toBe(`${book} (read); ${book} (from memory)`);
  expect(cite(practice)).toBe("Common practice of the trade, no source, estimate");
});

test("what a value rests on names each title and each basis once", () => {
  expect(titlesOf([read, memory])).toBe("SMACNA HVAC Systems Duct Design, 4th ed.");
  expect(basesOf([read, memory, read])).toBe("read and from memory");
  expect(weakBases([read, memory, practice])).toBe("from memory and common practice");
  expect(weakBases([read, { ...read, basis: "second-hand" }])).toBe("");
  expect(weakBases([{ ...read, basis: "not read" }])).toBe("not read");
});
