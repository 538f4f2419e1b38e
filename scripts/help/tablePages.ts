import { referenceTables, type ReferenceTable } from "../../src/reference";
import { tableFile } from "../../src/taskpane/help/files";
import { code, type HelpPage, paragraph, section, table } from "./html";

/** One page for each reference table: all its rows, with units in the headers and the source of each row. */
export const tablePages = (): HelpPage[] => referenceTables.map(tablePage);

function tablePage({ name, title, columns, rows }: ReferenceTable): HelpPage {
  const headers = columns.map(({ name: header, unit }) => (unit === "" ? header : `${header} (${unit})`));
  return {
    file: tableFile(name),
    title,
    lead: `The reference table “${name}”: ${rows.length} rows, each with its source and how it is known.`,
    body: [
      section(
        "In a cell",
        `<pre>${code(`=DUCT.REFERENCE("${name}")`).markup}</pre>` +
          paragraph(
            "fills the whole table; a row's key and a column's header narrow it to a row, or to a value with its source and basis in the next cell.",
          ),
      ),
      section(
        "Rows",
        table(
          `${title}. A row marked weak was not seen in print (from memory, common practice, not read): check it before you rely on it.`,
          headers,
          rows.map((row) => row.map((cell) => (cell === null ? "" : String(cell)))),
        ),
      ),
    ].join("\n"),
  };
}
