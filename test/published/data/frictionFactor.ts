import { frictionFactor, frictionFactorHaaland } from "../../../src/core/friction/frictionFactor";
import { HALF_LAST_DIGIT, type PublishedGroup, type PublishedRow, type Tolerance } from "../row";
import { machinePrecision } from "./margins";
import { titles } from "./titles";

const row = (
  id: string,
  reynolds: number,
  roughness: number,
  printed: string,
  source: string,
  tolerance: Tolerance = HALF_LAST_DIGIT,
): PublishedRow => ({
  id,
  what: `Darcy friction factor at Re ${reynolds}, e/D ${roughness}`,
  source,
  printed,
  unit: "",
  tolerance,
  compute: () => frictionFactor(reynolds, roughness),
});

/** Kinematic viscosity of water at 14.555 °C [m2/s], from memory; 2 % more or less moves the factor by 0.4 %. */
const WATER = 1.15e-6;

const waterPipe = (
  id: string,
  airflow: number,
  diameter: number,
  e: number,
  printed: string,
  share: number,
): PublishedRow => ({
  id,
  what: `Darcy friction factor of water, 14.555 °C, ${airflow} m³/s in ${diameter} m, roughness ${e} m`,
  source: titles.hydraulicTests,
  printed,
  unit: "",
  tolerance: { relative: share, why: "The margin that those tests state themselves." },
  compute: () => frictionFactor((4 * airflow) / (Math.PI * diameter * WATER), e / diameter),
});

export const frictionFactorRows: PublishedGroup = {
  title: "friction factor",
  rows: [
    row("FF01", 1e5, 1e-4, "0.018513866077471648", `${titles.fluids}, Colebrook`, machinePrecision),
    row("FF02", 1e5, 1e-4, "0.01851386607747165", `${titles.fluids}, Clamond's solution`, machinePrecision),
    {
      id: "FF17",
      what: "Darcy friction factor by Haaland's formula at Re 100000, e/D 0.0001",
      source: `${titles.fluids}, Haaland 1983`,
      printed: "0.018265053014793857",
      unit: "",
      tolerance: machinePrecision,
      compute: () => frictionFactorHaaland(1e5, 1e-4),
    },
    row("FF34", 1e7, 0, "0.00810266943", `${titles.fluids}, Prandtl-von Karman-Nikuradse, smooth wall`),
    row("FF35", 104800000000.0, 2.55e-8, "0.0037751087365339906", `${titles.fluids}, a hard case`, machinePrecision),
    row("FF37", 100800, 0, "0.018", `${titles.cengel}, Ex 8-4`),
    row("FF38", 117000, 0.0052, "0.0315", `${titles.cengel}, Ex 8-8`),
    row("FF40", 337000, 0.00013, "0.0155", `${titles.dusling}, HVAC page`),
    row("FF41", 549000, 0, "0.013", `${titles.foxMcDonald}, Ex 8 (Moody chart)`),
    waterPipe("FF44", 0.042, 0.15, 1.5e-6, "0.01446", 0.01),
    waterPipe("FF46", 0.004, 0.2, 1.5e-4, "0.0269105", 0.03),
  ],
};
