import type { FunctionMetadata } from "../../hosts/functionsFile";
import type { UnitSystem } from "../../reference/quantities";
import type { Calculated } from "../../sheets/calculated";
import { shownByName, unitsOfBook } from "../check/namedCells";

/**
 * What a form takes for the units and the density of the air where nobody has typed anything: the cells of these names, as the book's
 * own sheets do. Left out they would be I-P and standard air, whatever the book is in.
 *
 * @param book null where there is none
 * @returns by parameter: the name of a cell
 */
export function ofTheBook({ parameters }: FunctionMetadata, book: Calculated | null): Readonly<Record<string, string>> {
  const asked = (name: string): boolean => parameters.some((parameter) => parameter.name === name);
  const units = book === null ? null : unitsOfBook(book);
  if (book === null || units === null || !asked("units")) return {};
  const density = shownByName(book, "density");
  return typeof density === "number" && asked("density") ? { units: "units", density: "density" } : { units: "units" };
}

/** In which units the form's arguments are, by the word that stands under units. */
export function unitsMeant(text: string | undefined, book: Calculated | null): UnitSystem {
  const isName = text === "units" && book !== null;
  return (isName ? unitsOfBook(book) : text) === "SI" ? "SI" : "IP";
}
