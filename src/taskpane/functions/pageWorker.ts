import { calculatorOf } from "./askWorker";

/** The one calculator of this page. */
export const calculate = calculatorOf(() => new Worker(new URL("./functionsWorker.ts", import.meta.url)));
