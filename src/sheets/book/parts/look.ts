/** The words by which a sentence that wants attention is flagged. */
export const LOOK = "Look:";

/** Whether such a sentence stands in a cell, as formulas ask. */
export const saysLook = (cell: string): string => `LEFT(${cell},${LOOK.length})="${LOOK}"`;
