import { airPower, EFFICIENCY_LIMITS } from "../../core/fan/fanLaws";
import { answerOf } from "../answer";
import type { Formula, Guide } from "../guide";
import { FLOW } from "../letters";
import { AIRFLOW, optional, PRESSURE, signature } from "../signature";

export const takes = signature(
  { airflow: AIRFLOW, pressure: PRESSURE, efficiency: optional("ratio", EFFICIENCY_LIMITS, 1) },
  "power",
);

/**
 * Power in moving air, or with an efficiency the shaft power that it takes, in hp (SI: kW).
 * @customfunction AIRPOWER
 * @param airflow Airflow, cfm (SI: m³/h), at least 0
 * @param pressure Pressure, in.w.g. (SI: Pa), at least 0; total pressure for total power
 * @param [efficiency] Efficiency, above 0 to 1; when left out the power in the air
 * @param [units] "IP" (default) or "SI"
 * @returns power
 */
export function airpower(
  airflow: unknown[][],
  pressure: unknown[][],
  efficiency?: unknown[][],
  units?: unknown[][],
): unknown[][] {
  return answerOf(takes, [airflow, pressure, efficiency, units], ({ airflow, pressure, efficiency }) =>
    airPower(airflow, pressure, efficiency),
  );
}

export const guide: Guide = {
  maths: "P = Q p / η",
  source: "solbergHeatPower",
  basis: "second-hand",
  limits: "What the air takes; the wall socket gives more.",
  cautions: ["wheel over-speed", "live parts"],
  also: ["horsepower", "hp", "motor", "watts"],
  example: { asks: "Shaft power for 800 cfm at 5 in.w.g., half of it lost", args: ["800", "5", "0.5"] },
};

export const formula: Formula = {
  tex: ["W = \\frac{Q\\,p}{\\eta}"],
  letters: { W: "power [W]", Q: FLOW, p: "pressure [Pa]", "\\eta": "efficiency; 1 gives the power in the air" },
};
