/**
 * Words for a 0 that is meant, where a 0 and a blank would be different answers: some hosts send a blank cell as 0, so neither
 * is taken for the other. The first is the one that sentences offer. As released words they never change.
 */
export const NONE = ["none"]; // of an error
export const SMOOTH = ["smooth"]; // of a wall
export const DEGREES = ["0°", "0 deg", "0 degrees"]; // of an angle or a temperature
export const SHARP = ["sharp", "zero"]; // of the shape of a fitting
export const STILL = ["still"]; // of a reading
export const NOT_READ = ["not read"]; // a point without a reading, which is left out
export const NO_MARK = ["", "-", "–", "—", "−", "0", "n", "no", "none", "n/a", "off", "shut", "closed", "false"]; // a gate that stays shut in a scenario
export const DOUBTFUL_MARKS = ["?", "✗", "✘", "✖", "❌"]; // there too: a question, or a cross, which beside a tick is a no
