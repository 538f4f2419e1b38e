import type { Look } from "../../../sheets/styles";
import { type Colours, coloursOf } from "./colours";
import { formatCode } from "./numberFormats";
import type { Package } from "./package";
import { child, childrenOf, down, isOn, numberOf, type XmlNode } from "./xml";

/** What the style of a cell says; both undefined where it says nothing. */
interface ReadStyle {
  readonly look?: Look;
  readonly format?: string;
}

export interface Styles {
  readonly ofCell: (number: number) => ReadStyle;
  readonly ofFlag: (number: number) => Look; // of a conditional format
}

const BLACK = "#000000";

export function stylesOf(file: Package): Styles {
  const part = file.relations(file.workbook).find(({ kind }) => kind === "styles")?.part;
  const root = part === undefined ? undefined : file.xml(part);
  const colours = coloursOf(file);
  const list = (group: string, name: string): readonly XmlNode[] => childrenOf(child(root, group), name);
  const formats = new Map(
    list("numFmts", "numFmt").map(({ attributes }) => [Number(attributes.numFmtId), attributes.formatCode ?? ""]),
  );
  const [fonts, fills, borders] = [list("fonts", "font"), list("fills", "fill"), list("borders", "border")];
  const usualSize = sizeOf(fonts[0]);
  const cells = list("cellXfs", "xf").map((xf): ReadStyle => {
    const number = (name: string): number => numberOf(xf.attributes[name]) ?? 0;
    const look = {
      ...fontLook(fonts[number("fontId")], colours, usualSize),
      ...fillLook(fills[number("fillId")], colours),
      ...alignmentLook(child(xf, "alignment")),
      ...borderLook(borders[number("borderId")]),
    };
    const format = formatCode(number("numFmtId"), formats);
    const isPlain = look.ink === BLACK && Object.keys(look).length === 1;
    return { ...(isPlain ? {} : { look }), ...(format === undefined ? {} : { format }) };
  });
  const flags = list("dxfs", "dxf").map((dxf) => ({
    ...fontLook(child(dxf, "font"), colours, undefined),
    ...fillLook(child(dxf, "fill"), colours),
  }));
  return { ofCell: (number) => cells[number] ?? {}, ofFlag: (number) => flags[number] ?? { ink: BLACK } };
}

const sizeOf = (font: XmlNode | undefined): number | undefined => numberOf(child(font, "sz")?.attributes.val);

function fontLook(font: XmlNode | undefined, colours: Colours, usualSize: number | undefined): Look {
  const size = sizeOf(font);
  return {
    ink: colours(child(font, "color")) ?? BLACK,
    ...(isSet(font, "b") ? { bold: true } : {}),
    ...(isSet(font, "i") ? { italic: true } : {}),
    ...(size === undefined || usualSize === undefined || size === usualSize ? {} : { size }),
  };
}

/** <b/> says yes, <b val="0"/> no. */
function isSet(font: XmlNode | undefined, name: string): boolean {
  const node = child(font, name);
  return node !== undefined && (node.attributes.val === undefined || isOn(node.attributes.val));
}

/** A cell's fill stands in the pattern's foreground, a conditional format's in its background. */
function fillLook(fill: XmlNode | undefined, colours: Colours): Partial<Look> {
  const pattern = child(fill, "patternFill");
  if (pattern === undefined || ["none", "gray125"].includes(pattern.attributes.patternType ?? "solid")) return {};
  const colour = colours(child(pattern, "fgColor")) ?? colours(child(pattern, "bgColor"));
  return colour === undefined ? {} : { fill: colour };
}

function alignmentLook(alignment: XmlNode | undefined): Partial<Look> {
  const { horizontal, wrapText } = alignment?.attributes ?? {};
  const isKnown = horizontal === "left" || horizontal === "center" || horizontal === "right";
  return { ...(isKnown ? { align: horizontal } : {}), ...(isOn(wrapText) ? { wrap: true } : {}) };
}

function borderLook(border: XmlNode | undefined): Partial<Look> {
  const has = (side: string): boolean => (down(border, side)?.attributes.style ?? "none") !== "none";
  if (["left", "right", "top", "bottom"].every(has)) return { border: "box" };
  return has("bottom") ? { border: "below" } : {};
}
