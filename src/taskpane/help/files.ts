/** The address of a page of the help, as seen from the pane: the build writes both beside each other. */
export const helpAddress = (file: string): string => `help/${encodeURIComponent(file)}`;

/** The file of a function's page, and of a table's. */
export const functionFile = (name: string): string => `duct-${name.toLowerCase()}.html`;
export const tableFile = (name: string): string => `table-${name}.html`;

export const indexFile = "index.html";
export const cautionsFile = "cautions.html";
export const firstInExcelFile = "first-in-excel.html";
export const checksFile = "checks.html";
export const sizesFile = "sizes.html";
