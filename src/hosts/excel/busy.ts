const BUSY: readonly unknown[] = ["#BUSY!", "#GETTING_DATA"]; // the second is what older builds show

/** Whether a cell shows that its function has not answered yet. */
export const isBusy = (shown: unknown): boolean => BUSY.includes(shown);
