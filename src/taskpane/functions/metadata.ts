import type { FunctionsFile, ParameterMetadata } from "../../hosts/functionsFile";
import type { UnitSystem } from "../../reference/quantities";

let loading: Promise<FunctionsFile> | undefined;

/** functions.json of this page's own origin, asked for once; a failure is not kept. */
export const loadMetadata = (): Promise<FunctionsFile> =>
  (loading ??= fetch("functions.json")
    .then(async (response) => {
      if (!response.ok) throw new Error(`status ${response.status}`);
      return (await response.json()) as FunctionsFile;
    })
    .catch((error: unknown) => {
      loading = undefined;
      throw error;
    }));

/** The words an argument may take where it takes no others, with what each means. */
export const choicesOf = (file: FunctionsFile, { customEnumId }: ParameterMetadata) =>
  file.enums?.find(({ id }) => id === customEnumId)?.values ?? null;

/** The units that a description names, as "in in.w.g. (SI: Pa)" or "cfm (SI: m³/h)"; empty where it names none. */
export function unitIn(description: string, system: UnitSystem): string {
  const match = /(in\.w\.g\. per 100 ft|[^\s,(]+) \(SI: ([^),;]+)\)/.exec(description);
  return match === null ? "" : match[system === "IP" ? 1 : 2]!;
}
