import { copyText } from "../../../src/taskpane/tables/copyText";

test("copyText hands the text to the clipboard and says so", async () => {
  const writeText = jest.fn(() => Promise.resolve());
  await expect(copyText("0.27", { writeText })).resolves.toBe(true);
  expect(writeText).toHaveBeenCalledWith("0.27");
});

test.each([
  ["is missing", undefined],
  ["refuses", { writeText: () => Promise.reject(new Error("not allowed")) }],
])("copyText says no where the clipboard %s", async (_, clipboard) => {
  await expect(copyText("0.27", clipboard)).resolves.toBe(false);
});
