import { headerName } from "./headerName";

/**
 * The name of a fact with the brackets of a sound level, `Sound (dB(A))`, as one pair: `Sound (dBA)`.
 *
 * @returns the name as it was typed otherwise
 * @source house
 */
export const oneInBrackets = (name: string): string => name.replace(/dB ?[([]A[)\]](?=[)\]])/g, "dBA");

/**
 * The name of a fact as it is compared.
 *
 * @returns the spelling that equal names share
 * @source house
 */
export const factName = (name: string): string => headerName(oneInBrackets(name));
