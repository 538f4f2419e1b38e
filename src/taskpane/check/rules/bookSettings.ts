import type { BookSetting } from "../../../sheets/calculated";
import { itemAt } from "../../../reference/itemAt";
import { type CheckRule, practice } from "../finding";
import { ourFormulasOn } from "../ourFormulas";

const SAID: Readonly<Record<BookSetting, { readonly what: string; readonly why: string }>> = {
  "calculates when asked": {
    what: "Excel calculates this book only when asked, so cells may show numbers of before your last change.",
    why: "Set Formulas › Calculation Options to Automatic, or press F9, then look again.",
  },
  "rounds as shown": {
    what: "This book rounds every number to the decimals that it shows, and reckons on with the rounded one.",
    why: "A pressure of 0.15 that is shown as 0.2 is a third too high from there on. Take the tick from Set precision as displayed, under File › Options › Advanced.",
  },
  "counts in circles": {
    what: "Excel goes round in circles (iterative calculation): a formula that rests on itself shows a number, and Excel does not warn of it.",
    why: "Where it stops depends on the number of rounds, so the number means nothing; and functions such as ours have been seen to show #CALC! there. Take the tick from Enable iterative calculation, under File › Options › Formulas.",
  },
};

/** Settings of the program under which our answers are not what the functions gave, said once, at the first of them. */
export const bookSettings: CheckRule = ({ book: { workbook, settings = [] }, answers }) => {
  const ofAnswers = new Set(answers.map(({ sheet }) => sheet));
  const ours = workbook.sheets.flatMap((sheet) =>
    ourFormulasOn(sheet).map(({ at }) => ({ sheet: sheet.name, at, first: ofAnswers.has(sheet.name) })),
  );
  if (ours.length === 0) return [];
  const { sheet, at } = ours.find(({ first }) => first) ?? itemAt(ours, 0);
  return settings.map((setting) => ({ rule: "A setting of Excel", ...SAID[setting], source: practice, sheet, at }));
};
