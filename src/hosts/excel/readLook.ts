import { type Look, type StyleName, styles, USUAL_SIZE } from "../../sheets/styles";

/** What is asked of each cell. */
export const LOOKS: Excel.CellPropertiesLoadOptions = {
  format: {
    font: { bold: true, italic: true, color: true, size: true },
    fill: { color: true, pattern: true },
    borders: { style: true },
    horizontalAlignment: true,
    wrapText: true,
  },
};

const INK = "#000000"; // of a cell that nobody has styled
const PAPER = "#ffffff"; // what Excel may answer for no fill

/** A cell's look: ours by its name where it is one of ours, undefined for a cell that nobody has styled. */
export function styleOf({ format }: Excel.CellProperties, isFormula: boolean): StyleName | Look | undefined {
  const look = lookOfFormat(format ?? {});
  const names = ours.get(keyOf(look));
  if (names !== undefined) return isFormula ? (names.find((name) => name === "result") ?? names[0]) : names[0];
  return keyOf({ ...look, size: USUAL_SIZE }) === keyOf({ ink: INK, size: USUAL_SIZE }) ? undefined : look;
}

function lookOfFormat({ font, fill, borders, horizontalAlignment, wrapText }: Excel.CellPropertiesFormat): Look {
  const colour = fill?.color?.toLowerCase() ?? "";
  const isFilled = /^#[0-9a-f]{6}$/.test(colour) && fill?.pattern !== "None" && colour !== PAPER;
  const align = alignments.get(String(horizontalAlignment));
  const border = borderOf(borders ?? {});
  return {
    ink: font?.color?.toLowerCase() || INK,
    ...(isFilled ? { fill: colour } : {}),
    ...(font?.bold ? { bold: true } : {}),
    ...(font?.italic ? { italic: true } : {}),
    ...(font?.size == null || font.size === USUAL_SIZE ? {} : { size: font.size }),
    ...(align === undefined ? {} : { align }),
    ...(wrapText ? { wrap: true } : {}),
    ...(border === undefined ? {} : { border }),
  };
}

const alignments = new Map<string, NonNullable<Look["align"]>>([
  ["Left", "left"],
  ["Center", "center"],
  ["Right", "right"],
]);

/** Lines that are neither a box nor one below are left out, since a look knows no others. */
function borderOf({ top, right, bottom, left }: Excel.CellBorderCollection): Look["border"] {
  const isDrawn = (line: Excel.CellBorder | undefined): boolean => line?.style !== undefined && line.style !== "None";
  const sides = [top, right, left].filter(isDrawn).length;
  if (!isDrawn(bottom)) return undefined;
  return sides === 3 ? "box" : sides === 0 ? "below" : undefined;
}

const KEYS = ["ink", "fill", "bold", "italic", "size", "align", "wrap", "border"] as const satisfies (keyof Look)[];

const keyOf = (look: Look): string => JSON.stringify(KEYS.map((key) => look[key] ?? null));

/** Names of our styles by their looks; two of them may look alike. */
const ours = new Map<string, StyleName[]>();
for (const name of Object.keys(styles) as StyleName[]) {
  const key = keyOf(styles[name]);
  ours.set(key, [...(ours.get(key) ?? []), name]);
}
