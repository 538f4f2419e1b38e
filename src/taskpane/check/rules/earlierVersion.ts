import packageJson from "../../../../package.json";
import { aboutVersions } from "../../../sheets/aboutVersions";
import { type CheckRule, practice } from "../finding";

export const ANOTHER_VERSION = "Numbers of another version";

/**
 * An answer of ABOUT that another version gave. Excel computes nothing when it opens a workbook, so what does not rest on a change is still of
 * the version that computed it last, and ABOUT, which rests on nothing, is computed anew only with all the rest.
 */
export const earlierVersion: CheckRule = ({ book }) =>
  aboutVersions(book)
    .filter(({ version }) => version !== packageJson.version)
    .map(({ sheet, at, version, versionAt }) => ({
      rule: ANOTHER_VERSION,
      what: `${versionAt} says that version ${version} computed it; this is ${packageJson.version}.`,
      why: "Excel keeps the numbers of a workbook that it opens, so others may be of that version, too, and of what was wrong in it. Press Ctrl+Alt+F9, which computes all of them anew; or F2 and Enter in each formula, in this one last.",
      source: practice,
      sheet,
      at,
    }));
