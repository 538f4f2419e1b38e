import { rowOf } from "../../core/naming/findNamed";
import { lossCoefficient } from "../../core/fittings/lossCoefficient";
import type { Surroundings } from "../../core/network/designPass";
import { lossFamilies, PLAIN_END } from "../../reference/lossFamilies";
import { HOSE_MATERIAL, materials } from "../../reference/materials";

export const hoseRoughness = rowOf(materials, HOSE_MATERIAL).roughness;
export const plainEnd = lossCoefficient(rowOf(lossFamilies, PLAIN_END), null, null);

/** What a run takes from the tables when it names nothing else, in air of this density [kg/m3]. */
export const surroundings = (density: number): Surroundings => ({ density, hoseRoughness, plainEnd });
