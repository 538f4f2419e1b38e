import { fromDocs } from "./fromDocs";
import { type HelpPage, section } from "./html";

/** The list for the first person with Excel, from docs/: it has one home, and the pane leads to it, too. */
export const firstInExcelPage = (): HelpPage => ({
  file: "first-in-excel.html",
  title: "The first ten minutes in Excel",
  lead: "Nothing of this has run in a real Excel yet. Here is what to try, what should happen, and what to write down.",
  body: section("What to do", fromDocs("first-in-excel.md", "Steps, what should happen, and what to note")),
});
