/** Whether a cell has a number in such a place; of a text or a blank, which count as larger or as 0 in a comparison, no. */
export const isWithin = (cell: string, limits: string): string => `IF(ISNUMBER(${cell}),${limits},FALSE)`;

export interface SettingCheck {
  readonly cell: string;
  readonly isSound: string; // a formula's condition
  readonly must: string; // be
}

/** A text for a formula: what is wrong with each setting, one sentence each; "" where nothing is. */
export const settingsTold = (checks: readonly SettingCheck[]): string =>
  checks
    .map(({ cell, isSound, must }) => `IF(${isSound},"","Check ${cell.replaceAll("$", "")}: it must be ${must}. ")`)
    .join("&");
