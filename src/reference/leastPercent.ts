/** The least that a number in percent may be, but 0: 3 % that is typed with its sign is 0.03 in its cell, and nothing here is known that well. */
export const LEAST_PERCENT = 0.1; // %
