import type { Look, StyleName } from "../../sheets/styles";
import { styles } from "../../sheets/styles";

/** A named look as the grid's style and border. */
export function gridStyle(name: StyleName): Record<string, unknown> {
  const look: Look = styles[name];
  return {
    textColor: look.ink,
    ...(look.fill === undefined ? {} : { fillColor: look.fill }),
    ...(look.bold === undefined ? {} : { bold: look.bold }),
    ...(look.italic === undefined ? {} : { italic: look.italic }),
    ...(look.size === undefined ? {} : { fontSize: look.size }),
    ...(look.align === undefined ? {} : { align: look.align }),
    ...(look.wrap ? { wrapping: "wrap", verticalAlign: "middle" } : {}),
  };
}

const BOX = { style: "thin", color: "#a08a4a" };
const BELOW = { style: "medium", color: "#5c7a78" };

export function gridBorder(name: StyleName): Record<string, unknown> | null {
  const look: Look = styles[name];
  if (look.border === "box") return { top: BOX, right: BOX, bottom: BOX, left: BOX };
  return look.border === "below" ? { bottom: BELOW } : null;
}
