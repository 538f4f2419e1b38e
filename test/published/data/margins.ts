/** Why a row may differ by more than its last digit: reasons that several rows share. */
import type { Margin } from "../row";

export const inchOfWater: Margin = {
  relative: 0.001,
  why: "The source reckons with V = 4005 sqrt(VP), water of 68 °F; our inch of water is that of 60 °F, 4006.5.",
};

export const loeffler: Margin = {
  relative: 0.04,
  why: "The source takes friction from Loeffler's equation for galvanised duct, 2 to 4 % above Colebrook at 0.0005 ft.",
};

export const slideRule: Margin = {
  relative: 0.06,
  why: "The source read friction off a slide rule: 1 to 6 % above Colebrook at 0.15 mm.",
};

export const machinePrecision: Margin = {
  relative: 1e-12,
  why: "The source prints every digit of a double-precision number.",
};
