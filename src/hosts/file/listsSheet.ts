/** The sheet that keeps choices which do not fit into a rule; a number follows where a sheet of that name is there. */
export const LISTS_SHEET = "Duct lists";

/** Whether a sheet of a file is that one. Ours is hidden so that no program shows its tab; some programs hide it less. */
export const isListsSheet = (name: string, state: string | undefined): boolean =>
  (state === "veryHidden" || state === "hidden") && /^Duct lists(?: \d+)?$/.test(name);
