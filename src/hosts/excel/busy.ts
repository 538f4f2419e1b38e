const BUSY: readonly unknown[] = ["#BUSY!", "#GETTING_DATA"]; // the second is what older builds show

/** Whether a cell shows that its function has not answered yet. */
export const isBusy = (shown: unknown): boolean => BUSY.includes(shown);

export const PAUSE = 500; // ms between two looks at cells that are busy
export const BUSY_TURNS = 20;
