import { shown } from "../../core/errors";
import type { Cause } from "../../core/network/judged/judged";
import { sayNote } from "../../reference/notes";

/** What somebody who waits for a number reads in its place. */
export const sayWaits = (cause: Cause): string => sayNote("waits", { what: whatIsMissing(cause) });

function whatIsMissing(cause: Cause): string {
  if ("label" in cause) return cause.label;
  if ("end" in cause) return sayNote("waitsForLast");
  const [nearest] = cause.nearest;
  return sayNote("waitsForMissing", {
    run: shown(cause.missing),
    nearest: nearest === undefined ? "" : ` (nearest: ${shown(nearest)})`,
  });
}
