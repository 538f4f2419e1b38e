import type { PublishedGroup } from "../row";
import { coneRows } from "./cones";
import { densityRows } from "./density";
import { derivedFittingRows } from "./derivedFittings";
import { elbowRows } from "./elbows";
import { exhaustLineRows } from "./exhaustLine";
import { fanRows } from "./fans";
import { frictionRows } from "./friction";
import { frictionFactorRows } from "./frictionFactor";
import { hoodEntryRows } from "./hoodEntries";
import { hoodRows } from "./hoods";
import { junctionRows } from "./junctions";
import { leakageRows } from "./leakage";
import { measuringRows } from "./measuring";
import { otherFittingRows } from "./otherFittings";
import { unitRows } from "./units";
import { velocityPressureRows } from "./velocityPressure";
import { wholeSystemRows } from "./wholeSystems";

/** Every printed number that our functions are held against. */
export const publishedGroups: readonly PublishedGroup[] = [
  unitRows,
  densityRows,
  velocityPressureRows,
  measuringRows,
  frictionFactorRows,
  frictionRows,
  elbowRows,
  otherFittingRows,
  derivedFittingRows,
  junctionRows,
  hoodEntryRows,
  coneRows,
  hoodRows,
  leakageRows,
  wholeSystemRows,
  exhaustLineRows,
  fanRows,
];
