import { unknownName, plain } from "../../core/naming/findNamed";
import type { CautionRow } from "../../reference/schema";
import { sources } from "../../reference/sources";
import { singleCell } from "../arguments";
import { refuseCell } from "../cellErrors";

/** CAUTIONS' answer: topic, caution, source, where in it. */
export function cautionTable(rows: readonly CautionRow[], topic: unknown): string[][] {
  const cell = singleCell("topic", topic);
  const topics = [...new Set(rows.map((row) => row.topic))];
  const header = ["Topic", "Caution", "Basis", "Source", "Where"];
  const all = (chosen: readonly CautionRow[]): string[][] => [
    header,
    ...chosen.map((row) => [row.topic, row.text, row.basis, sources[row.source].title, row.locator]),
  ];
  if (cell === null || cell === 0) return all(rows);
  if (typeof cell !== "string") return refuseCell("topic", cell, `one of ${topics.join(", ")}`);
  const found = topics.find((one) => plain(one) === plain(cell));
  if (found === undefined)
    throw unknownName(
      "topic",
      topics.map((key) => ({ key })),
      cell,
      "a topic of the cautions",
    );
  return all(rows.filter((row) => row.topic === found));
}
