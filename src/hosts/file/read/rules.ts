import { stateOfOldRule } from "../../../sheets/oldRule";
import type { ChoiceList, Flag, Hint, OldMark } from "../../../sheets/workbook";
import { type RangeRef, readRange } from "../../../sheets/rangeRef";
import { readRectangle, rectangleText } from "../../../sheets/rectangle";
import { fromFileText } from "../xlsxText";
import { flagStyleOf } from "./styleName";
import type { Count } from "./cells";
import type { Styles } from "./styles";
import { child, childrenOf, isOn, numberOf, type XmlNode } from "./xml";

/** Gives the texts that stand in a range, for lists that are kept in cells. */
export type TextsIn = (range: RangeRef) => readonly string[];

/** Drop-downs whose choices are known; a rule of another kind is none. */
export const listsOf = (root: XmlNode, sheetName: string, textsIn: TextsIn, count: Count): ChoiceList[] =>
  childrenOf(child(root, "dataValidations"), "dataValidation").flatMap((node) => {
    const { type, sqref, showErrorMessage, errorStyle } = node.attributes;
    if (type !== "list") return [];
    const choices = choicesOf(child(node, "formula1")?.text.trim() ?? "", sheetName, textsIn);
    const strict = isOn(showErrorMessage) && (errorStyle ?? "stop") === "stop";
    return choices.length === 0 ? [] : rangesOf(sqref, count).map((range) => ({ range, choices, strict }));
  });

/** Input messages, of rules of any kind: what to type there. */
export const hintsOf = (root: XmlNode, count: Count): Hint[] =>
  childrenOf(child(root, "dataValidations"), "dataValidation").flatMap((node) => {
    const { sqref, prompt, showInputMessage } = node.attributes;
    if (prompt === undefined || prompt === "" || !isOn(showInputMessage)) return [];
    return rangesOf(sqref, count).map((range) => ({ range, text: fromFileText(prompt) }));
  });

function choicesOf(formula: string, sheetName: string, textsIn: TextsIn): readonly string[] {
  const literal = /^"(.*)"$/s.exec(formula);
  if (literal !== null) {
    const choices = fromFileText(literal[1]!.replaceAll('""', '"')).split(",");
    return choices.map((choice) => choice.trim()).filter((choice) => choice !== "");
  }
  const range = readRange(formula, sheetName);
  return range === null ? [] : textsIn(range);
}

/** Conditional formats by the text that a cell shows. */
export const flagsOf = (root: XmlNode, styles: Styles, count: Count): Flag[] =>
  childrenOf(root, "conditionalFormatting").flatMap((group) =>
    childrenOf(group, "cfRule").flatMap((rule) => {
      const { type, text, dxfId } = rule.attributes;
      const wanted = text === undefined ? searchedFor(child(rule, "formula")?.text ?? "") : fromFileText(text);
      if (type !== "containsText" || wanted === undefined) return [];
      const style = flagStyleOf(styles.ofFlag(numberOf(dxfId) ?? -1));
      return rangesOf(group.attributes.sqref, count).map((range) => ({ range, containsText: wanted, style }));
    }),
  );

/** What strikes old numbers out in a copy of ours: all ranges of a mark together, which the file has by their formats. */
export function oldMarksOf(root: XmlNode, count: Count): OldMark[] {
  const byState = new Map<string, string[]>();
  for (const group of childrenOf(root, "conditionalFormatting"))
    for (const rule of childrenOf(group, "cfRule")) {
      const state = rule.attributes.type === "expression" ? stateOfOldRule(child(rule, "formula")?.text ?? "") : null;
      if (state === null) continue;
      byState.set(state, [...(byState.get(state) ?? []), ...rangesOf(group.attributes.sqref, count)]);
    }
  return [...byState].map(([state, ranges]) => ({ ranges, state }));
}

/** The text in NOT(ISERROR(SEARCH("text",A1))), where the rule does not say it otherwise. */
function searchedFor(formula: string): string | undefined {
  const match = /SEARCH\("((?:[^"]|"")+)",/i.exec(formula);
  return match === null ? undefined : fromFileText(match[1]!.replaceAll('""', '"').replace(/~([~*?])/g, "$1"));
}

/** Ranges parted by blanks; each counts like a cell. */
const rangesOf = (text = "", count: Count): string[] =>
  text.split(/\s+/).flatMap((one) => {
    count.cell();
    const range = readRectangle(one);
    return range === null ? [] : [rectangleText(range)];
  });
