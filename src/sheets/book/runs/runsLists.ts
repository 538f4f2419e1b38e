import { gateConditions } from "../../../reference/gateConditions";
import { lossFamilies } from "../../../reference/lossFamilies";
import { materials } from "../../../reference/materials";
import { transport } from "../../../reference/transport";
import type { ChoiceList } from "../../workbook";
import { type RunColumn, runsColumnRange } from "../layout";

/** Words to choose from. Only those that admit nothing else are strict: a K, a roughness or an area may stand in place of a name. */
export function runsLists(): ChoiceList[] {
  const hoods = lossFamilies.filter((family) => family.kind === "hood").map((family) => family.key);
  const leaksWhile = (state: "open" | "shut"): string[] =>
    gateConditions.filter((row) => row.state === state || row.state === "either").map(({ key }) => key);
  const list = (column: RunColumn, choices: readonly string[], strict: boolean): ChoiceList => ({
    range: runsColumnRange(column).replaceAll("$", ""),
    choices,
    strict,
  });
  return [
    list("Gate", ["open", "shut"], true),
    list("Side", ["suction", "discharge"], true),
    list(
      "Material",
      materials.map(({ key }) => key),
      false,
    ),
    list("Hood", hoods, false),
    list(
      "Dust",
      transport.map(({ key }) => key),
      false,
    ),
    list("Leak open", leaksWhile("open"), false),
    list("Leak shut", leaksWhile("shut"), false),
  ];
}
