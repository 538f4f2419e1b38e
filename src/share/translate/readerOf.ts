import type { Rule } from "../../functions/signature";
import { num } from "./expressions/text";
import type { Reader } from "./element";
import { hoodEntry, listCell } from "./fittingReaders";
import { gateCondition, leakageClass, unitName, wordOf } from "./namedReaders";
import { asItStands, bareNumber, neededNumber, optionalNumber, roughness } from "./readers";

/** How plain formulas read an argument: by the very rule by which the cells read it. */
export function readerOf(rule: Rule): Reader {
  switch (rule.kind) {
    case "number": {
      if (rule.needed) return (element, system) => neededNumber(element, rule, system);
      const { usual } = rule;
      return usual === null
        ? (element, system) => bareNumber(element, { ...rule, usual }, system)
        : (element, system) => optionalNumber(element, rule, num(usual), system);
    }
    case "beside":
      return asItStands;
    case "word":
      return (element) => wordOf(element, rule.words);
    case "material":
      return (element, system, { tables }) => roughness(element, system, tables);
    case "fittings":
      return listCell;
    case "hood entry":
      return hoodEntry;
    case "gate condition":
      return gateCondition;
    case "leakage class":
      return leakageClass;
    case "unit name":
      return unitName;
  }
}
