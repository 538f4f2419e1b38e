import type { Patience, SearchedSoFar } from "../../../core/network/sizes/chooseSizes";
import { FUNCTION_SCRIPTS } from "../../../hosts/functionsFile";
import { createCustomFunctions } from "../../../hosts/local/customFunctions";
import { callFunction, type FunctionAnswer, type Matrix } from "../../functions/callFunction";

/** A search in a worker of its own, by the very files that the cells call: neither the page nor Excel waits for it. */
export type ToldBySearch = { readonly far: SearchedSoFar } | { readonly answer: FunctionAnswer };

/** What is asked: the arguments of SIZES, and the runs that may be solved. */
export interface AskedOfSearch {
  readonly args: readonly Matrix[];
  readonly most: number;
}

declare const importScripts: (...addresses: string[]) => void;

const EVERY = 200; // ms between two words of how far it is

const worker = globalThis as unknown as {
  onmessage: (event: MessageEvent<AskedOfSearch>) => void;
  postMessage: (message: ToldBySearch) => void;
  ductLedgerPatience: Patience;
};
const { customFunctions, functions } = createCustomFunctions((message) => console.warn(message));
Object.assign(globalThis, { CustomFunctions: customFunctions });
importScripts(...FUNCTION_SCRIPTS);

worker.onmessage = ({ data: { args, most } }) => {
  let told = 0;
  const hear = (far: SearchedSoFar): void => {
    if (Date.now() - told < EVERY) return;
    told = Date.now();
    worker.postMessage({ far });
  };
  worker.ductLedgerPatience = { most, hear };
  worker.postMessage({ answer: callFunction(functions, { id: "SIZES", args }) });
};
