/** The file of a function's page, and of a table's. */
export const functionFile = (name: string): string => `duct-${name.toLowerCase()}.html`;
export const tableFile = (name: string): string => `table-${name}.html`;
