import { stockDiameters } from "../../../reference/tradeSizes";
import type { UnitSystem } from "../../../reference/quantities";
import { plain } from "../../../core/naming/findNamed";
import { type Element, type Parameter, type Reading, scalar } from "../answer";
import { inSI, isBlankOrZero, isEmpty, NO_ANSWER, num, plainName, within } from "../expressions/text";
import { roundArea } from "../expressions/flow";
import { needed, nothing } from "../readers";
import type { Translator } from "../translation";

/** A side or diameter of a duct. */
export const DUCT_SIZE = { above: 0, atMost: 20 };
const FROM_ZERO = { atLeast: 0 };

export const diameter = needed("diameter", DUCT_SIZE);
export const airflow = needed("airflow", FROM_ZERO);

/** The height of a rectangle; blank or 0 makes the duct round. Its value is the cell as it stands. */
const height: Parameter = {
  needed: false,
  read: (element, system) => {
    if (element === null || element.literal === 0) return { value: "", checks: [] };
    const { text } = element;
    const right = [`ISNUMBER(${text})`, ...within(text, DUCT_SIZE, "diameter", system)].join(",");
    return { value: text, checks: [`IF(${isBlankOrZero(text)},TRUE,AND(${right}))`] };
  },
};

/** Cross-section [m2] of a round duct, or of a rectangle where a height stands. */
function sectionArea(width: string, rise: string, system: UnitSystem): string {
  if (rise === "") return roundArea(width);
  return `IF(${isBlankOrZero(rise)},${roundArea(width)},${width}*${inSI(rise, "diameter", system)})`;
}

const area = scalar({
  parameters: [diameter, height],
  result: "area",
  units: true,
  build: ([width, rise], { system }) => ({ value: sectionArea(width!, rise!, system) }),
});

const velocity = scalar({
  parameters: [airflow, diameter, height],
  result: "velocity",
  units: true,
  build: ([flow, width, rise], { system }) => ({ value: `${flow!}/${sectionArea(width!, rise!, system)}` }),
});

const airflowAt = scalar({
  parameters: [needed("velocity", FROM_ZERO), diameter, height],
  result: "airflow",
  units: true,
  build: ([speed, width, rise], { system }) => ({ value: `${speed!}*${sectionArea(width!, rise!, system)}` }),
});

const diameterFor = scalar({
  parameters: [needed("airflow", { above: 0 }), needed("velocity", { above: 0 })],
  result: "diameter",
  units: true,
  build: ([flow, speed]) => ({ value: `SQRT(4*${flow!}/(PI()*${speed!}))` }),
});

const equivalentDiameter = scalar({
  parameters: [diameter, diameter],
  result: "diameter",
  units: true,
  build: ([a, b]) => ({ value: `1.3*(${a!}*${b!})^0.625/(${a!}+${b!})^0.25` }),
});

const ROUNDINGS = ["down", "up", "nearest"] as const;
const SLACK = 1e-9; // of the wanted size: 4 in typed as 101.6 mm is still 4 in

/** The wanted size as it stands in its cell, since the table of sizes is in the same unit; and the word. */
const asItStands = (parameter: Parameter): Parameter => ({
  needed: parameter.needed,
  read: (element, system, context) => ({
    ...parameter.read(element, system, context),
    value: element?.text ?? NO_ANSWER,
  }),
});

const rounding: Parameter = {
  needed: false,
  read: (element) => {
    if (element === null) return { value: "down", checks: [] };
    if (typeof element.literal === "string") return roundingWord(element);
    const word = plainName(element.text);
    return {
      value: word,
      checks: [
        `OR(${element.text}=0,${isEmpty(element.text)},${ROUNDINGS.map((one) => `${word}="${one}"`).join(",")})`,
      ],
    };
  },
};

function roundingWord({ literal }: Element): Reading {
  const word = plain(String(literal));
  if (word === "") return { value: "down", checks: [] };
  return ROUNDINGS.some((one) => one === word) ? { value: word, checks: [] } : nothing;
}

const tradeSize = scalar({
  parameters: [asItStands(needed("diameter", { above: 0 })), rounding],
  result: "ratio",
  units: true,
  build: ([wanted, word], { system, context }) => {
    const sizes = context.tables.block(`sizes ${system}`).range("size");
    const most = stockDiameters(system).length;
    const upTo = `SUMPRODUCT((${sizes}<=${wanted!}*${num(1 + SLACK)})*1)`;
    const under = `SUMPRODUCT((${sizes}<${wanted!}*${num(1 - SLACK)})*1)`;
    const down = `IF(${upTo}=0,${NO_ANSWER},INDEX(${sizes},MAX(1,${upTo})))`;
    const up = `IF(${under}=${most},${NO_ANSWER},INDEX(${sizes},MIN(${most},${under}+1)))`;
    const [below, above] = [`INDEX(${sizes},MAX(1,${upTo}))`, `INDEX(${sizes},MIN(${most},${under}+1))`];
    const closer = `IF(ABS(${wanted!}-${below})<=ABS(${above}-${wanted!})+${num(SLACK)}*${wanted!},${below},${above})`;
    const ways: Readonly<Record<string, string>> = { down, up, nearest: closer };
    const known = ways[word!];
    if (known !== undefined) return { value: known };
    return { value: `IF(${word!}="up",${up},IF(${word!}="nearest",${closer},${down}))` };
  },
});

export const duct: Readonly<Record<string, Translator>> = {
  AREA: area,
  VELOCITY: velocity,
  AIRFLOW: airflowAt,
  DIAMETER: diameterFor,
  EQUIVDIAMETER: equivalentDiameter,
  TRADESIZE: tradeSize,
};
