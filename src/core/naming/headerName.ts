import { plain } from "./findNamed";

/**
 * A header as it is compared: without what stands in brackets, and spelled as names are.
 *
 * @returns the spelling that equal headers share
 * @source house
 */
export const headerName = (text: string): string => plain(text.replace(/[([].*?[)\]]/g, ""));
