import type { FunctionGuide, Task } from "../../functions/guide";
import type { FunctionMetadata } from "../../hosts/functionsFile";
import { finder, fold, wordsOf } from "../tables/words";

export interface FoundTask {
  readonly title: string;
  readonly functions: readonly { readonly guide: FunctionGuide; readonly metadata: FunctionMetadata }[];
}

/** What a word is worth where it stands; the search as a whole, as people say it, is worth more than its words apart. */
const WORTH = { name: 8, also: 6, description: 3, asks: 2, maths: 1, title: 1 } as const;
const WHOLE = 20;

/**
 * The functions, by task, that have every word of the search in their name, task, description, maths or in what people call
 * them; the best match first, and its task.
 */
export function findFunctions(tasks: readonly Task[], known: readonly FunctionMetadata[], search: string): FoundTask[] {
  const words = wordsOf(search);
  const whole = words.join(" ");
  const worthOf = (title: string, { name, maths, example, also = [] }: FunctionGuide, description: string): number => {
    const texts = { name, also: also.join("\n"), description, asks: example.asks, maths, title };
    const folded = Object.entries(texts).map(([where, text]) => ({
      text: fold(text),
      worth: WORTH[where as keyof typeof texts],
    }));
    const each = words.map((word) => {
      const isIn = finder(word);
      return Math.max(0, ...folded.filter(({ text }) => isIn(text)).map(({ worth }) => worth));
    });
    if (each.includes(0)) return 0;
    const isWhole = whole === fold(name) || also.some((called) => fold(called) === whole);
    return each.reduce((sum, one) => sum + one, isWhole ? WHOLE : 1);
  };
  const found = tasks.map(({ title, functions }) => {
    const matches = functions.flatMap((guide) => {
      const metadata = known.find(({ name }) => name === guide.name);
      const worth = metadata === undefined ? 0 : worthOf(title, guide, metadata.description);
      return metadata === undefined || worth === 0 ? [] : [{ guide, metadata, worth }];
    });
    return { title, functions: bestFirst(matches, ({ worth }) => worth) };
  });
  const some = found.filter(({ functions }) => functions.length > 0);
  return bestFirst(some, ({ functions }) => functions[0]!.worth).map(({ title, functions }) => ({
    title,
    functions: functions.map(({ guide, metadata }) => ({ guide, metadata })),
  }));
}

/** What is worth the same stays in its order. */
const bestFirst = <Item>(items: readonly Item[], worth: (item: Item) => number): Item[] =>
  [...items].sort((one, other) => worth(other) - worth(one));
