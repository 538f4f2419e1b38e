import { readBook } from "../../../src/hosts/file/readBook";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { partsOf } from "../../support/xlsxParts";
import { sheetOf } from "../../support/sheetOf";
import { bookOf, textsBook } from "./sampleBook";

const TEXTS = [
  "=cmd|'/C calc'!A0",
  "=1+1",
  "@SUM(1)",
  "+1",
  "-1",
  "'quoted",
  "<img src=x onerror=alert(1)>",
  "</t></si><si><t>",
  "&amp;&lt;",
  "]]>",
  "#N/A",
  "#VALUE!",
  "1e5",
  "TRUE",
  "_x0041_",
  "bell \u0007 null \u0000 return \r",
  "half \ud800 pair",
  "\uffff#N/A",
  " blanks around ",
  "\t\n",
  "x".repeat(32767),
  `=${"1+".repeat(16383)}`,
];

describe("texts that mean something elsewhere", () => {
  test("stay the texts that they are", async () => {
    const book = textsBook(...TEXTS);
    const back = await readBook(await writeBook(book, { title: "x" }));
    expect(back.workbook.sheets[0]!.cells).toEqual(book.workbook.sheets[0]!.cells);
  });

  test("are no formula in the file, and stay texts when somebody edits them", async () => {
    const parts = partsOf(await writeBook(textsBook(...TEXTS), { title: "x" }));
    const sheet = parts.get("xl/worksheets/sheet1.xml")!;
    expect(sheet).not.toMatch(/<f[ >]/);
    const xfs = [...parts.get("xl/styles.xml")!.matchAll(/<xf [^>]*xfId[^>]*>/g)].map(([xf]) => xf);
    const isQuoted = (row: number): boolean => {
      const style = new RegExp(`<c r="A${row}" t="s"(?: s="(\\d+)")?>`).exec(sheet)![1];
      return xfs[Number(style ?? 0)]!.includes('quotePrefix="1"');
    };
    TEXTS.forEach((text, index) => expect([text, isQuoted(index + 1)]).toEqual([text, /^[=+\-@']/.test(text)]));
  });

  test("stay texts as names, notes, choices, headers and titles", async () => {
    const odd = '<b>"=1+1"</b> & \' \u0001';
    const sheet = sheetOf(
      "O'Neil <b>",
      [
        { at: "A1", value: odd, note: odd },
        { at: "A2", value: 1 },
      ],
      {
        lists: [{ range: "A2", choices: [odd, "=1+1"], strict: true }],
        flags: [{ range: "A1", containsText: odd, style: "flag" }],
        tables: [{ name: "T", range: "A1:A2" }],
      },
    );
    const back = await readBook(await writeBook(bookOf([sheet]), { title: odd }));
    expect(back.workbook).toEqual({ name: odd, names: [], sheets: [sheet] });
  });

  test("a result that reads like an error is a text, and an error is none", async () => {
    const cells = [
      { at: "A1", formula: '="#"&"N/A"' },
      { at: "A2", formula: "=NA()" },
    ];
    const shown = new Map([
      ["A1", { value: "#N/A" }],
      ["A2", { value: { error: "#N/A" } as const }],
    ]);
    const back = await readBook(
      await writeBook(bookOf([sheetOf("One", cells)], new Map([["One", shown]])), { title: "x" }),
    );
    expect(back.shown.get("One")).toEqual(shown);
  });
});
