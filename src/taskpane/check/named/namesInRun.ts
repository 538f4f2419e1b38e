import { gateConditions } from "../../../reference/gateConditions";
import { HOSE_MATERIAL, materials } from "../../../reference/materials";
import { type UnitSystem, unitOf } from "../../../reference/quantities";
import { transport } from "../../../reference/transport";
import type { BookRun } from "../runs";
import { fittingsNamed, type NamedValue, rowNamed } from "./namedValue";

/** What a run takes from the tables by name: fittings, hood, material, hose, the state of its gate, its dust. */
export function namesInRun(run: BookRun, system: UnitSystem): NamedValue[] {
  const inch = unitOf("diameter", system).factor;
  return [
    ...fittingsNamed(run.fittings, inch, run.diameter),
    ...fittingsNamed(run.hood, inch, run.diameter),
    ...rowNamed(materials, run.material),
    ...(run.hose > 0 ? rowNamed(materials, HOSE_MATERIAL) : []),
    ...run.leaks.flatMap(({ condition }) => rowNamed(gateConditions, condition)),
    ...rowNamed(transport, run.dust.key),
  ];
}
