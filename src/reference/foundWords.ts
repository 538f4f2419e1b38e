/** Words that stand for what a function finds itself; a run that is called so comes first. As released words they never change. */
export const NEEDIEST = "neediest"; // of a hood
export const AS_SOLVED = "as solved"; // of a suction

/** What stands around the name of the hood that GAINS found, behind the header of its changes: in brackets, as a unit does. */
export const FOR_HOOD = { before: " (for ", after: ")" };
