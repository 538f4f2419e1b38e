import type { SourceId } from "../../reference/sources";
import type { Matrix } from "./answering";

/** What the pane says of a function beyond functions.json: its maths, its limits and one example. */
export interface FunctionGuide {
  readonly name: string;
  readonly maths: string;
  readonly source: SourceId | "geometry";
  readonly limits: string;
  readonly example: Example;
}

/** Arguments as one types them; a table stands for a range. Their result is computed when it is shown. */
export interface Example {
  readonly asks: string;
  readonly args: readonly (string | Matrix)[];
}

export interface Task {
  readonly title: string;
  readonly functions: readonly FunctionGuide[];
}
