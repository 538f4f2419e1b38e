/** A number as the sheet shows it: "1,750" is 1750. */
export function numberOf(shown: string | undefined): number {
  if (shown === undefined || !/^-?[\d,]*\.?\d+%?$/.test(shown)) throw new Error(`not a number: ${String(shown)}`);
  return Number(shown.replace(/[,%]/g, ""));
}
