import { FUNCTION_SCRIPTS } from "../../hosts/functionsFile";
import { createCustomFunctions } from "../../hosts/local/customFunctions";
import { type FunctionAnswer, callFunction, type Question } from "./callFunction";

/**
 * The cell functions in a worker of their own: the pane calls the very files that the cells call, and never meets the
 * runtime in which Excel has loaded them.
 */
export interface AskedOfCalculator {
  readonly number: number;
  readonly question: Question;
}

export interface AnsweredByCalculator {
  readonly number: number;
  readonly answer: FunctionAnswer;
}

declare const importScripts: (...addresses: string[]) => void;

const { customFunctions, functions } = createCustomFunctions((message) => console.warn(message));
Object.assign(globalThis, { CustomFunctions: customFunctions });
importScripts(...FUNCTION_SCRIPTS);

const worker = globalThis as unknown as {
  onmessage: (event: MessageEvent<AskedOfCalculator>) => void;
  postMessage: (message: AnsweredByCalculator) => void;
};
worker.onmessage = ({ data: { number, question } }) =>
  worker.postMessage({ number, answer: callFunction(functions, question) });
