import { inchesOfWater } from "./asPrinted";
import type { DeviceRow, Provenance } from "./schema";

const practice: Provenance = {
  source: "commonPractice",
  locator: "loss at the airflow that it is rated for, estimate",
  basis: "common practice",
  checked: null,
};

/** In in.w.g.; the exponent is what the column Device exponent takes. */
const row = (
  key: string,
  label: string,
  low: number,
  high: number,
  exponent: number,
  note: string,
  from: Provenance = practice,
): DeviceRow => ({
  key,
  label,
  low: inchesOfWater(low),
  high: inchesOfWater(high),
  exponent,
  note,
  ...from,
});

/** What stands in the air's way beside ducts, at its rated airflow: the columns Device loss, Device airflow and Device exponent. */
export const devices: readonly DeviceRow[] = [
  row(
    "cyclone small",
    "Cyclone of a small shop",
    2,
    4,
    2,
    "By its inlet velocity; take the maker's figure. Larger plant: filters, cyclone pressure drop.",
  ),
  row(
    "drop box",
    "Drop box or settling chamber before the fan",
    0.5,
    1.5,
    2,
    "About 1.5 velocity pressures of its inlet, and the outlet's entry beside it.",
  ),
  row(
    "fan inlet elbow",
    "Elbow right at the fan's inlet",
    0.3,
    1.5,
    2,
    "What it costs the fan beyond its own loss; the table fittings has fan inlet elbow by its shape.",
  ),
  row(
    "felt bag caked",
    "Felt bag with its cake of dust",
    1,
    3,
    1,
    "A cake filters better and loses more; shaking brings it back in part.",
  ),
  row("felt bag clean", "Felt bag, new or well shaken", 0.3, 1, 1, "At 10 to 30 fpm through the cloth."),
  row(
    "hepa clean",
    "HEPA filter, clean",
    0.5,
    1,
    1,
    "At most 1.0 in.w.g. clean at the rated airflow, by the definition that a design guide quotes.",
    {
      source: "lbnlHepa",
      locator: "HEPA filters, definition after the NAFA guide of 1993",
      basis: "second-hand",
      checked: "2026-11-28",
    },
  ),
  row(
    "hepa to be changed",
    "HEPA filter at the end of its life",
    2,
    3,
    1,
    "Many makers say to change at twice to three times the clean loss.",
  ),
  row(
    "pleated cartridge clean",
    "Pleated cartridge, new or just cleaned",
    0.3,
    1,
    1,
    "By its area: small cartridges lose more.",
  ),
  row(
    "pleated cartridge dirty",
    "Pleated cartridge, to be cleaned",
    2,
    4,
    1,
    "Fine dust sits in the pleats; blow or beat it out from the clean side, with a mask, outdoors.",
  ),
  row(
    "separator lid",
    "Separator lid on a bin",
    1,
    3,
    2,
    "Two short turns in the lid; a bin that fills up loses more and separates less.",
  ),
  row("silencer", "Silencer, straight through", 0.1, 0.5, 2, "One with a core or a turn loses several times as much."),
];
