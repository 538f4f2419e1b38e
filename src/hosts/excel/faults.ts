const EDITING = "A cell is being edited: press Enter or Esc, then try again.";

/** Excel takes nothing from an add-in while the user types into a cell. */
export const isEditing = (fault: unknown): boolean => codeOf(fault) === "InvalidOperationInCellEditMode";

/** What went wrong, in a sentence. A fault that carries a code is Excel's own; others say themselves what they are. */
export function sentenceOf(fault: unknown): string {
  const code = codeOf(fault);
  if (isEditing(fault)) return EDITING;
  const said = fault instanceof Error ? fault.message.trim().replace(/[.]$/, "") : String(fault);
  return code === null ? `${said}.` : `Excel refused: ${said}.`;
}

const codeOf = (fault: unknown): string | null =>
  typeof fault === "object" && fault !== null && "code" in fault && typeof fault.code === "string" ? fault.code : null;
