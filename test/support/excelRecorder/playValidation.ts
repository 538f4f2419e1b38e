import { addressesIn, cellToChange } from "./places";
import type { Played } from "./object";
import { misuse } from "./refuse";
import type { Area } from "./state";

/** What one cell of an area has that all others have, too; null where they differ. */
function shared(area: Area, name: string): unknown {
  const found = addressesIn(area)
    .flat()
    .map((at) => area.sheet.cells.get(at)?.validation[name] ?? null);
  const [first] = found;
  return found.every((each) => JSON.stringify(each) === JSON.stringify(first)) ? first : null;
}

const setRule =
  (name: string, check: (value: any) => void) =>
  (area: Area, value: unknown): void => {
    check(value);
    for (const at of addressesIn(area).flat()) cellToChange(area.sheet, at).validation[name] = value;
  };

const NO_PROMPT = { showPrompt: true, title: "", message: "" };
const NO_ALERT = { showAlert: true, style: "Stop", title: "", message: "" };

export const playValidation: Played = {
  reads: {
    type: (area: Area) => {
      const rules = addressesIn(area)
        .flat()
        .map((at) => area.sheet.cells.get(at)?.validation.rule ?? null);
      const isSame = rules.every((rule) => JSON.stringify(rule) === JSON.stringify(rules[0]));
      if (!isSame) return rules.includes(null) ? "MixedCriteria" : "Inconsistent";
      return rules[0] === null ? "None" : "List";
    },
    rule: (area) => shared(area, "rule") ?? {},
    prompt: (area) => (isMixed(area, "prompt") ? null : (shared(area, "prompt") ?? NO_PROMPT)),
    errorAlert: (area) => (isMixed(area, "errorAlert") ? null : (shared(area, "errorAlert") ?? NO_ALERT)),
  },
  writes: {
    ignoreBlanks: setRule("ignoreBlanks", () => undefined),
    prompt: setRule("prompt", ({ title, message }) => {
      if (title.length > 32 || message.length > 255) throw misuse("the prompt is too long");
    }),
    errorAlert: setRule("errorAlert", ({ title, message }) => {
      if (title.length > 32 || message.length > 225) throw misuse("the alert is too long");
    }),
    rule: (area: Area, { list }: { list: { inCellDropDown: boolean; source: string | Area } }) => {
      const source = typeof list.source === "string" ? list.source : referenceTo(list.source);
      if (source === "" || (!source.startsWith("=") && source.length > 255))
        throw misuse("a list holds up to 255 characters");
      setRule("rule", () => undefined)(area, { list: { ...list, source } });
    },
  },
};

const isMixed = (area: Area, name: string): boolean => {
  const found = addressesIn(area)
    .flat()
    .map((at) => JSON.stringify(area.sheet.cells.get(at)?.validation[name] ?? null));
  return new Set(found).size > 1;
};

function referenceTo(area: Area): string {
  const addresses = addressesIn(area).flat();
  const dollars = (at: string): string => at.replace(/^([A-Z]+)/, "$$$1$$");
  return `='${area.sheet.name.replaceAll("'", "''")}'!${dollars(addresses[0]!)}:${dollars(addresses.at(-1)!)}`;
}
