/** What a cell says whose formula asks for more work than the sheet in the browser gives it. Nothing computes with it. */
export const TOO_MUCH_WORK =
  "This formula asks for more cells, text or steps than this sheet computes, so it has no value here.";

/** Whether a cell's error is that one. */
export const isTooMuchWork = (value: unknown): boolean =>
  typeof value === "object" && value !== null && "message" in value && value.message === TOO_MUCH_WORK;
