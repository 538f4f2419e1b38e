import { type Look, lookOf, type StyleName, styles } from "../../sheets/styles";

/** A style as the grid keeps it. What the grid does not know, it keeps beside the rest: so a look keeps our name for it. */
export type GridStyle = Readonly<Record<string, unknown>>;
export type GridBorder = Readonly<Record<string, unknown>>;

const NAME = "styleName";

/** A look as the grid's style. */
export function gridStyle(style: StyleName | Look): GridStyle {
  const look = lookOf(style);
  return {
    textColor: look.ink,
    ...(look.fill === undefined ? {} : { fillColor: look.fill }),
    ...(look.bold === undefined ? {} : { bold: look.bold }),
    ...(look.italic === undefined ? {} : { italic: look.italic }),
    ...(look.size === undefined ? {} : { fontSize: look.size }),
    ...(look.align === undefined ? {} : { align: look.align }),
    ...(look.wrap ? { wrapping: "wrap", verticalAlign: "middle" } : {}),
    ...(typeof style === "string" ? { [NAME]: style } : {}),
  };
}

const BOX = { style: "thin", color: "#a08a4a" };
const BELOW = { style: "medium", color: "#5c7a78" };

export function gridBorder(style: StyleName | Look): GridBorder | null {
  const { border } = lookOf(style);
  if (border === "box") return { top: BOX, right: BOX, bottom: BOX, left: BOX };
  return border === "below" ? { bottom: BELOW } : null;
}

/**
 * The look back from the grid: by its name where nothing of it was changed, else as it is; undefined for a cell that
 * nobody has styled. Lines that are neither a box nor one below are left out, since a look knows no others.
 */
export function lookFromGrid(
  style: GridStyle | undefined,
  border: GridBorder | null | undefined,
): StyleName | Look | undefined {
  const look = plainLook(style ?? {}, border ?? {});
  const name = style?.[NAME];
  if (isStyleName(name) && sameLook(named(name, look), look)) return name;
  return sameLook(look, { ink: INK }) ? undefined : look;
}

/** A style, less its lines where the cell has none: the grid drops those that a neighbour's line takes the place of. */
function named(name: StyleName, { border }: Look): Look {
  const { border: lines, ...look }: Look = styles[name];
  return border === undefined || lines === undefined ? look : { ...look, border: lines };
}

/** The style that a conditional format was given; it has no lines. */
export const styleNameOf = (style: GridStyle): StyleName | undefined => {
  const name = style[NAME];
  return isStyleName(name) ? name : undefined;
};

const INK = "#000000"; // of a cell without a style

const isStyleName = (name: unknown): name is StyleName => typeof name === "string" && Object.hasOwn(styles, name);

const SIDES = ["top", "right", "bottom", "left"] as const;

/** On which sides a cell has a line; of what kind, no look says. */
export const sidesOf = (border: GridBorder | null): string =>
  border === null ? "" : SIDES.filter((side) => border[side] != null).join(" ");

function plainLook(style: GridStyle, border: GridBorder): Look {
  const { textColor, fillColor, bold, italic, fontSize, align, wrapping } = style;
  const lines = SIDES.map((side) => border[side] != null);
  const bordered = lines.every(Boolean) ? "box" : lines[2] && lines.filter(Boolean).length === 1 ? "below" : undefined;
  return {
    ink: typeof textColor === "string" ? textColor.toLowerCase() : INK,
    ...(typeof fillColor === "string" ? { fill: fillColor.toLowerCase() } : {}),
    ...(bold === true ? { bold } : {}),
    ...(italic === true ? { italic } : {}),
    ...(typeof fontSize === "number" && fontSize !== 10 ? { size: fontSize } : {}),
    ...(align === "left" || align === "center" || align === "right" ? { align } : {}),
    ...(wrapping === "wrap" ? { wrap: true } : {}),
    ...(bordered === undefined ? {} : { border: bordered }),
  };
}

const KEYS = ["ink", "fill", "bold", "italic", "size", "align", "wrap", "border"] as const satisfies (keyof Look)[];
const sameLook = (one: Look, other: Look): boolean => KEYS.every((key) => (one[key] || null) === (other[key] || null));
