import { findNamed, unknownName } from "../../core/naming/findNamed";
import { cautionTopics } from "../../reference/cautions/topics";
import type { CautionRow } from "../../reference/schema";
import { sources } from "../../reference/sources";
import { singleCell } from "../arguments";
import { refuseCell } from "../cellErrors";

/** CAUTIONS' answer: topic, caution, source, where in it. A topic is found by its name or by a word that leads to it. */
export function cautionTable(rows: readonly CautionRow[], topic: unknown): string[][] {
  const cell = singleCell("topic", topic);
  const header = ["Topic", "Caution", "Basis", "Source", "Where"];
  const all = (chosen: readonly CautionRow[]): string[][] => [
    header,
    ...chosen.map((row) => [row.topic, row.text, row.basis, sources[row.source].title, row.locator]),
  ];
  if (cell === null || cell === 0) return all(rows);
  if (typeof cell !== "string")
    return refuseCell("topic", cell, `one of ${cautionTopics.map(({ key }) => key).join(", ")}`);
  const found = findNamed(cautionTopics, cell);
  if (found === undefined) throw unknownName("topic", cautionTopics, cell, "a topic of the cautions");
  return all(rows.filter((row) => row.topic === found.key));
}
