/** The columns that a table of runs may have, by the header that people type. A table may have them in any order. */
export const runColumns = [
  "Run",
  "To",
  "Diameter",
  "Length",
  "Material",
  "Flex",
  "Fittings",
  "K",
  "Hood",
  "Airflow",
  "Gate",
  "Leak",
  "Leak open",
  "Leak shut",
  "Device loss",
  "Device airflow",
  "Device exponent",
  "Device clean loss",
  "Side",
  "Dust",
] as const;

export type RunColumn = (typeof runColumns)[number];
