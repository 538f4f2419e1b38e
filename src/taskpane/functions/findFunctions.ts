import { fold, wordsOf } from "../tables/words";
import type { FunctionGuide, Task } from "../../functions/guide";
import type { FunctionMetadata } from "../../hosts/functionsFile";

export interface FoundTask {
  readonly title: string;
  readonly functions: readonly { readonly guide: FunctionGuide; readonly metadata: FunctionMetadata }[];
}

/** The functions, by task, that have every word of the search in their name, task, description or maths. */
export function findFunctions(tasks: readonly Task[], known: readonly FunctionMetadata[], search: string): FoundTask[] {
  const words = wordsOf(search);
  return tasks
    .map(({ title, functions }) => ({
      title,
      functions: functions.flatMap((guide) => {
        const metadata = known.find(({ name }) => name === guide.name);
        if (metadata === undefined) return [];
        const text = fold([title, guide.name, metadata.description, guide.maths, guide.example.asks].join("\n"));
        return words.every((word) => text.includes(word)) ? [{ guide, metadata }] : [];
      }),
    }))
    .filter(({ functions }) => functions.length > 0);
}
