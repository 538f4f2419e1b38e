import { DISCHARGE_COEFFICIENT } from "./leaks/openingLeak";
import { LAMINAR_END, TURBULENT_START } from "./friction/flowRegime";
import { LEAKAGE_EXPONENT } from "../reference/leakageClasses";

/** The definitions of the model in words: ABOUT and the first sheet of a copy tell them alike. */
export const modelWords = {
  friction: `Darcy-Weisbach; Colebrook-White from Re ${TURBULENT_START}, 64/Re to Re ${LAMINAR_END}, linear between`,
  fittings: "K x velocity pressure of the fitting's own duct; where runs meet, by the momentum of their air",
  suction: "deficit of total pressure below the room; static suction is that plus the velocity pressure",
  leaks: `sharp-edged opening, discharge coefficient ${DISCHARGE_COEFFICIENT}; seams go with pressure to the power ${LEAKAGE_EXPONENT}`,
  budget: "each open hood gets the airflow it asks for; the strongest path at a junction governs",
} as const;
