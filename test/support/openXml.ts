import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";

const validator = path.resolve(__dirname, "../../node_modules/.bin/ooxml-validator");

/** Whether the validator of Microsoft's Open XML SDK is there. It weighs 79 MB, so the check of all fetches it and an install does not. */
export const hasOpenXmlValidator = existsSync(validator);

/** What the validator objects to in a workbook, each with its part; none means that no program has to repair it. */
export function openXmlFaults(bytes: Uint8Array): string[] {
  const folder = mkdtempSync(path.join(os.tmpdir(), "open-xml-"));
  const file = path.join(folder, "book.xlsx");
  writeFileSync(file, bytes);
  const { stdout, stderr, error } = spawnSync(validator, [file], { encoding: "utf8" });
  rmSync(folder, { recursive: true });
  if (error !== undefined) throw error;
  if (stdout === "") throw new Error(`the validator said nothing: ${stderr}`);
  const { errors } = JSON.parse(stdout) as { errors: { description: string; path: unknown }[] };
  return errors.map((fault) => `${JSON.stringify(fault.path)} ${fault.description}`);
}
