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

export const claimBounds = {
  efficiency: {
    key: "radial fan efficiency",
    label: "Share of the motor's power that a radial-blade fan puts into the air at its best point",
    kind: "figure",
    quantity: "ratio",
    value: 0.65,
    note: "55 to 65 %. Radial blades are the ones that dust and chips may pass; backward-curved ones reach 75 to 80 % in clean air.",
    source: "fanEfficiencyMemory",
    locator: "typical peak total efficiencies",
    basis: "from memory",
    checked: null,
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
    label: "Velocity in an inlet or hose from which a claimed airflow is doubted",
    kind: "judgement",
    quantity: "velocity",
    value: 28,
    note: "The source calls more than 28 m/s at a machine's port not sensible; that it serves for a fan's inlet is our judgement.",
    source: "dguv209044",
    locator: "section 2.1",
    basis: "read",
    checked: "2026-11-27",
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
