/**
 * The runs table of a copy as people edit it in LibreOffice: rows inserted, deleted, cut, sorted, cleared, filled and doubled, drawn
 * by lot. After each edit BUDGET is called on the table as it then stands, and the copy must say the same, or that it cannot.
 */
import "../../support/customFunctions";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { OLD } from "../../../src/share/fixed/fixedCall";
import { clubCopy } from "../../../src/share/clubCopy";
import { cellAddress, columnLetters } from "../../../src/sheets/address";
import type { CellValue } from "../../../src/sheets/workbook";
import { type Edit, editsInOffice } from "../../support/editsInOffice";
import { hasLibreOffice } from "../../support/libreOffice";
import { lots } from "../../support/lots";
import { differences, sampleBook } from "../sampleBooks";
import { answerOf, ORDER } from "./inGrid";

const HEADER = ["Run", "To", "Airflow (cfm)", "Diameter (in)", "Length (ft)", "Fittings", "Hood", "Gate", "Dust"];
const runs: CellValue[][] = [
  ["planer", "north main", 700, 5, 12, "elbow 1.5 x2", "flanged end", "open", "wood chips"],
  ["saw", "north main", 400, 4, 9, "branch 30", 1.4, "open", null],
  ["sander", "trunk", 350, 4, 15, 0.4, "plain end", "shut", "dry dust"],
  ["north main", "trunk", null, 7, 6, null, null, null, null],
  ["trunk", "fan", null, 8, 10, "elbow 2", null, null, null],
  ["stack", "outside", null, 9, 4, null, null, null, null],
];
const ROWS = 12; // of the table, below its header
const FIRST = 2;
const NOTHING = HEADER.map((): CellValue => null);
const begin = [...runs, ...new Array<CellValue[]>(ROWS - runs.length).fill(NOTHING)];
const LAST = columnLetters(HEADER.length);
const KEPT = ["north main", "trunk", "stack"];
const SEEN = 40; // rows that are looked at

/** The book, and a fixed number that rests on the table. */
function bytes(): Promise<Uint8Array> {
  const rows = [HEADER, ...begin];
  const range = `T!A1:${LAST}${ROWS + 1}`;
  const shows = answerOf(rows, "IP");
  const book = sampleBook({
    T: { rows },
    A: { formulas: { A1: { code: `=DUCT.BUDGET(${range},,"IP")`, shows } } },
    S: { formulas: { A1: { code: `=DUCT.SCENARIOS(${range},T!A1:B2,T!A1:B2)`, shows: [[1]] } } },
  });
  return writeBook({ workbook: clubCopy(book, ORDER).book.workbook, shown: new Map() }, { title: "edited" });
}

interface Step {
  readonly kind: string;
  readonly edits: readonly Edit[];
  readonly table: readonly (readonly CellValue[])[]; // the rows of the table as the edit leaves them
}

