import type { AddOutcome, CopyOutcome, RepairOutcome } from "../../hosts/host";
import { count } from "../hostUse/words";
import { lastOf } from "../../reference/itemAt";

/** A list as one says it: "Runs, Fan and Budget". */
export const listWords = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${lastOf(words)}`;

export const addedWords = (outcome: AddOutcome): string[] =>
  outcome.added
    ? [
        `Added ${count(outcome.sheets.length, "sheet", "sheets")}: ${listWords(outcome.sheets)}.`,
        "Nothing that was there has changed.",
        ...(outcome.refused ?? []),
      ]
    : [sentence(outcome.why)];

const MOST_NAMED = 12;

export function revivedWords(outcome: AddOutcome): string[] {
  if (!outcome.added) return [sentence(outcome.why)];
  const left = outcome.left ?? [];
  const more = left.length - MOST_NAMED;
  return [
    `Live again: ${listWords(outcome.sheets)}.`,
    ...(outcome.moved === undefined || outcome.moved === "" ? [] : [outcome.moved]),
    ...(outcome.refused ?? []),
    ...(left.length === 0
      ? []
      : [
          `${count(left.length, "cell was not made live and stays", "cells were not made live and stay")} as in the copy:`,
        ]),
    ...left.slice(0, MOST_NAMED).map(sentence),
    ...(more > 0 ? [`And ${more} more.`] : []),
  ];
}

/** Only what is known: that a workbook appeared is for the user to see. */
const whereItIs = ({ opening }: Extract<CopyOutcome, { made: true }>): string => {
  if (opening === undefined) return "It lies among your browser's downloads.";
  return opening.refused === null
    ? "Excel was asked to open it as a new workbook. If none appeared (a browser may stop the new tab), save the copy as a file here."
    : `It did not open as a new workbook. ${opening.refused} Save the copy as a file here, then open that.`;
};

const someWords = (cells: readonly string[]): string =>
  `${listWords(cells.slice(0, MOST_NAMED))}${cells.length > MOST_NAMED ? " …" : ""}`;

const uncheckedWords = (cells: readonly string[]): string =>
  `Not compared with your budget, since formulas that change by themselves or that only your program knows are not computed here: ${someWords(cells)}.`;

export function copiedWords(outcome: CopyOutcome): string[] {
  if (!outcome.made) return [sentence(outcome.why)];
  const { name, live, fixed, untranslated, unchecked } = outcome;
  const more = untranslated.length - MOST_NAMED;
  return [
    `Made ${name}. ${whereItIs(outcome)}`,
    `${count(live, "cell recalculates", "cells recalculate")} there; ${count(fixed, "keeps its present number", "keep their present numbers")}.`,
    ...(untranslated.length === 0
      ? []
      : [
          `${count(untranslated.length, "cell could not be translated and stays at its last value", "cells could not be translated and stay at their last value")}:`,
        ]),
    ...untranslated.slice(0, MOST_NAMED).map(sentence),
    ...(more > 0 ? [`And ${more} more; the copy's first sheet lists them all.`] : []),
    ...(unchecked.length === 0 ? [] : [uncheckedWords(unchecked)]),
  ];
}

export function repairedWords({ repaired, stillWrong, protectedSheets, textCells }: RepairOutcome): string[] {
  const done =
    repaired === 0 && stillWrong.length === 0 && textCells.length === 0
      ? "No formula of ours stands at #NAME? or #BUSY!, so nothing was changed."
      : `Entered ${count(repaired, "formula", "formulas")} again.`;
  return [
    done,
    ...(stillWrong.length === 0
      ? []
      : [
          `Still at #NAME? or #BUSY!: ${someWords(stillWrong)}. Close the workbook, open this pane first, then try again.`,
        ]),
    ...(protectedSheets.length === 0 ? [] : [`Left alone because protected: ${listWords(protectedSheets)}.`]),
    ...(textCells.length === 0
      ? []
      : [
          `Left alone because formatted as text, where a formula becomes its own letters: ${someWords(textCells)}. Give each the number format General, then repair again.`,
        ]),
  ];
}

/** A host's reason with a capital and a full stop. */
const sentence = (words: string): string => {
  const trimmed = words.trim();
  return `${trimmed.charAt(0).toUpperCase()}${trimmed.slice(1)}${/[.!?]$/.test(trimmed) ? "" : "."}`;
};
