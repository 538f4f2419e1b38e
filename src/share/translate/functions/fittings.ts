import { ROUGHEST } from "../../../core/friction/frictionFactor";
import { type Parameter, scalar } from "../answer";
import { typedListK } from "../expressions/fittingList";
import { frictionFactor, lossPerLength, reynoldsNumber, roundArea, velocityPressure } from "../expressions/flow";
import { hoodK } from "../expressions/entryK";
import { density, material, needed, nothing, optional } from "../readers";
import type { Translator } from "../translation";
import { airflow, diameter } from "./duct";
import { listCell, listK } from "./listArgument";
import { lossCoefficientOf } from "./lossCoefficient";

const FROM_ZERO = { atLeast: 0 };

/** A wall rougher than a fifth of its diameter is an obstacle. */
const smoothEnough = (rough: string, width: string): string => `${rough}<=${ROUGHEST}*${width}`;
const notNegative = (rough: string): string => `${rough}>=0`;

const friction = scalar({
  parameters: [airflow, diameter, material, density],
  result: "lossPerLength",
  units: true,
  build: ([flow, width, rough, air]) => ({
    value: lossPerLength(flow!, width!, rough!, air!),
    checks: [notNegative(rough!), smoothEnough(rough!, width!)],
  }),
});

const runLoss = scalar({
  parameters: [airflow, diameter, needed("length", FROM_ZERO), material, density],
  result: "pressure",
  units: true,
  build: ([flow, width, run, rough, air]) => ({
    value: `${run!}*${lossPerLength(flow!, width!, rough!, air!)}`,
    checks: [notNegative(rough!), smoothEnough(rough!, width!)],
  }),
});

const fittingLoss = scalar({
  parameters: [airflow, diameter, listCell, optional("ratio", FROM_ZERO, 1), density],
  result: "pressure",
  units: true,
  build: ([flow, width, , count, air], call) => {
    const k = listK(call.elements[2]!, call.elements[1]!, call);
    return { value: `${count!}*${k}*${velocityPressure(flow!, width!, air!)}` };
  },
});

const equivalentLength = scalar({
  parameters: [listCell, needed("airflow", { above: 0 }), diameter, material, density],
  result: "length",
  units: true,
  build: ([, flow, width, rough, air], call) => {
    const k = listK(call.elements[0]!, call.elements[2]!, call);
    const factor = frictionFactor(reynoldsNumber(flow!, width!, air!), `${rough!}/${width!}`);
    return { value: `${k}*${width!}/${factor}`, checks: [notNegative(rough!), smoothEnough(rough!, width!)] };
  },
});

/** A hood entry by name or as K. */
const entry: Parameter = {
  needed: true,
  read: (element, system, { tables }) => {
    if (element === null) return nothing;
    const { text, literal } = element;
    if (typeof literal === "string") {
      const k = typedListK(literal, "hood", null, { system, tables });
      return k === null ? nothing : { value: k, checks: [] };
    }
    const { value, check } = hoodK(text, system, tables);
    return { value, checks: [check] };
  },
};

const hoodSuction = scalar({
  parameters: [airflow, diameter, entry, density],
  result: "pressure",
  units: true,
  build: ([flow, width, k, air]) => ({ value: `(1+${k!})*${velocityPressure(flow!, width!, air!)}` }),
});

const hoodAirflow = scalar({
  parameters: [needed("pressure", FROM_ZERO), diameter, entry, density],
  result: "airflow",
  units: true,
  build: ([suction, width, k, air]) => ({ value: `${roundArea(width!)}*SQRT(2*${suction!}/${air!}/(1+${k!}))` }),
});

export const fittings: Readonly<Record<string, Translator>> = {
  FRICTION: friction,
  RUNLOSS: runLoss,
  FITTINGLOSS: fittingLoss,
  EQUIVLENGTH: equivalentLength,
  HOODSUCTION: hoodSuction,
  HOODAIRFLOW: hoodAirflow,
  LOSSCOEFFICIENT: lossCoefficientOf,
};
