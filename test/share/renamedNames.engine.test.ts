/** A find-and-replace over all sheets of a copy renames the names of its look-up tables, too: their figures pass for no other fitting's. */
import { clubCopy } from "../../src/share/clubCopy";
import { type Edit, editsInOffice } from "../support/editsInOffice";
import { flowCopy, NAME, ORDER } from "../support/flowCopy";
import { hasLibreOffice } from "../support/libreOffice";

const GONE = `On the sheet Lookups the name ${NAME} is gone or out of its place: undo what changed it`;

const LOOKS = [
  ...(
    [
      "Fixed numbers!C6",
      "Budget!C3",
      "Flow!C3",
      "Runs!A9",
      "Lookups!A2",
      "Budget!K4",
      "Flow!C7",
      "Fan!B26",
      "Fan!Z2",
    ] as const
  ).map((at) => ({ sheet: at.split("!")[0]!, range: at.split("!")[1]! })),
];

(hasLibreOffice ? test : test.skip)(
  "a name replaced over all sheets, by one that is there or by a new one, leaves no answer until it is undone; a row more is none's business",
  async () => {
    const { live, bytes } = await flowCopy();
    const made = clubCopy(live, ORDER).book.workbook.sheets;
    const cells = made.find(({ name }) => name === "Lookups")!.cells;
    const placeIn = Object.fromEntries(cells.flatMap((cell) => ("value" in cell ? [[String(cell.value), cell.at]] : [])).reverse()); // prettier-ignore
    const hits = made.flatMap(({ name, cells }) =>
      cells.flatMap((cell) =>
        "value" in cell && typeof cell.value === "string" && cell.value.includes(NAME)
          ? [{ sheet: name, at: cell.at, was: cell.value }]
          : [],
      ),
    );
    const sheets = hits.map(({ sheet }) => sheet);
    expect(["Runs", "Lookups", "Fan"].filter((sheet) => !sheets.includes(sheet))).toEqual([]);
    const replaced = (by: string): Edit[] =>
      hits.map(({ sheet, at, was }) => ({ does: "type", sheet, at, value: was.replaceAll(NAME, by) }));
    const row = Number(hits.find(({ sheet, was }) => sheet === "Lookups" && was === NAME)!.at.slice(1));
    const more: Edit[] = [{ does: "insert row", sheet: "Lookups", row }];
    const inTable = (name: string, value: string): Edit => ({ does: "type", sheet: "Lookups", at: placeIn[name]!, value }); // prettier-ignore
    const exchanged = [inTable(NAME, "branch 45"), inTable("branch 45", NAME)];
    const back = [inTable(NAME, NAME), inTable("branch 45", "branch 45")];
    const steps = [[], replaced("branch 45"), replaced(NAME), replaced("branch 31"), replaced(NAME), exchanged, back, more]; // prettier-ignore
    const [first, ...others] = editsInOffice(bytes, steps, LOOKS, true).map((looks) => looks.flat(2));
    expect(first!.slice(-4)).toEqual(Array.from({ length: 4 }, () => expect.any(Number)));
    const old = "inputs changed since: these numbers are old"; // said of a fixed number
    const told = [
      old,
      `Look: ${GONE}`,
      `Look: ${GONE}`,
      GONE,
      `Look: the name ${NAME} is gone from the tables below or out of its place, so nothing that looks up here has an answer: undo what changed it.`,
      ...["see C3", "see B10", "see Flow B10", "#32767"],
    ];
    expect(first![0]).toMatch(/^as of/);
    expect(others).toEqual([told, first, told, first, told, first, [old, ...first!.slice(1)]]); // a row more may be another figure
  },
);