/** Edits drawn by lot, each from what those before it left. */
function drawn(count: number, seed: number): Step[] {
  const lot = lots(seed);
  const pick = <One>(list: readonly One[]): One => list[Math.floor(lot() * list.length)]!;
  let table: readonly (readonly CellValue[])[] = begin;
  let fresh = 10;
  const at = (row: number): number => FIRST + row;
  const line = (row: number): string => `A${at(row)}:${LAST}${at(row)}`;
  const rowsWhere = (is: (name: string) => boolean): number[] =>
    [...table.keys()].filter((row) => is(String(table[row]![0] ?? "")));
  const ends = (): number[] => rowsWhere((name) => name !== "" && !KEPT.includes(name));
  const named = (): number[] => rowsWhere((name) => name !== "");
  const blanks = (): number[] => rowsWhere((name) => name === "");
  const becomes = (row: number, values: readonly CellValue[]): void => {
    table = table.map((old, index) => (index === row ? values : old));
  };
  const typed = (row: number, values: readonly CellValue[]): Edit[] => {
    becomes(row, values);
    return values.map((value, column): Edit => ({
      sheet: "T",
      does: "type",
      at: cellAddress(column + 1, at(row)),
      value,
    }));
  };
  const run = (): CellValue[] => {
    fresh++;
    return [`jig* ${fresh}?`, pick(["trunk", "North-Main"]), pick([300, 420]), pick([4, 5]), fresh + 0.5, "elbow 1.5x2; 0.1", pick([null, "1,4", "flanged end"]), pick(["open", "shut"]), null]; // prettier-ignore
  };
  const cut = (from: number, to: number): Edit[] => {
    const moved = table[from]!;
    becomes(from, NOTHING);
    becomes(to, moved);
    return [{ sheet: "T", does: "cut", range: line(from), to: `A${at(to)}` }];
  };
  const kinds: Readonly<Record<string, () => Edit[]>> = {
    "inserts a row and fills it": () => {
      const row = pick([0, ...named()]);
      table = [...table.slice(0, row), NOTHING, ...table.slice(row)];
      return [{ sheet: "T", does: "insert row", row: at(row) }, ...typed(row, run())];
    },
    "doubles a hood's row under another name": () => {
      const [from, to] = [pick(ends()), pick(blanks())];
      const [name] = typed(to, [`twin ${++fresh}`, ...table[from]!.slice(1)]);
      return [{ sheet: "T", does: "copy", range: line(from), to: `A${at(to)}` }, name!];
    },
    "deletes a hood's row": () => {
      const row = pick(ends());
      table = table.filter((_, index) => index !== row);
      return [{ sheet: "T", does: "delete row", row: at(row) }];
    },
    "cuts a run and pastes it elsewhere": () => cut(pick(named()), pick(blanks())),
    "pastes one hood's row over another": () => {
      const from = pick(ends());
      return cut(from, pick(ends().filter((row) => row !== from)));
    },
    "types a run into a blank row": () => typed(pick(blanks()), run()),
    "sorts the table by its names": () => {
      const filled = named().map((row) => table[row]!);
      filled.sort(([a], [b]) => (String(a) < String(b) ? -1 : 1));
      table = [...filled, ...blanks().map(() => NOTHING)];
      return [{ sheet: "T", does: "sort", range: `A${FIRST}:${LAST}${FIRST + table.length - 1}`, by: 0, rising: true }];
    },
    "fills a diameter down": () => {
      const from = pick(ends().filter((row) => ends().includes(row + 1)));
      if (from === undefined) return [];
      const copied = table[from]![3]!;
      becomes(
        from + 1,
        table[from + 1]!.map((value, column) => (column === 3 ? copied : value)),
      );
      return [{ sheet: "T", does: "copy", range: `D${at(from)}`, to: `D${at(from) + 1}` }];
    },
    "clears a hood's row": () => {
      const row = pick(ends());
      becomes(row, NOTHING);
      return [{ sheet: "T", does: "clear", range: line(row) }];
    },
    "inserts a blank row": () => {
      const row = pick(named());
      table = [...table.slice(0, row), NOTHING, ...table.slice(row)];
      return [{ sheet: "T", does: "insert row", row: at(row) }];
    },
    "deletes a blank row": () => {
      const row = pick(blanks());
      table = table.filter((_, index) => index !== row);
      return [{ sheet: "T", does: "delete row", row: at(row) }];
    },
  };
  const names = Object.keys(kinds);
  return Array.from({ length: count }, (_, k) => {
    const kind = names[k % names.length]!;
    return { kind, edits: kinds[kind]!(), table };
  });
}

/** What cells say, as a call gets them. */
const cellsOf = (seen: readonly (readonly (string | number)[])[]): CellValue[][] =>
  seen.map((row) => row.map((value) => (value === "" ? null : value)));

const UNREAD = /^The table has more runs than this copy reads/;

(hasLibreOffice ? test : test.skip)("after each of forty edits a copy says what the functions say", async () => {
  const steps = drawn(40, 11);
  const last = steps.at(-1)!;
  const below = { sheet: "T", does: "type", at: `A${FIRST + last.table.length + 4}`, value: "late" } as const;
  const looks = [
    { sheet: "T", range: `A1:${LAST}${SEEN}` },
    { sheet: "A", range: `A1:M${ROWS + 2}` },
    { sheet: "Fixed numbers", range: "C6" },
  ];
  const all = [[], ...steps.map(({ edits }) => edits), [below], [{ ...below, value: "" }]];
  const seen = editsInOffice(await bytes(), all, looks);
  const tables = [begin, ...steps.map(({ table }) => table), last.table, last.table];
  const wrong = seen.flatMap(([cells, answer, state], index) => {
    const told = steps[index - 1]?.kind ?? "the end";
    const table = cellsOf(cells!).slice(0, 1 + tables[index]!.length);
    expect([told, table.slice(1)]).toEqual([told, tables[index]]);
    expect([told, state![0]![0]]).toEqual([told, index === 0 ? "as of 2026-11-25" : OLD]);
    const isTooLong = tables[index]!.slice(ROWS).some(([name]) => name !== null);
    if (isTooLong || index === all.length - 2) {
      expect([told, String(answer![0]![0])[0], answer![1]![12]]).toEqual([told, "#", expect.stringMatching(UNREAD)]);
      return [];
    }
    const values = new Map(answer!.flatMap((row, down) => row.map((value, across) => [cellAddress(across + 1, down + 1), value] as const))); // prettier-ignore
    return differences("A", "A1", answerOf(table, "IP"), new Map([["A", values]])).map((one) => `${told}: ${one}`);
  });
  expect(wrong).toEqual([]);
});
