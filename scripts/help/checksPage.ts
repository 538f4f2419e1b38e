import { checksFile } from "../../src/taskpane/help/files";
import { publishedGroups } from "../../test/published/data";
import { notComputed } from "../../test/published/notComputed";
import { allowed, EXACTLY, HALF_LAST_DIGIT, isCopied, type PublishedRow } from "../../test/published/row";
import { referenceTables } from "../../src/reference";
import { type HelpPage, list, paragraph, section, table } from "./html";

/** The published numbers that the tests compare with ours: the same list that the tests run, computed here once more. */
export function checksPage(): HelpPage {
  const rows = publishedGroups.flatMap((group) => group.rows);
  const copied = rows.filter(isCopied).length;
  return {
    file: checksFile,
    title: "How the numbers are checked",
    lead: `${rows.length - copied} numbers computed by us beside printed values, and ${copied} numbers copied as printed and read back. The tests refuse a release in which one of them falls outside its limit.`,
    body: [
      section(
        "What stands where",
        paragraph(
          "A computed number shows that our formulas do what the books do. A copied one shows only that it reached the cell as it was printed: its row says “copied exactly”.",
        ) +
          paragraph(
            "The limit of a computed number is half the last printed digit unless the row says why it is wider. Where a book and we disagree, the book's number stands and the reason is given.",
          ) +
          paragraph(
            "The printed values were taken down from the sources once; each table's rows were compared with that list one by one. Nobody opened the pages a second time, so a slip in the list would be a slip here.",
          ),
      ),
      ...publishedGroups.map(({ title, rows }) =>
        section(
          title.charAt(0).toUpperCase() + title.slice(1),
          table(
            `Published against computed: ${title}`,
            ["What", "Printed", "Ours", "Difference", "Limit", "Source"],
            rows.map(checkRow),
          ),
        ),
      ),
      section("Weak spots", weakSpots()),
      section(
        "Printed but not computed",
        list(notComputed.map(({ ids, reason }) => `${ids.length} ${ids.length === 1 ? "row" : "rows"}: ${reason}`)),
      ),
    ].join("\n"),
  };
}

function checkRow(row: PublishedRow): string[] {
  const ours = row.compute();
  const difference = ours - Number(row.printed);
  return [
    row.what,
    `${row.printed} ${row.unit}`,
    `${Number(ours.toPrecision(Math.max(6, significant(row.printed) + 1)))} ${row.unit}`,
    `${Number(difference.toPrecision(2))}`,
    limitOf(row),
    row.source,
  ];
}

const significant = (printed: string): number => printed.replace(/e.*$/i, "").replace(/^[-0.]+|[.]/g, "").length;

function limitOf(row: PublishedRow): string {
  if (row.tolerance === EXACTLY) return "copied exactly";
  if (row.tolerance === HALF_LAST_DIGIT) return `±${Number(allowed(row).toPrecision(2))}`;
  return `±${Number(allowed(row).toPrecision(2))}: ${row.tolerance.why}`;
}

/** The rows of each table that nobody has seen in print. */
function weakSpots(): string {
  const rows = referenceTables.flatMap(({ name, title, rows: all, columns }) => {
    const at = columns.findIndex((column) => column.name === "weak");
    const weak = at < 0 ? 0 : all.filter((row) => row[at] !== null && row[at] !== "").length;
    return weak === 0 ? [] : [[title, name, `${weak} of ${all.length}`]];
  });
  return (
    paragraph(
      "These rows are from memory, common practice without a source, or name a source whose figure was not read. They are marked weak wherever they are shown.",
    ) + table("Rows without a page behind them", ["Table", "Name", "Weak rows"], rows)
  );
}
