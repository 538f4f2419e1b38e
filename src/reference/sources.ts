import { governments } from "./sources/government";
import { handbooks } from "./sources/handbooks";
import { others } from "./sources/others";
import { science } from "./sources/science";
import type { Source } from "./sources/source";
import { standards } from "./sources/standards";

export type { Source } from "./sources/source";

/** Every source that a row of a table or a formula names, once. */
export const sources = {
  ...governments,
  ...handbooks,
  ...others,
  ...science,
  ...standards,
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
