import { bookOf, gridOf, setUpGrid, sheetOf, step, valueAt } from "./gridOfOurs";

beforeAll(setUpGrid);

const standing = () => gridOf(bookOf(sheetOf([{ at: "D9", value: "there" }], { frozen: { rows: 2, columns: 2 } })));

const fromElsewhere = (model: ReturnType<typeof gridOf>, at: string, text: string) => {
  const { col, row } = o_spreadsheet.helpers.toCartesian(at);
  const target = [{ left: col, right: col, top: row, bottom: row }];
  return model.dispatch("PASTE_FROM_OS_CLIPBOARD", { target, clipboardContent: { text } });
};

test("a table from elsewhere is pasted across the edge of what stands still, down and sideways, and one undo takes it back", async () => {
  const model = standing();
  expect(fromElsewhere(model, "B2", "lathe\tmain\t500\njigsaw\tmain\t700").isSuccessful).toBe(true);
  expect(["B2", "C2", "D2", "B3", "C3", "D3"].map((at) => valueAt(model, at))).toEqual(["lathe", "main", 500, "jigsaw", "main", 700]); // prettier-ignore
  await step(model, "REQUEST_UNDO");
  expect(["B2", "D3"].map((at) => valueAt(model, at))).toEqual([null, null]);
  expect(valueAt(model, "D9")).toBe("there");
});
