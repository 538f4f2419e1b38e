import packageJson from "../../../../package.json";
import { cellAddress, placeOf } from "../../../sheets/address";
import { aboutVersion } from "../../../reference/aboutVersion";
import { type CheckRule, practice } from "../finding";
import { ourFormulasOn } from "../ourFormulas";

/**
 * An answer of ABOUT that another version gave. Excel computes nothing when it opens a workbook, so what does not rest on a change is still of
 * the version that computed it last, and ABOUT, which rests on nothing, is computed anew only with all the rest.
 */
export const earlierVersion: CheckRule = ({ book: { workbook, shown } }) =>
  workbook.sheets.flatMap((sheet) =>
    ourFormulasOn(sheet).flatMap(({ at, calls }) => {
      if (!calls.some(({ name }) => name === "ABOUT")) return [];
      const { column, row } = placeOf(at);
      const [what, word, version] = [0, 1, 2].map(
        (right) => shown.get(sheet.name)?.get(cellAddress(column + right, row))?.value,
      );
      if (what !== aboutVersion[0] || word !== aboutVersion[1] || typeof version !== "string") return [];
      if (version === packageJson.version) return [];
      return [
        {
          rule: "Numbers of another version",
          what: `${cellAddress(column + 2, row)} says that version ${version} computed it; this is ${packageJson.version}.`,
          why: "Excel keeps the numbers of a workbook that it opens, so others may be of that version, too, and of what was wrong in it. Press Ctrl+Alt+F9, which computes all of them anew; or F2 and Enter in each formula, in this one last.",
          source: practice,
          sheet: sheet.name,
          at,
        },
      ];
    }),
  );
