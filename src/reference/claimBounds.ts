import type { Quantity } from "./quantities";
import type { Provenance, ReferenceRow } from "./schema";

/** A figure that CLAIM holds a vendor's number against, besides physics and the other tables. */
export interface ClaimBoundRow extends ReferenceRow {
  readonly kind: "figure" | "judgement"; // judgement: where we begin to doubt; nothing forbids more
  readonly quantity: Quantity;
  readonly value: number; // SI
}

const judgement: Provenance = {
  source: "commonPractice",
  locator: "judgement of this program",
  basis: "common practice",
  checked: null,
};

const efficiencies: Provenance = {
  source: "fanEfficiencyMemory",
  locator: "typical peak total efficiencies",
  basis: "from memory",
  checked: null,
};

export const claimBounds = {
  efficiency: {
    key: "radial fan efficiency",
    label: "Share of the motor's power that a radial-blade fan puts into the air at its best point",
    kind: "figure",
    quantity: "ratio",
    value: 0.65,
    note: "55 to 65 %, as forward-curved ones. Radial blades are the ones that dust and chips may pass; backward-curved ones reach 75 to 80 % in clean air.",
    ...efficiencies,
  },
  backwardEfficiency: {
    key: "backward fan efficiency",
    label: "The same of a backward-leaning wheel",
    kind: "figure",
    quantity: "ratio",
    value: 0.85,
    note: "Of airfoils; taken too where the kind is not told.",
    ...efficiencies,
  },
  motorShare: {
    key: "motor efficiency",
    label: "Share of volts x amps that a motor gives out, at best",
    kind: "judgement",
    quantity: "ratio",
    value: 0.85,
    ...judgement,
  },
  overload: {
    key: "motor overload",
    label: "Times its rating that a motor may give out for long",
    kind: "figure",
    quantity: "ratio",
    value: 1.4,
    note: "The largest service factor, of the smallest motors.",
    source: "nemaMg1Memory",
    locator: "service factors",
    basis: "from memory",
    checked: null,
  },
  allowance: {
    key: "allowance",
    label: "Times its bound beyond which a number is called impossible",
    kind: "judgement",
    quantity: "ratio",
    value: 1.2,
    note: "For rounding, cold air and pressure won back behind the fan.",
    ...judgement,
  },
  radialFlow: {
    key: "flow of a radial wheel",
    label: "Airflow / (tip speed x face) from which a radial wheel is doubted",
    kind: "judgement",
    quantity: "ratio",
    value: 0.3,
    ...judgement,
  },
  backwardFlow: {
    key: "flow of a backward wheel",
    label: "The same for a backward-leaning wheel",
    kind: "judgement",
    quantity: "ratio",
    value: 0.5,
    ...judgement,
  },
  forwardFlow: {
    key: "flow of a forward wheel",
    label: "The same for a forward-curved wheel",
    kind: "judgement",
    quantity: "ratio",
    value: 1.3,
    ...judgement,
  },
  rimFlow: {
    key: "flow through a rim",
    label: "Speed through the rim / tip speed from which an airflow is doubted",
    kind: "judgement",
    quantity: "ratio",
    value: 0.6,
    note: "0.2 to 0.3 at the best point. Not for wheels that lean forward.",
    ...judgement,
  },
  tipPressure: {
    key: "tip pressure share",
    label: "Share of the tip speed's ρu² from which a claimed pressure is doubted",
    kind: "judgement",
    quantity: "ratio",
    value: 0.75,
    note: "Slip and losses leave a real wheel with radial or backward-leaning blades about half to two thirds of it.",
    ...judgement,
  },
  inletVelocity: {
    key: "inlet or hose velocity",
    label: "Velocity in an inlet or hose up to which an airflow is taken without its pressure",
    kind: "judgement",
    quantity: "velocity",
    value: 28,
    note: "The source calls more than 28 m/s at a machine's port not sensible; that it serves for a fan's inlet is our judgement.",
    source: "dguv209044",
    locator: "section 2.1",
    basis: "read",
    checked: "2026-11-27",
  },
  inletVelocityHigh: {
    key: "inlet or hose velocity high",
    label: "The same from which it is doubted",
    kind: "judgement",
    quantity: "velocity",
    value: 64,
    note: "2460 Pa of velocity pressure.",
    ...judgement,
  },
  systemShareLow: {
    key: "system airflow low",
    label: "Share of the free-air airflow that is left on a duct system, low end",
    kind: "judgement",
    quantity: "ratio",
    value: 1 / 2,
    ...judgement,
  },
  systemShareHigh: {
    key: "system airflow high",
    label: "Share of the free-air airflow that is left on a duct system, high end",
    kind: "judgement",
    quantity: "ratio",
    value: 2 / 3,
    ...judgement,
  },
} as const satisfies Record<string, ClaimBoundRow>;

/** The same rows as a list. */
export const claimBoundRows: readonly ClaimBoundRow[] = Object.values(claimBounds);
