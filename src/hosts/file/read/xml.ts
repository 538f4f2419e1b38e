import { SaxesParser } from "saxes";
import { FileRefusal, TOO_LARGE } from "../fileRefusal";

/** An element of a part, its name and its attributes' names without their prefix but for r:id and its like. */
export interface XmlNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: XmlNode[];
  text: string; // of the element itself
}

/** What is done with an element as soon as it ends; it is not kept in the tree then. */
export type Taken = Readonly<Record<string, (node: XmlNode, parent: XmlNode) => void>>;

const DEEPEST = 64; // charts reach about 20
const MOST_KEPT = 1e6; // elements in memory at a time; the cells of a sheet are taken one by one
const MOST_ATTRIBUTES = 1000; // of an element

/** Parses a part. A document type, by which entities could be defined, is refused as such. */
export function parseXml(xml: string, taken: Taken = {}): XmlNode {
  const root: XmlNode = { name: "", attributes: {}, children: [], text: "" };
  const open: XmlNode[] = [root];
  const keptBefore: number[] = []; // of each open element
  let [kept, attributes] = [0, 0];
  const parser = new SaxesParser();
  parser.on("error", (error) => {
    throw new FileRefusal("This file has a part that is not well-formed.", { cause: error });
  });
  parser.on("doctype", () => {
    throw new FileRefusal("This file has a part that defines things of its own, which a workbook has no need of.");
  });
  parser.on("attribute", () => {
    if (++attributes > MOST_ATTRIBUTES) throw new FileRefusal(TOO_LARGE);
  });
  parser.on("opentag", (tag) => {
    if (open.length > DEEPEST) throw new FileRefusal("This file has a part that is nested too deeply.");
    keptBefore.push(kept);
    attributes = 0;
    if (++kept > MOST_KEPT) throw new FileRefusal(TOO_LARGE);
    open.push({ name: local(tag.name), attributes: tag.attributes, children: [], text: "" });
  });
  parser.on("text", (text) => {
    open.at(-1)!.text += text;
  });
  parser.on("cdata", (text) => {
    open.at(-1)!.text += text;
  });
  parser.on("closetag", () => {
    const node = open.pop()!;
    const parent = open.at(-1)!;
    const before = keptBefore.pop()!;
    const take = Object.hasOwn(taken, node.name) ? taken[node.name] : undefined;
    if (take === undefined) return void parent.children.push(node);
    take(node, parent);
    kept = before;
  });
  parser.write(xml).close();
  return root.children[0]!;
}

const local = (name: string): string => name.slice(name.indexOf(":") + 1);

/** The first child of this name. */
export const child = (node: XmlNode | undefined, name: string): XmlNode | undefined =>
  node?.children.find((one) => one.name === name);

export const childrenOf = (node: XmlNode | undefined, name: string): readonly XmlNode[] =>
  node?.children.filter((one) => one.name === name) ?? [];

/** Goes down by names. */
export const down = (node: XmlNode | undefined, ...names: readonly string[]): XmlNode | undefined =>
  names.reduce(child, node);

/** All elements of this name, however deep. */
export const everywhere = (node: XmlNode, name: string): readonly XmlNode[] =>
  node.children.flatMap((one) => [...(one.name === name ? [one] : []), ...everywhere(one, name)]);

export const numberOf = (text: string | undefined): number | undefined => {
  const value = text === undefined || text.trim() === "" ? NaN : Number(text);
  return Number.isFinite(value) ? value : undefined;
};

/** A truth value as the format writes it; an element or attribute that is there without one says yes. */
export const isOn = (text: string | undefined): boolean => text === "1" || text === "true" || text === "on";
