/** What the digits of a text may mean, the larger first: "1.200" is 1200 to a writer who parts thousands by a point. */
export const readingsOfPoint = (digits: string): number[] =>
  /^[+-]?[1-9]\d{0,2}\.\d{3}$/.test(digits) ? [Number(digits.replace(".", "")), Number(digits)] : [Number(digits)];
