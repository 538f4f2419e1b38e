import { placeOf } from "../../sheets/address";
import { columnsOf, placesIn, type Rectangle, rowsOf } from "../../sheets/rectangle";
import { type Look, lookOf, USUAL_SIZE } from "../../sheets/styles";
import type { Flag, Sheet } from "../../sheets/workbook";
import { rangeAt } from "./rangeAt";
import { blocksOf } from "./blocks";
import { BELOW, BOX, type Line } from "./lines";

/** How cells look and show their numbers. Cells of one look that lie together are dressed together. */
export function writeLooks(sheet: Excel.Worksheet, { cells }: Pick<Sheet, "cells">): void {
  const looks = cells.flatMap(({ at, style }) =>
    style === undefined ? [] : [{ ...placeOf(at), key: JSON.stringify(lookOf(style)) }],
  );
  for (const block of blocksOf(looks)) dress(rangeAt(sheet, block), JSON.parse(block.key) as Look, block);
  const formats = cells.flatMap(({ at, format }) => (format === undefined ? [] : [{ ...placeOf(at), key: format }]));
  for (const block of blocksOf(formats))
    rangeAt(sheet, block).numberFormat = placesIn(block).map((line) => line.map(() => block.key));
}

function dress({ format }: Excel.Range, look: Look, block: Rectangle): void {
  format.font.color = look.ink;
  format.font.size = look.size ?? USUAL_SIZE;
  if (look.bold) format.font.bold = true;
  if (look.italic) format.font.italic = true;
  if (look.fill !== undefined) format.fill.color = look.fill;
  if (look.align !== undefined) format.horizontalAlignment = alignments[look.align];
  if (look.wrap) {
    format.wrapText = true;
    format.verticalAlignment = "Center";
  }
  if (look.border !== undefined) rule(format.borders, look.border, block);
}

const alignments = { left: "Left", center: "Center", right: "Right" } as const;

/** Lines between the cells of a block as well as around it: each of them is a box, or has its line below. */
function rule(borders: Excel.RangeBorderCollection, border: "box" | "below", block: Rectangle): void {
  const line = border === "box" ? BOX : BELOW;
  draw(borders.getItem("EdgeBottom"), line);
  if (rowsOf(block) > 1) draw(borders.getItem("InsideHorizontal"), line);
  if (border === "below") return;
  draw(borders.getItem("EdgeTop"), line);
  draw(borders.getItem("EdgeLeft"), line);
  draw(borders.getItem("EdgeRight"), line);
  if (columnsOf(block) > 1) draw(borders.getItem("InsideVertical"), line);
}

function draw(border: Excel.RangeBorder, { weight, ink }: Line): void {
  border.style = "Continuous";
  border.weight = weight;
  border.color = ink;
}

/** A colour for what a cell says; the words themselves stand in the cell. */
export function writeFlags(sheet: Excel.Worksheet, flags: readonly Flag[]): void {
  for (const { range, containsText, style } of flags) {
    const look = lookOf(style);
    const { textComparison } = sheet.getRange(range).conditionalFormats.add("ContainsText");
    textComparison.rule = { operator: "Contains", text: containsText };
    textComparison.format.font.color = look.ink;
    if (look.bold) textComparison.format.font.bold = true;
    if (look.fill !== undefined) textComparison.format.fill.color = look.fill;
  }
}
