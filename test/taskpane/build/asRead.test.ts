import { asRead, cell } from "../../../src/taskpane/build/asRead";
import { bookOf } from "../../support/books";

test("what cells showed: values as they are, an error by its name, nothing where nothing stands", () => {
  const book = bookOf({ "My runs": { rows: [["Run", 4], ["saw", null], [true, null]] } }); // prettier-ignore
  const shown = new Map(book.shown.get("My runs"));
  shown.set("B2", { value: { error: "#N/A", message: "#BUSY!" } });
  const read = { ...book, shown: new Map([["My runs", shown]]) };
  const blank = [null, null, null];
  expect(asRead(read, [{ sheet: "My runs", at: "A1", rows: [blank, blank, blank] }, cell("Gone", "A1")])).toEqual([
    { sheet: "My runs", at: "A1", rows: [["Run", 4, null], ["saw", "#N/A", null], [true, null, null]] }, // prettier-ignore
    { sheet: "Gone", at: "A1", rows: [[null]] },
  ]);
});
