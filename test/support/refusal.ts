/** What a cell function refused with: the host's error code and the sentence. Fails where nothing is refused. */
export function refusal(call: () => unknown): { code: string; message: string } {
  try {
    call();
  } catch (error) {
    if (error instanceof CustomFunctions.Error) return { code: String(error.code), message: error.message ?? "" };
    throw error;
  }
  throw new Error("nothing was refused");
}

/** A cell of an answer as one reads it: a value as it is, an error by its code and sentence. */
export const shown = (cell: unknown): unknown =>
  cell instanceof CustomFunctions.Error ? `${String(cell.code)} ${cell.message ?? ""}` : cell;
