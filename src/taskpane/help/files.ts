/** The help's folder, beside the pane in what the build writes. */
export const HELP = "help";

/** The file of a function's page, and of a table's. */
export const functionFile = (name: string): string => `duct-${name.toLowerCase()}.html`;
export const tableFile = (name: string): string => `table-${name}.html`;

export const indexFile = "index.html";
export const cautionsFile = "cautions.html";
export const checksFile = "checks.html";
