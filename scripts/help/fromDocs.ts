import { readFileSync } from "node:fs";
import path from "node:path";
import { Marked, type Tokens } from "marked";
import { table } from "./html";

const DOCS = path.join(__dirname, "../../docs");
const OTHER_PAGES: Readonly<Record<string, string>> = { "in-excel.md": "install.html" }; // what in docs/ is a help page, too

/** A page of docs/ in our help's own markup: it has one home. Its title is the help page's own, so it is left out. */
export function fromDocs(file: string, captionOfTables = ""): string {
  const marked = new Marked({ async: false });
  marked.use({
    renderer: {
      heading({ depth, tokens }: Tokens.Heading) {
        return depth === 1 ? "" : `<h2>${this.parser.parseInline(tokens)}</h2>`;
      },
      link({ href, tokens }: Tokens.Link) {
        return `<a href="${OTHER_PAGES[href] ?? href}">${this.parser.parseInline(tokens)}</a>`;
      },
      table({ header, rows }: Tokens.Table) {
        const cell = ({ tokens }: Tokens.TableCell) => ({ markup: this.parser.parseInline(tokens) });
        const heads = header.map(({ text: head }) => head);
        return table(
          captionOfTables,
          heads,
          rows.map((row) => row.map(cell)),
        );
      },
    },
  });
  return marked.parse(readFileSync(path.join(DOCS, file), "utf8")) as string;
}
