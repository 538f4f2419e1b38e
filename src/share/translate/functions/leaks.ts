import { DISCHARGE_COEFFICIENT } from "../../../core/leaks/openingLeak";
import { constantOfClass } from "../../../core/leaks/seamLeak";
import { LEAKAGE_EXPONENT } from "../../../reference/leakageClasses";
import { unitOf } from "../../../reference/quantities";
import { type Parameter, scalar } from "../answer";
import { num, times } from "../expressions/text";
import { density, namedRow, needed, nothing, optional } from "../readers";
import type { Translator } from "../translation";
import { diameter } from "./duct";

const FROM_ZERO = { atLeast: 0 };
const coefficient = optional("ratio", { above: 0, atMost: 1 }, DISCHARGE_COEFFICIENT);
const suction = needed("pressure", FROM_ZERO);

const leak = scalar({
  parameters: [needed("openArea", FROM_ZERO), suction, coefficient, density],
  result: "airflow",
  units: true,
  build: ([area, draught, part, air]) => ({ value: `${part!}*${area!}*SQRT(2*${draught!}/${air!})` }),
});

const leakArea = scalar({
  parameters: [needed("airflow", FROM_ZERO), needed("pressure", { above: 0 }), coefficient, density],
  result: "openArea",
  units: true,
  build: ([flow, draught, part, air]) => ({ value: `${flow!}/(${part!}*SQRT(2*${draught!}/${air!}))` }),
});

/** A gate's condition as the opening that it leaves per diameter [m]. */
const condition: Parameter = {
  needed: true,
  read: (element, _, { tables }) => {
    if (element === null) return nothing;
    const gates = tables.block("gates");
    const { row, checks } = namedRow(element, "gates", tables);
    const gap = times(`INDEX(${gates.range("gap")},${row})`, unitOf("diameter", tables.units).factor);
    return { value: `(${gap}*INDEX(${gates.range("length")},${row}))`, checks };
  },
};

const gateLeak = scalar({
  parameters: [condition, diameter, suction, density],
  result: "airflow",
  units: true,
  build: ([perDiameter, width, draught, air]) => ({
    value: `${DISCHARGE_COEFFICIENT}*${perDiameter!}*${width!}*SQRT(2*${draught!}/${air!})`,
  }),
});

/** A leakage class as the constant of its law: a number is a class of the US kind, a text a name in the table. */
const leakageClass: Parameter = {
  needed: true,
  read: (element, _, { tables }) => {
    if (element === null) return nothing;
    const { text, literal } = element;
    const { row, checks } = namedRow(element, "leakage", tables);
    const named = `INDEX(${tables.block("leakage").range("constant")},${row})`;
    if (typeof literal === "string") return { value: named, checks };
    const number = `${text}*${num(constantOfClass(1))}`;
    return {
      value: `IF(ISNUMBER(${text}),${number},${named})`,
      checks: [`IF(ISNUMBER(${text}),${text}>=0,${checks[0]!})`],
    };
  },
};

const seamLeak = scalar({
  parameters: [leakageClass, needed("area", FROM_ZERO), needed("pressure", FROM_ZERO)],
  result: "airflow",
  units: true,
  build: ([constant, surface, pressure]) => ({
    value: `${constant!}*${surface!}*IF(${pressure!}=0,0,${pressure!}^${LEAKAGE_EXPONENT})`,
  }),
});

export const leaks: Readonly<Record<string, Translator>> = {
  LEAK: leak,
  LEAKAREA: leakArea,
  GATELEAK: gateLeak,
  SEAMLEAK: seamLeak,
};
