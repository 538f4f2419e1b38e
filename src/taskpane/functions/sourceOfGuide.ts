import type { Guide } from "../../functions/guide";
import { titleWithBasis } from "../../reference/citation";
import { sources } from "../../reference/sources";

/** Where a function's formula comes from and how that is known, in words. */
export function sourceOfGuide({ source, basis }: Pick<Guide, "source" | "basis">): string {
  if (source === "geometry") return "Geometry";
  if (source === "tables") return "Each row names its own";
  const { title, year } = sources[source];
  return titleWithBasis(/\d/.test(year) ? `${title}, ${year}` : title, basis);
}
