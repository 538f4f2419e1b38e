/** npm run share, on files as a user has them. */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { calculate } from "../../../scripts/calculate";
import { wanted } from "../../../scripts/share";
import { readBook } from "../../../src/hosts/file/readBook";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { revive } from "../../../src/share/revive/revive";
import { budgetBook } from "../../../src/sheets/book/budgetBook";
import type { CellValue } from "../../../src/sheets/workbook";
import { callsOurs } from "../../../src/sheets/ourCalls";
import { sampleBook } from "../../share/sampleBooks";
import { farValue } from "../../support/attackFiles";

const root = path.resolve(__dirname, "../../..");
const folder = mkdtempSync(path.join(os.tmpdir(), "share-"));
const [budget, club] = [path.join(folder, "budget.xlsx"), path.join(folder, "club.xlsx")];

const share = (...args: string[]) =>
  spawnSync(
    process.execPath,
    [path.join(root, "node_modules/tsx/dist/cli.mjs"), path.join(root, "scripts/share.ts"), ...args],
    { encoding: "utf8" },
  );
const hash = (file: string): string => createHash("sha256").update(readFileSync(file)).digest("hex");

beforeAll(async () => {
  const book = calculate(
    budgetBook({ units: "IP", sheets: ["runs", "budget", "flow"], contents: "example" }, { sheets: [], names: [] }),
  );
  writeFileSync(budget, await writeBook(book, { title: "Budget" }));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("a club copy is written, what is fixed is told, and the budget's bytes are as they were", async () => {
  const before = hash(budget);
  const { status, stdout, stderr } = share(budget, club);
  expect([status, stderr]).toEqual([0, ""]);
  expect(stdout).toMatch(/\d+ formulas recalculate, \d+ are fixed\.$/m);
  expect(stdout).toMatch(/Flow!B66 SCENARIOS: /);
  expect(hash(budget)).toBe(before);
  const { workbook, shown } = await readBook(readFileSync(club));
  expect(workbook.sheets[0]!.name).toBe("About this copy");
  const formulas = workbook.sheets.flatMap(({ name, cells }) =>
    cells.flatMap((cell) => ("formula" in cell ? [{ sheet: name, at: cell.at }] : [])),
  );
  expect(formulas.length).toBeGreaterThan(10_000);
  expect(formulas.filter(({ sheet, at }) => shown.get(sheet)?.get(at) !== undefined)).toEqual([]); // see writeBook
  const ours = workbook.sheets.flatMap(
    ({ cells }) => cells.filter((cell) => "formula" in cell && callsOurs(cell.formula)), // "in that duct." is a text
  );
  expect(ours).toEqual([]);
});

test("the live budget comes back from that file", async () => {
  const live = (await readBook(readFileSync(budget))).workbook;
  const { workbook: back, left } = revive(await readBook(readFileSync(club)));
  expect(left).toEqual([]);
  const formulas = (one: typeof live): unknown =>
    one.sheets
      .flatMap(({ name, cells }) =>
        cells.flatMap((cell) => ("formula" in cell ? [`${name}!${cell.at} ${cell.formula}`] : [])),
      )
      .sort();
  expect(formulas(back!)).toEqual(formulas(live));
});

const runs: readonly (readonly CellValue[])[] = [
  ["Run", "To", "Diameter", "Hood", "Airflow"],
  ["saw", "main", 100, "flanged end", 600],
  ["planer", "main", 125, "flanged end", 900],
  ["main", "fan", 150, null, null],
];
const small = (rows: typeof runs) =>
  sampleBook({ Runs: { rows }, Answer: { formulas: { A1: { code: '=DUCT.BUDGET(Runs!A1:E4,,"SI")', shows: [[null]] } } } }); // prettier-ignore

test("a file that is there is left alone unless it may be replaced, then a copy of values that holds no formula takes its place", async () => {
  const [own, there] = [path.join(folder, "small.xlsx"), path.join(folder, "there.xlsx")];
  writeFileSync(own, await writeBook(calculate(small(runs).workbook), { title: "Small" }));
  writeFileSync(there, "kept");
  expect(() => wanted([own, there])).toThrow(
    `${there} is there already and was left alone; add --overwrite to replace it`,
  );
  expect(readFileSync(there, "utf8")).toBe("kept");
  expect(share(own, there, "--values", "--overwrite")).toMatchObject({ status: 0, stderr: "" });
  const { workbook } = await readBook(readFileSync(there));
  expect(workbook.sheets.length).toBeGreaterThan(2);
  expect(workbook.sheets.flatMap(({ cells }) => cells.filter((cell) => "formula" in cell))).toEqual([]);
});

test.each<[string[], RegExp]>([
  [[], /^a budget to read and a copy to write must be named/],
  [["none.xlsx", "club2.xlsx"], /^there is no file none\.xlsx$/],
  [["--fast"], /the command is npm run share/],
])("%j is refused in one sentence", (args, sentence) => {
  expect(() => wanted(args)).toThrow(sentence); // which the command says as above
});

test("a budget in which a row is wrong gets no copy, and the command says which cell is to be mended", async () => {
  const [wrong, copied] = [path.join(folder, "wrong.xlsx"), path.join(folder, "not-copied.xlsx")];
  const rows = runs.map((row) =>
    row.map((value) => (row[0] === "planer" && value === "flanged end" ? "flangd end" : value)),
  );
  writeFileSync(wrong, await writeBook(calculate(small(rows).workbook), { title: "Wrong" }));
  const { status, stderr } = share(wrong, copied);
  expect(status).toBe(1);
  expect(stderr).toMatch(
    /^no copy was made while something is refused, since a copy tells that in other words: Answer!\w+ says "Hood of run "planer" \(row 3\) must be .*nearest: "flanged end"/,
  );
  expect(existsSync(copied)).toBe(false);
});

test("a file that reaches to the end of its sheet and asks for a thousand million numbers is copied without either, and says so", async () => {
  const [hostile, copied] = [path.join(folder, "hostile.xlsx"), path.join(folder, "copied.xlsx")];
  writeFileSync(hostile, farValue("XFD1048576", "SUM(SEQUENCE(100000,10000))"));
  const { status, stdout, stderr } = share(hostile, copied);
  expect([status, stderr]).toEqual([0, ""]);
  expect(stdout).toContain("Left out, since it stands too far from the rest of its sheet: One!XFD1048576.");
  expect(stdout).toContain(
    "One!A2 it, or a formula that it reads, asks for more work than the sheet in the browser gives it",
  );
  const { workbook } = await readBook(readFileSync(copied));
  const formulas = workbook.sheets.flatMap(({ cells }) =>
    cells.flatMap((cell) => ("formula" in cell ? [cell.formula] : [])),
  );
  expect(formulas.filter((formula) => formula.includes("SEQUENCE"))).toEqual([]);
});
