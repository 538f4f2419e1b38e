import { callsOurs } from "../../sheets/ourCalls";
import type { Shown } from "../../sheets/calculated";
import { FileRefusal } from "../file/fileRefusal";
import { calculatedOf } from "./readGrid";
import type { GridModel } from "./grid";
import type { OpenBook } from "./openBook";

/** A book to open, and what must be said of it; "" where nothing must. */
export interface BookInFile {
  readonly book: OpenBook;
  readonly words: string;
  /** What must be said of the numbers that its file held, beside what its cells show now. */
  readonly movedWords: (now: Shown) => string;
}

/** A chosen file as a book to open, or the sentence that says why it is none. */
export async function bookInFile(file: Pick<File, "name" | "arrayBuffer">): Promise<BookInFile | string> {
  try {
    const { openBudget } = await import("../file/readBook"); // only who opens a file waits for this
    const { leftOutWords } = await import("../fit/fitted");
    const { movedWords } = await import("../movedNumbers");
    const { leftOut, ...held } = await openBudget(new Uint8Array(await file.arrayBuffer()));
    return {
      book: { workbook: held.workbook, file: xlsxName(file.name), unsaved: false },
      words: leftOutWords(leftOut),
      movedWords: (now) => movedWords(held, now, "file"),
    };
  } catch (error) {
    if (error instanceof FileRefusal) return `${error.message}${wayOut(file.name)}`;
    console.error(error);
    return "The browser could not read this file.";
  }
}

/** What stands in the grid as the bytes of an .xlsx file, or the sentence that says why it can't be one. */
export async function fileOf(model: GridModel): Promise<Uint8Array | string> {
  const book = calculatedOf(model);
  const { writeBook } = await import("../file/writeBook");
  try {
    const { name, sheets } = book.workbook;
    const isOurs = sheets.some(({ cells }) => cells.some((cell) => "formula" in cell && callsOurs(cell.formula)));
    return await writeBook(book, { title: name, recalculate: !isOurs });
  } catch (error) {
    if (error instanceof FileRefusal) return error.message;
    throw error;
  }
}

/** What to do with a file of another kind. */
function wayOut(name: string): string {
  if (/\.(csv|tsv|txt)$/i.test(name))
    return " Open it in another program, copy its cells, and paste them into the sheet.";
  return /\.(ods|xls|xlsb|numbers)$/i.test(name) ? " Save it as .xlsx in the program that made it." : "";
}

const xlsxName = (name: string): string => (/\.xlsx$/i.test(name) ? name : `${name.replace(/\.[^.]*$/, "")}.xlsx`);

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Hands a file to the browser's downloads. */
export function download(bytes: Uint8Array, name: string): void {
  const address = URL.createObjectURL(new Blob([bytes as BlobPart], { type: XLSX }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000); // the browser may still be reading it
}
