import type { Seen } from "../seenIn";
import { callsIn } from "./callsIn";
import type { NamedValue } from "./namedValue";
import { namesInCall } from "./namesInCall";
import { namesInRun } from "./namesInRun";

/**
 * Which values of the tables a book takes by name that nobody has seen in print, as one sentence; "" where it takes none.
 * No fault of the book, so no finding: somebody who trusts a number should know what it rests on.
 */
export function restsOn({ book, runs: tables }: Seen): string {
  const named: NamedValue[] = [
    ...tables.flatMap(({ runs, system }) => runs.flatMap((run) => namesInRun(run, system))),
    ...callsIn(book).flatMap(({ name, args }) => namesInCall(name, args)),
  ];
  const byWeakness = new Map<string, Set<string>>();
  for (const { name, weakness } of named)
    if (weakness !== "") byWeakness.set(weakness, (byWeakness.get(weakness) ?? new Set()).add(name));
  if (byWeakness.size === 0) return "";
  const groups = [...byWeakness].map(([weakness, names]) => {
    const kind = weakness.startsWith("common practice") ? `of ${weakness}` : weakness;
    return `${names.size} ${names.size === 1 ? "value" : "values"} ${kind}: ${[...names].join(", ")}`;
  });
  return `Rests on ${groups.join("; and on ")}. Measure, or look them up, before much hangs on them.`;
}
