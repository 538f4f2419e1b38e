import { type Named, plain } from "../../core/naming/findNamed";

/** A name that a table knows, spelled as names are compared, and what is offered for it. */
export interface Name {
  readonly name: string;
  readonly key: string;
  readonly words: readonly string[]; // none of a name that is one word
}

/** Signs of the longest name in the tables. */
export const LONGEST_NAME = 34;

/** Every name of these rows in their order. */
export const namesOf = (rows: readonly Named[]): Name[] =>
  rows.flatMap(({ key, aliases }) =>
    [key, ...(aliases ?? [])].map((one) => {
      const name = plain(one);
      const words = name.split(" ");
      return { name, key, words: words.length === 1 ? [] : words };
    }),
  );
