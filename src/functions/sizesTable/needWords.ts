import type { SizeNeed } from "../../core/network/sizes/sizeTask";
import { sayNote } from "../../reference/notes";

const NOTES = { airflow: "needOfAir", velocity: "needOfSpeed", "not faster": "needOfCalm" } as const;

/** What a need is about, and in which scenario. */
export const needWords = ({ kind }: SizeNeed, scenario: string): string => sayNote(NOTES[kind], { scenario });
