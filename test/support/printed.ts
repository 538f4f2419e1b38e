/** Half a unit in the last printed digit: "0.81935" -> 0.000005, "3302" -> 0.5. */
export const halfLastDigit = (printed: string): number => 0.5 * 10 ** -(printed.split(".")[1] ?? "").length;

/** Distance of two numbers as a share of the second. */
export const relative = (value: number, expected: number): number => Math.abs(value / expected - 1);
