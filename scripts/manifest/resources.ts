import { child, every, type XmlElement } from "./xml";

const kinds = ["Images", "Urls", "ShortStrings", "LongStrings"] as const;
type Kind = (typeof kinds)[number];

/** Which kind of resource an element may point to. */
const kindFor: Readonly<Record<string, Kind>> = {
  Runtime: "Urls",
  SourceLocation: "Urls",
  FunctionFile: "Urls",
  LearnMoreUrl: "Urls",
  Image: "Images",
  Namespace: "ShortStrings",
  Label: "ShortStrings",
  Title: "ShortStrings",
  Description: "LongStrings",
};

interface Resource {
  readonly kind: Kind;
  readonly id: string;
  readonly value: string;
}

export function resourcesOf(manifest: XmlElement): Resource[] {
  const resources = child(child(manifest, "VersionOverrides"), "Resources");
  return kinds.flatMap((kind) =>
    (child(resources, kind)?.children ?? []).map((entry) => ({
      kind,
      id: entry.attributes.id ?? "",
      value: entry.attributes.DefaultValue ?? "",
    })),
  );
}

export const valueOf = (manifest: XmlElement, resid: string | undefined): string | undefined =>
  resourcesOf(manifest).find(({ id }) => id === resid)?.value;

/** Dangling, mistaken, unused and double resources. */
export function resourceFaults(manifest: XmlElement): string[] {
  const resources = resourcesOf(manifest);
  const pointers = Object.keys(kindFor).flatMap((name) =>
    every(manifest, name).filter((element) => element.attributes.resid !== undefined),
  );
  const faultOfPointer = ({ name, line, attributes }: XmlElement): string[] => {
    const target = resources.find(({ id }) => id === attributes.resid);
    if (target === undefined)
      return [`${name} (line ${line}) points to "${attributes.resid}", which is not among the resources`];
    return target.kind === kindFor[name]
      ? []
      : [`${name} (line ${line}) points to "${target.id}", which is not one of ${kindFor[name]}`];
  };
  const faultsOfResource = ({ kind, id }: Resource, at: number): string[] => [
    ...(resources.findIndex((other) => other.id === id) === at ? [] : [`the id "${id}" stands twice`]),
    ...(pointers.some(({ attributes }) => attributes.resid === id) ? [] : [`"${id}" in ${kind} is never used`]),
  ];
  return [...pointers.flatMap(faultOfPointer), ...resources.flatMap(faultsOfResource)];
}
