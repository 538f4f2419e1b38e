import { practice, type CheckRule } from "../finding";
import { itemAt } from "../../../reference/itemAt";

/** Our functions standing at #NAME?: once per sheet, at the first of them. */
export const unknownFunction: CheckRule = ({ failed: all }) => {
  const failed = all.filter(({ error }) => error.error === "#NAME?");
  const sheets = [...new Set(failed.map(({ sheet }) => sheet))];
  return sheets.map((sheet) => {
    const here = failed.filter((one) => one.sheet === sheet);
    const count = here.length === 1 ? "A formula stands" : `${here.length} formulas stand`;
    return {
      rule: "#NAME?",
      what: `${count} at #NAME? on the sheet ${sheet}.`,
      why: "The functions were not there when it was calculated. Repair, in the view Share, enters them again.",
      source: practice,
      sheet,
      at: itemAt(here, 0).at,
    };
  });
};
