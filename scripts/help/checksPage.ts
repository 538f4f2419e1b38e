import { checksFile } from "../../src/taskpane/help/files";
import { publishedGroups } from "../../test/published/data";
import { notComputed } from "../../test/published/notComputed";
import { allowed, EXACTLY, HALF_LAST_DIGIT, type PublishedRow } from "../../test/published/row";
import { referenceTables } from "../../src/reference";
import { type HelpPage, list, paragraph, section, table } from "./html";

/** Every published number that the tests compare with ours: the same list that the tests run, computed here once more. */
export function checksPage(): HelpPage {
  const count = publishedGroups.reduce((sum, { rows }) => sum + rows.length, 0);
  return {
    file: checksFile,
    title: "How the numbers are checked",
    lead: `${count} numbers that others printed, beside ours. The tests refuse a release in which one of them falls outside its limit.`,
    body: [
      section(
        "What stands where",
        paragraph(
          "The limit is half the last printed digit unless the row says why it is wider. Where a book and we disagree, the book's number stands and the reason is given.",
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
      "These rows are from memory or common practice without a source. They are marked weak wherever they are shown.",
    ) + table("Rows without a page behind them", ["Table", "Name", "Weak rows"], rows)
  );
}
