import { calculatorOf } from "./calculate";

/** The one calculator of this page. */
export const calculate = calculatorOf(() => new Worker(new URL("./calculator.ts", import.meta.url)));
