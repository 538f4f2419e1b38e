import { SEPARATOR_EXPONENT } from "../../../core/devices/deviceLoss";
import { scalar } from "../answer";
import { needed, optional } from "../readers";
import type { Translator } from "../translation";

const FROM_ZERO = { atLeast: 0 };
const ABOVE_ZERO = { above: 0 };

/** 0 to a power is 0; some programs refuse it. */
const power = (base: string, exponent: string): string => `IF(${base}=0,0,(${base})^${exponent})`;

const deviceLoss = scalar({
  parameters: [
    needed("ratio", FROM_ZERO),
    needed("ratio", FROM_ZERO),
    needed("ratio", ABOVE_ZERO),
    optional("ratio", { atLeast: 0.5, atMost: 2.5 }, SEPARATOR_EXPONENT),
  ],
  result: "ratio",
  units: false,
  build: ([flow, loss, rated, exponent]) => ({ value: `${loss!}*${power(`${flow!}/${rated!}`, exponent!)}` }),
});

const leakAt = scalar({
  parameters: [
    needed("ratio", FROM_ZERO),
    needed("ratio", ABOVE_ZERO),
    needed("ratio", FROM_ZERO),
    optional("ratio", { atLeast: 0.5, atMost: 1 }, 0.5),
  ],
  result: "ratio",
  units: false,
  build: ([flow, suction, other, exponent]) => ({ value: `${flow!}*${power(`${other!}/${suction!}`, exponent!)}` }),
});

const correctedReading = scalar({
  parameters: [needed("ratio", FROM_ZERO), needed("ratio", ABOVE_ZERO), needed("ratio", ABOVE_ZERO)],
  result: "ratio",
  units: false,
  build: ([reading, entered, real]) => ({ value: `${reading!}*${real!}/${entered!}` }),
});

const airPower = scalar({
  parameters: [
    needed("airflow", FROM_ZERO),
    needed("pressure", FROM_ZERO),
    optional("ratio", { above: 0, atMost: 1 }, 1),
  ],
  result: "power",
  units: true,
  build: ([flow, pressure, efficiency]) => ({ value: `${flow!}*${pressure!}/${efficiency!}` }),
});

export const devices: Readonly<Record<string, Translator>> = {
  DEVICELOSS: deviceLoss,
  LEAKAT: leakAt,
  CORRECTEDREADING: correctedReading,
  AIRPOWER: airPower,
};
