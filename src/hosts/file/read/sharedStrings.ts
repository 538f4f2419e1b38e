import { fromFileText } from "../xlsxText";
import type { Package } from "./package";
import { child, childrenOf, type XmlNode } from "./xml";

/** The texts that cells refer to by number. */
export function sharedStrings(file: Package): readonly string[] {
  const part = file.relations(file.workbook).find(({ kind }) => kind === "sharedStrings")?.part;
  const texts: string[] = [];
  if (part !== undefined) file.xml(part, { si: (node) => texts.push(richText(node)) });
  return texts;
}

/** A text that may come in runs of different looks; how it is pronounced does not belong to it. */
export function richText(node: XmlNode | undefined): string {
  const whole = child(node, "t")?.text ?? "";
  const runs = childrenOf(node, "r").map((run) => child(run, "t")?.text ?? "");
  return fromFileText(whole + runs.join(""));
}
