import { percentText, showsPercent } from "../../sheets/showsPercent";

const INCHES = [2, 4, 8, 16, 32, 64]; // what an inch is divided into
const FRACTION = /^\s*(?:(\d+)\s+)?(\d{1,2})\/(\d{1,2})\s*$/;

/** The number that a fraction of an inch says, as 1/2 or 4 1/2; null for every other text. */
export function fractionIn(text: string): number | null {
  const [, whole = "0", above, below] = FRACTION.exec(text) ?? [];
  const parts = Number(below);
  return INCHES.includes(parts) && Number(above) > 0 && Number(above) < parts
    ? Number(whole) + Number(above) / parts
    : null;
}

const GROUPED = /^\s*([+-]?\d{1,3}(?:[ \u00a0\u2009\u202f]\d{3})+(?:\.\d+)?)\s*$/;

/** The number that is written in groups of three digits with blanks between, as 1 200; null for every other text. */
export function groupedIn(text: string): number | null {
  const [, number] = GROUPED.exec(text) ?? [];
  return number === undefined ? null : Number(number.replace(/\s/g, ""));
}

const THOUSANDS = /^[1-9]\d{0,2}(,\d{3})+$/;

/** Whether the grid would drop commas that set no thousands apart: 0,125 is 125 to it, and 1,2345 is 12345. */
export function hasDecimalComma(text: string): boolean {
  const [digits = ""] = /\d[\d,]*/.exec(text) ?? [];
  const { helpers, constants } = o_spreadsheet;
  return digits.includes(",") && !THOUSANDS.test(digits) && helpers.isNumber(text, constants.DEFAULT_LOCALE);
}

const isDay = (format: string | undefined): boolean =>
  format !== undefined && o_spreadsheet.helpers.isDateTimeFormat(format);

/** A number that its cell shows as a day or a time, as it is shown there; null for every other value. */
export function dayIn({ value, format }: { readonly value: unknown; readonly format?: string }): string | null {
  if (typeof value !== "number" || !isDay(format)) return null;
  const { helpers, constants } = o_spreadsheet;
  return helpers.formatValue(value, { format: format!, locale: constants.DEFAULT_LOCALE });
}

/** A number that its cell shows as a percentage, as it is shown there in full; null for every other value. */
export const percentIn = ({ value, format }: { readonly value: unknown; readonly format?: string }): string | null =>
  typeof value === "number" && value !== 0 && format !== undefined && showsPercent(format) ? percentText(value) : null;

interface UpdateCell {
  readonly type: string;
  readonly sheetId: string;
  readonly col: number;
  readonly row: number;
  readonly content?: string;
  readonly format?: string;
}

interface Cells {
  readonly getters: { readonly getCell: (at: UpdateCell) => { readonly format?: string } | undefined };
  handle(command: UpdateCell): void;
}

/**
 * Reads fractions of an inch, and numbers in groups of three digits, as numbers. The grid takes 1 200 for a month of the year 200, and 1/2 for a day, a number of some 46,000 that still looks like 1/2, and
 * 4 1/2 for one, too. What has a decimal comma stays the text that was typed, so that whoever reads it says so. A cell that shows days goes on to take days, but a plain number typed over one is that number: the
 * grid would show 4 as 1/3. So is one typed over a percentage: 8 over 3% would be 800%.
 */
export function readFractions(): void {
  const registry = o_spreadsheet.registries.corePluginRegistry;
  const OfCells = registry.get("cell") as unknown as new (...args: never[]) => Cells;
  class WithFractions extends OfCells {
    override handle(command: UpdateCell): void {
      super.handle(command.type === "UPDATE_CELL" && command.content !== undefined ? this.asMeant(command) : command);
    }

    asMeant(command: UpdateCell): UpdateCell {
      const { content = "", format, ...place } = command;
      const standing = this.getters.getCell(command)?.format;
      if (standing === "@") return command; // a text, whatever it looks like
      if (hasDecimalComma(content)) return { ...command, content: `'${content}` };
      const grouped = groupedIn(content);
      if (grouped !== null) return { ...place, content: String(grouped), ...(isDay(standing) ? { format: "" } : {}) };
      const fraction = fractionIn(content);
      if (isDay(standing)) return isPlain(content) && !isDay(format) ? { ...place, content, format: "" } : command;
      // the grid writes the sign behind a number while it is typed over a percentage; who takes it away wants none
      if (standing !== undefined && showsPercent(standing) && isPlain(content) && format === undefined)
        return { ...place, content, format: "" };
      return fraction === null ? command : { ...place, content: String(fraction) };
    }
  }
  registry.replace("cell", WithFractions as never);
}

const isPlain = (content: string): boolean => content.trim() !== "" && Number.isFinite(Number(content));
