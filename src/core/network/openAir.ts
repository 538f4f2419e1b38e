/** Where the last suction run ends. */
export const FAN = "fan";

/** The open air by its names, spelled as names are compared. */
export const OPEN_AIR_NAMES: readonly string[] = ["outside", "outdoors", "open air", "room"];

/** What a run after the fan may go to, other than another such run; spelled as names are compared. */
export const OPEN_AIR: readonly string[] = ["", FAN, ...OPEN_AIR_NAMES];

/**
 * Whether a run that says no side stands after the fan: none before it goes into the open air.
 *
 * @param to what it goes to, in its plain spelling
 * @param isRun whether a run has such a name, which it then joins
 * @returns whether it does
 * @source house
 */
export const isAfterFan = (to: string, isRun: (name: string) => boolean): boolean =>
  OPEN_AIR_NAMES.includes(to) && !isRun(to);
