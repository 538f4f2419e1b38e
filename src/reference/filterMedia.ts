/** What a filter is made of, and the row of the table of filters that says how fast air may pass it. */
export interface FilterMedium {
  readonly key: string;
  readonly aliases: readonly string[];
  readonly row: string;
}

export const filterMedia: readonly FilterMedium[] = [
  { key: "woven cloth", aliases: ["woven", "cloth"], row: "shaker sawdust" },
  { key: "felt bag", aliases: ["felt", "bag"], row: "felt bag" },
  { key: "pulse-jet felt", aliases: ["pulse jet"], row: "pulse jet sawdust" },
  { key: "pleated cartridge", aliases: ["cartridge", "pleated"], row: "pleated cartridge" },
  { key: "hepa", aliases: [], row: "hepa medium" },
];
