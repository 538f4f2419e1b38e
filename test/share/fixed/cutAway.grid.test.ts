/** What is cut and pasted elsewhere takes its comparison along, while the table that a fixed number was made from stays. */
import { gridOfBook, type Shows } from "../../support/gridOfBook";
import { AS_OF, OLD, tableCopy } from "./tableCopy";

const after = (...edits: ((copy: Shows) => void)[]): { word: unknown; count: unknown } => {
  const copy = gridOfBook(tableCopy().workbook);
  for (const edit of edits) edit(copy);
  return { word: copy.value("F", "B1"), count: copy.value("Fixed numbers", "D6") };
};

test("as it was made, nothing is old", () => expect(after()).toEqual({ word: AS_OF, count: 0 }));

test("another number typed where one was cut makes it old", () =>
  expect(
    after(
      (copy) => copy.cut("T", "B2", "E20"),
      (copy) => copy.type("T", "B2", "5"),
    ).word,
  ).toBe(OLD));

test("two numbers that change places by cutting make it old", () =>
  expect(
    after(
      (copy) => copy.cut("T", "B2", "E20"),
      (copy) => copy.cut("T", "B3", "B2"),
      (copy) => copy.cut("T", "E20", "B3"),
    ).word,
  ).toBe(OLD));

test("what is typed again as it was leaves it as it was", () =>
  expect(
    after(
      (copy) => copy.cut("T", "B2", "E20"),
      (copy) => copy.type("T", "B2", "4"),
    ),
  ).toEqual({ word: AS_OF, count: 0 }));

test("an input that is typed over counts once", () =>
  expect(after((copy) => copy.type("T", "B2", "5"))).toEqual({ word: OLD, count: 1 }));

test("a blank row that is inserted makes nothing old, one that is filled does", () => {
  expect(after((copy) => copy.insertRow("T", 3)).word).toBe(AS_OF);
  expect(after((copy) => copy.insertRow("T", 3), (copy) => copy.type("T", "B3", "5")).word).toBe(OLD); // prettier-ignore
});
