import { gateConditions } from "../src/reference/gateConditions";
import type { ChoiceMetadata, FunctionsFile, ParameterMetadata } from "../src/hosts/functionsFile";
import { functionFile } from "../src/taskpane/help/files";

/** As the generator writes it, with flags of its own. */
export type Metadata = FunctionsFile & Readonly<Record<string, unknown>>;

interface Choice {
  readonly id: string;
  readonly parameters: readonly string[];
  readonly values: readonly { readonly name: string; readonly tooltip: string }[];
}

/** The arguments whose few words a host can offer in a drop-down while one types. */
const choices: readonly Choice[] = [
  {
    id: "UnitSystem",
    parameters: ["units"],
    values: [
      { name: "IP", tooltip: "in, ft, cfm, fpm, in.w.g." },
      { name: "SI", tooltip: "mm, m, m³/h, m/s, Pa" },
    ],
  },
  {
    id: "Rounding",
    parameters: ["rounding"],
    values: [
      { name: "down", tooltip: "the smaller pipe: keeps dust moving" },
      { name: "up", tooltip: "the larger pipe: less loss, slower air" },
      { name: "nearest", tooltip: "whichever is nearer" },
      { name: "down metric stock", tooltip: "of what workshops find on the shelf: 100, 120, 140, 160, 180 mm ..." },
      { name: "up metric stock", tooltip: "the larger of those" },
      { name: "down drain pipe", tooltip: "of sewer and drain pipe, by its least inside diameter" },
    ],
  },
  {
    id: "TraverseRule",
    parameters: ["rule"],
    values: [
      { name: "log-linear", tooltip: "round duct: 4, 6, 8 or 10 points on a diameter" },
      { name: "log-Tchebycheff", tooltip: "rectangular duct: 5, 6 or 7 points along a side" },
    ],
  },
  {
    id: "ReadingKind",
    parameters: ["kind"],
    values: [
      { name: "velocity", tooltip: "fpm (SI: m/s); the plain mean" },
      { name: "velocity pressure", tooltip: "in.w.g. (SI: Pa); the mean of the roots" },
    ],
  },
  {
    id: "GateCondition",
    parameters: ["condition"],
    values: gateConditions.map((row) => ({ name: row.key, tooltip: `${row.label} (estimate)` })),
  },
];

/**
 * Adds to the generated functions.json what the generator cannot write: errors inside ranges reach the functions (so that
 * the rest of a range still computes), the drop-downs, a parameter name that is a reserved word in the source, and the
 * address of each function's help page.
 *
 * @param address where the add-in is served, without a slash at its end
 */
export function finishMetadata(metadata: Metadata, address: string): Metadata {
  const functions = metadata.functions.map((entry) => ({
    ...entry,
    helpUrl: `${address}/help/${functionFile(entry.name)}`,
    parameters: entry.parameters.map(finishParameter),
  }));
  const enums: ChoiceMetadata[] = choices.map(({ id, values }) => ({
    id,
    type: "string",
    values: values.map(({ name, tooltip }) => ({ name, stringValue: name, tooltip })),
  }));
  return { ...metadata, allowErrorForDataTypeAny: true, functions, enums };
}

function finishParameter(parameter: ParameterMetadata): ParameterMetadata {
  const choice = choices.find((one) => one.parameters.includes(parameter.name));
  if (choice !== undefined) return { ...parameter, type: "string", customEnumId: choice.id };
  return parameter.name === "classOfDuct" ? { ...parameter, name: "class" } : parameter;
}
