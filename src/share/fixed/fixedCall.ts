import type { Extent } from "../../sheets/calculated";

/** A formula that stays as the values it showed, with all that it fills. */
export interface FixedCall {
  readonly sheet: string;
  readonly at: string;
  readonly formula: string; // as it stood
  readonly function: string;
  readonly why: string;
  readonly extent: Extent;
}

/** What a check says once an input differs; sheets flag cells by it. */
export const OLD = "inputs changed since: these numbers are old";
export const OLD_FLAG = "inputs changed since";

/** A printed table has no inputs, so nothing can make it old. */
export const comparesSomething = ({ formula }: FixedCall): boolean => !/^=[^()]*\(\s*\)$/.test(formula);
