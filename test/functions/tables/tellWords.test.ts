/** The words of the rows as the build takes them out, and as the file that shows tables gives them back. */
import { WORDS, wordsOfRows } from "../../../scripts/wordsOfRows";
import type * as Rows from "../../../src/reference/rowsWithWords";

test("rows without their words have them again, each its own, when the file that shows tables has run", async () => {
  await jest.isolateModulesAsync(async () => {
    const { rowsWithWords } = await import("../../../src/reference/rowsWithWords");
    const rows: Rows.Words[] = rowsWithWords();
    const whole = rows.map((row) => ({ ...row }));
    for (const row of rows) for (const word of WORDS) Reflect.deleteProperty(row, word);
    expect(rows).not.toEqual(whole);
    Object.assign(globalThis, { WORDS_OF_ROWS: wordsOfRows() });
    await import("../../../src/functions/tables/tellWords");
    expect(rows).toEqual(whole);
  });
});

test("what is taken out of a row are words and nothing else", () => {
  for (const words of wordsOfRows().words)
    for (const value of Object.values(words)) expect([null, expect.any(String)]).toContainEqual(value);
});
