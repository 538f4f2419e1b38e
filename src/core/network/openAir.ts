/** Where the last suction run ends. */
export const FAN = "fan";

/** What a run after the fan may go to, other than another such run; spelled as names are compared. */
export const OPEN_AIR: readonly string[] = ["", FAN, "outside", "outdoors", "open air", "room"];
