import { sizesFile } from "../../src/taskpane/help/files";
import { fromDocs } from "./fromDocs";
import type { HelpPage } from "./html";

/** How the search for sizes goes and what it does not know, from docs/. */
export const sizesPage = (): HelpPage => ({
  file: sizesFile,
  title: "How SIZES searches",
  lead: "Which diameters it chooses from, what its words promise and what not, and what it does not know.",
  body: fromDocs("sizes.md"),
});
