import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { soffice } from "./soffice";

const found = (command: string, ...args: string[]): boolean =>
  spawnSync(command, args, { stdio: "ignore" }).status === 0;

/** Whether LibreOffice and the reader of PDFs are there; the tests that need them show as skipped where they are not. */
export const hasLibreOffice = found("soffice", "--version") && found("pdftotext", "-v");

/** The folder in which LibreOffice keeps its settings and what it writes, gone when the tests are. */
export interface Office {
  /** Opens a file as a person without settings would, and saves it as another kind. */
  readonly convert: (bytes: Uint8Array, filter: string, extension: string) => Buffer;
  /** The same for a kind that makes several files, by their names. */
  readonly convertAll: (bytes: Uint8Array, filter: string, extension: string) => ReadonlyMap<string, Buffer>;
  /** The text of a PDF as it stands on its pages. */
  readonly pdfPages: (pdf: Uint8Array) => string[];
  /** The heights of all words of a PDF, in points: from the top of the highest letter to the foot of the lowest. */
  readonly pdfHeights: (pdf: Uint8Array) => number[];
  readonly close: () => void;
}

const WORD = /<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">([^<]*)</g;

export function openOffice(): Office {
  const folder = mkdtempSync(path.join(os.tmpdir(), "office-"));
  const out = path.join(folder, "out");
  mkdirSync(out);
  const run = (command: string, args: string[]): string => {
    const { status, stderr, stdout } = spawnSync(command, args, { encoding: "utf8", maxBuffer: 1e8 });
    if (status !== 0) throw new Error(`${command} failed: ${stderr}`);
    return stdout;
  };
  const convertAll: Office["convertAll"] = (bytes, filter, extension) => {
    const file = path.join(folder, "book.xlsx");
    writeFileSync(file, bytes);
    soffice(folder, "--convert-to", `${extension}:${filter}`, "--outdir", out, file);
    return new Map(
      readdirSync(out)
        .filter((name) => name.endsWith(`.${extension}`))
        .map((name) => [name, readFileSync(path.join(out, name))]),
    );
  };
  const pdfText = (pdf: Uint8Array, how: string): string => {
    const file = path.join(folder, "pages.pdf");
    writeFileSync(file, pdf);
    return run("pdftotext", [how, file, "-"]);
  };
  return {
    convertAll,
    convert: (bytes, filter, extension) => {
      const written = convertAll(bytes, filter, extension).get(`book.${extension}`);
      if (written === undefined) throw new Error(`soffice wrote no book.${extension}`);
      return written;
    },
    pdfPages: (pdf) => pdfText(pdf, "-layout").split("\f").slice(0, -1),
    pdfHeights: (pdf) =>
      [...pdfText(pdf, "-bbox").matchAll(WORD)].flatMap(([, left, top, right, foot, word = ""]) => {
        const [wide, high] = [Number(right) - Number(left), Number(foot) - Number(top)];
        return word.length <= 2 && wide > high ? [] : [high]; // two letters side by side that stand on end, as along an axis
      }),
    close: () => rmSync(folder, { recursive: true, force: true }),
  };
}
