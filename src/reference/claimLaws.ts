import type { Basis, Provenance } from "./schema";
import type { SourceId } from "./sources";

const from = (source: SourceId, basis: Basis, locator: string): Provenance => ({
  source,
  locator,
  basis,
  checked: null,
});

/** What the checks rest on besides the tables. */
export const euler = from("eulerMemory", "from memory", "p = ρ u² without pre-rotation");
export const compression = from("cengel2006", "from memory", "work of isothermal compression");
export const electric = from("commonPractice", "common practice", "power factor at most 1");
export const practice = from("commonPractice", "common practice", "what a data sheet must say");
export const rating = from("nemaMg1Memory", "from memory", "a rating is the output that a motor holds for its duty");
