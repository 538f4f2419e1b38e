import katex from "katex";
import type { Markup } from "./html";

/** TeX as MathML, which browsers set themselves: no font, style or script is needed. */
export const inLine = (tex: string): Markup => ({ markup: mathML(tex, false) });

/** A formula on lines of its own; what stands apart by a wide space gets a line each, so that a phone shows it whole. */
export const displayed = (tex: string): string =>
  tex
    .split(/,?\s*\\qquad\s*/)
    .map((part) => `<div class="formula">${mathML(part, true)}</div>`)
    .join("\n");

function mathML(tex: string, displayMode: boolean): string {
  const set = katex.renderToString(tex, { output: "mathml", displayMode, throwOnError: true, strict: "error" });
  return set.replace(/^<span class="katex">|<\/span>$/g, "").replace(/<mi>(.)<\/mi>/gu, '<mi class="letter">$1</mi>'); // see help.css
}
