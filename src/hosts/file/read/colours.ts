import type { Package } from "./package";
import { down, numberOf, type XmlNode } from "./xml";

/** Turns an element such as <color rgb="…"/> into hex; undefined where it means the program's own colour, or none we know. */
export type Colours = (node: XmlNode | undefined) => string | undefined;

/** The first eight colours of the old palette, which the format counts from 0 and again from 8. */
const PALETTE = ["#000000", "#ffffff", "#ff0000", "#00ff00", "#0000ff", "#ffff00", "#ff00ff", "#00ffff"];

/** Order in which styles count the theme's colours; the theme lists dark before light. */
const THEME_ORDER = [
  "lt1",
  "dk1",
  "lt2",
  "dk2",
  "accent1",
  "accent2",
  "accent3",
  "accent4",
  "accent5",
  "accent6",
  "hlink",
  "folHlink",
];

export function coloursOf(file: Package): Colours {
  const part = file.relations(file.workbook).find(({ kind }) => kind === "theme")?.part;
  const scheme = part === undefined ? undefined : down(file.xml(part), "themeElements", "clrScheme");
  const theme = THEME_ORDER.map((name) => {
    const colour = down(scheme, name)?.children[0];
    return hex(colour?.attributes.lastClr ?? colour?.attributes.val);
  });
  return (node) => {
    const { rgb, theme: themed, indexed, tint } = node?.attributes ?? {};
    const number = numberOf(indexed);
    const plain =
      hex(rgb) ??
      (themed === undefined ? undefined : theme[Number(themed)]) ??
      (number === undefined || number > 15 ? undefined : PALETTE[number % 8]);
    return plain === undefined ? undefined : tinted(plain, numberOf(tint) ?? 0);
  };
}

/** #rrggbb of "AARRGGBB" or "RRGGBB". */
const hex = (text: string | undefined): string | undefined => {
  const match = /^(?:[0-9a-f]{2})?([0-9a-f]{6})$/i.exec(text ?? "");
  return match === null ? undefined : `#${match[1]!.toLowerCase()}`;
};

/** A positive tint goes that part of the way to white, a negative one to black: close to what programs show. */
function tinted(colour: string, tint: number): string {
  if (tint === 0) return colour;
  const parts = [1, 3, 5].map((at) => parseInt(colour.slice(at, at + 2), 16));
  const to = tint > 0 ? 255 : 0;
  const mixed = parts.map((part) => Math.round(part + (to - part) * Math.min(1, Math.abs(tint))));
  return `#${mixed.map((part) => part.toString(16).padStart(2, "0")).join("")}`;
}
