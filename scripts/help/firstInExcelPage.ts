import { readFileSync } from "node:fs";
import path from "node:path";
import { Marked, type Tokens } from "marked";
import { type HelpPage, section, table } from "./html";

const SOURCE = path.join(__dirname, "../../docs/first-in-excel.md");
const OTHER_PAGES: Readonly<Record<string, string>> = { "in-excel.md": "install.html" }; // what in docs/ is a help page, too

/** The list for the first person with Excel, from docs/: it has one home, and the pane leads to it, too. */
export const firstInExcelPage = (): HelpPage => ({
  file: "first-in-excel.html",
  title: "The first ten minutes in Excel",
  lead: "Nothing of this has run in a real Excel yet. Here is what to try, what should happen, and what to write down.",
  body: section("What to do", markupOf(readFileSync(SOURCE, "utf8"))),
});

/** The page in our help's own markup; its heading is the page's, so it is left out. */
function markupOf(text: string): string {
  const marked = new Marked({ async: false });
  marked.use({
    renderer: {
      heading: () => "",
      link({ href, tokens }: Tokens.Link) {
        return `<a href="${OTHER_PAGES[href] ?? href}">${this.parser.parseInline(tokens)}</a>`;
      },
      table({ header, rows }: Tokens.Table) {
        const cell = ({ tokens }: Tokens.TableCell) => ({ markup: this.parser.parseInline(tokens) });
        const heads = header.map(({ text: head }) => head);
        return table(
          "Steps, what should happen, and what to note",
          heads,
          rows.map((row) => row.map(cell)),
        );
      },
    },
  });
  return marked.parse(text) as string;
}
