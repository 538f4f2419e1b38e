import type { XmlElement } from "./xml";

/**
 * What may stand in each element, in the order the host demands; "?" may be missing, "+" may repeat.
 * The order is that of the page "How to find the proper order of manifest elements" of the Office Add-ins documentation (2025-06-02),
 * reduced to the elements that an add-in with one pane and custom functions uses.
 */
const contents: Readonly<Record<string, string>> = {
  OfficeApp:
    "Id Version ProviderName DefaultLocale DisplayName Description IconUrl HighResolutionIconUrl SupportUrl? AppDomains? " +
    "Hosts Requirements DefaultSettings Permissions VersionOverrides",
  AppDomains: "AppDomain+",
  Requirements: "Sets",
  Sets: "Set+",
  DefaultSettings: "SourceLocation",
  VersionOverrides: "Description? Requirements? Hosts Resources",
  Hosts: "Host",
  Runtimes: "Runtime",
  AllFormFactors: "ExtensionPoint",
  DesktopFormFactor: "GetStarted? FunctionFile? ExtensionPoint",
  GetStarted: "Title Description LearnMoreUrl",
  Script: "SourceLocation",
  Page: "SourceLocation",
  Metadata: "SourceLocation",
  OfficeTab: "Group+",
  Group: "Label Icon Control+",
  Control: "Label Supertip Icon Action",
  Supertip: "Title Description",
  Icon: "Image+",
  Action: "TaskpaneId? SourceLocation",
  Resources: "Images Urls ShortStrings LongStrings",
  Images: "Image+",
  Urls: "Url+",
  ShortStrings: "String+",
  LongStrings: "String+",
};

/** Elements whose content depends on where they stand or on their type. */
function contentsOf(element: XmlElement, parent: XmlElement | null): string | undefined {
  const type = element.attributes["xsi:type"];
  if (element.name === "Host") return type === undefined ? "" : "Runtimes AllFormFactors DesktopFormFactor";
  if (element.name !== "ExtensionPoint") return contents[element.name];
  return parent?.name === "AllFormFactors" ? "Script Page Metadata Namespace" : "OfficeTab";
}

/** Elements that stand in the wrong place, twice, or not at all. */
export function orderFaults(element: XmlElement, parent: XmlElement | null = null): string[] {
  const within = element.children.flatMap((inner) => orderFaults(inner, element));
  const model = (contentsOf(element, parent) ?? "").split(" ").filter((word) => word !== "");
  const places = model.map((word) => word.replace(/[?+]$/, ""));
  const names = element.children.map((inner) => inner.name);
  const missing = places.filter((name, at) => !model[at]!.endsWith("?") && !names.includes(name));
  return [
    ...missing.map((name) => `${element.name} (line ${element.line}) needs ${name}`),
    ...element.children.flatMap((inner, at) => {
      const place = places.indexOf(inner.name);
      const before = element.children[at - 1];
      if (place < 0) return [`${inner.name} (line ${inner.line}) has no place in ${element.name}`];
      if (before === undefined || !places.includes(before.name)) return [];
      if (places.indexOf(before.name) > place)
        return [`${inner.name} (line ${inner.line}) must come before ${before.name}`];
      const repeated = before.name === inner.name && !model[place]!.endsWith("+");
      return repeated ? [`${inner.name} (line ${inner.line}) may stand only once in ${element.name}`] : [];
    }),
    ...within,
  ];
}
