/** npm run sheet, as a person types it. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { wanted } from "../../../scripts/sheet";
import { openBudget } from "../../../src/hosts/file/readBook";
import { sheetKeys, usualNames } from "../../../src/sheets/sheetKeys";

const root = path.resolve(__dirname, "../../..");
const folder = mkdtempSync(path.join(os.tmpdir(), "sheet-"));
const file = (name: string): string => path.join(folder, name);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function sheet(...args: string[]): { status: number | null; said: string } {
  const tsx = path.join(root, "node_modules/tsx/dist/cli.mjs");
  const { status, stdout, stderr } = spawnSync(process.execPath, [tsx, "scripts/sheet.ts", ...args], {
    cwd: root,
    encoding: "utf8",
  });
  return { status, said: (stdout + stderr).trim() };
}

test("writes a budget with all sheets, empty or with the example, in the units asked for", async () => {
  const out = file("mine.xlsx");
  const { status, said } = sheet("--units", "SI", "--out", out, "--contents", "example");
  expect(said).toContain(`${out} is written: ${sheetKeys.length} sheets, with the invented example, in SI units.`);
  expect(status).toBe(0);
  const { workbook, shown } = await openBudget(readFileSync(out));
  expect(workbook.sheets.map(({ name }) => name)).toEqual(sheetKeys.map((key) => usualNames[key]));
  const units = workbook.names.find(({ name }) => name === "units")!;
  expect(shown.get(units.sheet)!.get(units.at)).toEqual({ value: "SI" });
});

test("leaves a file that is there alone", () => {
  const out = file("there.xlsx");
  writeFileSync(out, "mine");
  expect(sheet("--units", "I-P", "--out", out)).toEqual({
    status: 1,
    said: `No sheet was written: ${out} is there already and was left alone; add --overwrite to replace it`,
  });
  expect(readFileSync(out, "utf8")).toBe("mine");
});

const USAGE = "the command is npm run sheet -- --units SI --out my-budget.xlsx [--contents example] [--overwrite]";

test.each<[string[], string]>([
  [[], `--units is IP or SI; ${USAGE}`],
  [["--units", "feet", "--out", "x.xlsx"], `--units is IP or SI, not feet; ${USAGE}`],
  [["--units", "SI"], `--out names the file to write, which ends in .xlsx; ${USAGE}`],
  [["--units", "SI", "--out", "x.csv"], `--out names the file to write, which ends in .xlsx; ${USAGE}`],
  [["--units", "SI", "--out", "x.xlsx", "--contents", "full"], `--contents is empty or example, not full; ${USAGE}`],
  [["--units", "SI", "--out", "nowhere/x.xlsx"], "there is no folder nowhere"],
])("refuses %j in one sentence", (args, sentence) => {
  expect(() => wanted(args)).toThrow(new Error(sentence)); // which the command says as above
});

test("an option that it does not know is refused too", () => {
  expect(sheet("--unit", "SI")).toEqual({
    status: 1,
    said: `No sheet was written: Unknown option '--unit'; ${USAGE}`,
  });
});
