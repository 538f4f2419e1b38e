/** Where things stand on the one page for the club. */
export const HOODS_HEADER = 7; // row of the header
export const MOST_HOODS = 12;

export const MORE_CELL = `A${HOODS_HEADER + MOST_HOODS + 1}`; // what the table of hoods leaves out, or why it is empty

/** What the page says of a hood that wants a look. */
export const HOOD_FLAGS = { short: "short of air", settles: "dust settles" } as const;

export const SETS_HEADER = HOODS_HEADER + MOST_HOODS + 4; // of each machine alone, and the usual sets
export const MOST_SETS_SHOWN = 13;

export const FAN_TITLE = SETS_HEADER + MOST_SETS_SHOWN + 3; // row of the title
export const LEAKS = FAN_TITLE + 7;
export const WATCH = LEAKS + 5;
export const ASSUMED = WATCH + 5;
export const CAUTIONS = ASSUMED + 6;

export const WORKSHOP_CELL = "F1"; // whose budget it is, where somebody said so
export const MAKER = { label: "By", labelCell: "E4", cell: "F4" } as const; // who made it, if they wish to say
