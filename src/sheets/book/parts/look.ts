/** The words by which a sentence that wants attention is flagged. */
export const LOOK = "Look:";
