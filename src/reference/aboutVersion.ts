/** What stands before the version in the answer of ABOUT, by which it is found again. */
export const aboutVersion = ["Duct Ledger", "version"] as const;
