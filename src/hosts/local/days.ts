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

const isDay = (format: string | undefined): boolean =>
  format !== undefined && o_spreadsheet.helpers.isDateTimeFormat(format);

/** A number that its cell shows as a day or a time, as it is shown there; null for every other value. */
export function dayIn({ value, format }: { readonly value: unknown; readonly format?: string }): string | null {
  if (typeof value !== "number" || !isDay(format)) return null;
  const { helpers, constants } = o_spreadsheet;
  return helpers.formatValue(value, { format: format!, locale: constants.DEFAULT_LOCALE });
}

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
 * Reads fractions of an inch as numbers. The grid takes 1/2 for a day, a number of some 46,000 that still looks like 1/2, and
 * 4 1/2 for one, too. A cell that shows days goes on to take days, but a plain number typed over one is that number: the
 * grid would show 4 as 1/3.
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
      const fraction = fractionIn(content);
      if (isDay(standing)) return isPlain(content) && !isDay(format) ? { ...place, content, format: "" } : command;
      return fraction === null ? command : { ...place, content: String(fraction) };
    }
  }
  registry.replace("cell", WithFractions as never);
}

const isPlain = (content: string): boolean => content.trim() !== "" && Number.isFinite(Number(content));
