import { FileRefusal } from "../fileRefusal";
import { type Parts, unzip } from "./unzip";
import { childrenOf, parseXml, type Taken, type XmlNode } from "./xml";

/** A workbook's parts and how they refer to each other. */
export interface Package {
  readonly workbook: string; // the part's name
  readonly xml: (part: string, taken?: Taken) => XmlNode;
  readonly relations: (part: string) => readonly Relation[];
}

export interface Relation {
  readonly id: string;
  readonly kind: string; // the last word of its type, such as "worksheet"
  readonly part: string;
}

export function openPackage(bytes: Uint8Array): Package {
  const parts = unzip(bytes);
  const xml = (part: string, taken: Taken = {}): XmlNode => {
    if (!parts.has(part)) throw new FileRefusal("This file is damaged: it refers to a part that it does not have.");
    return parseXml(parts.text(part), taken);
  };
  const relations = (part: string): readonly Relation[] => relationsOf(parts, part);
  const workbook = relations("").find(({ kind }) => kind === "officeDocument")?.part;
  if (workbook === undefined || !parts.has(workbook)) throw new FileRefusal("This file is no .xlsx workbook.");
  return { workbook, xml, relations };
}

function relationsOf(parts: Parts, part: string): readonly Relation[] {
  const cut = part.lastIndexOf("/") + 1;
  const folder = part.slice(0, cut);
  const name = `${folder}_rels/${part.slice(cut)}.rels`;
  if (!parts.has(name)) return [];
  return childrenOf(parseXml(parts.text(name)), "Relationship").flatMap(({ attributes }) => {
    const { Id, Type, Target, TargetMode } = attributes;
    if (Id === undefined || Type === undefined || Target === undefined || TargetMode === "External") return [];
    return [{ id: Id, kind: Type.slice(Type.lastIndexOf("/") + 1), part: resolved(folder, Target) }];
  });
}

function resolved(folder: string, target: string): string {
  const steps = (target.startsWith("/") ? target : folder + target).split("/");
  const path: string[] = [];
  for (const step of steps) {
    if (step === "..") path.pop();
    else if (step !== "." && step !== "") path.push(step);
  }
  return path.join("/");
}

/** The id by which an element refers to another part: its attribute r:id, whatever the prefix. */
export const relationId = ({ attributes }: XmlNode): string | undefined =>
  Object.entries(attributes).find(([name]) => name.endsWith(":id"))?.[1];

/** Refuses a file that has lost the list of what its sheet refers to: notes or charts would be gone without a word. */
export function checkRelations(elements: readonly XmlNode[], relations: readonly Relation[]): void {
  const known = new Set(relations.map(({ id }) => id));
  const ids = elements.flatMap((element) => relationId(element) ?? []);
  if (ids.some((id) => !known.has(id)))
    throw new FileRefusal("This file is damaged: it refers to a part that it does not have.");
}
