import { SaxesParser } from "saxes";

/** An XML element without its namespace prefix. */
export interface XmlElement {
  readonly name: string;
  readonly line: number;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: XmlElement[];
  text: string;
}

/** The tree of a document. Throws with the line where it is not well-formed. */
export function parseXml(xml: string): XmlElement {
  const document: XmlElement = { name: "", line: 0, attributes: {}, children: [], text: "" };
  const open = [document];
  const innermost = (): XmlElement => open[open.length - 1] ?? document;
  const parser = new SaxesParser({ xmlns: true });
  parser.on("error", (error) => {
    throw error;
  });
  let line = 0; // where the tag begins; "opentag" comes where it ends
  parser.on("opentagstart", () => {
    line = parser.line;
  });
  parser.on("opentag", (tag) => {
    const attributes = Object.fromEntries(Object.values(tag.attributes).map(({ name, value }) => [name, value]));
    const element: XmlElement = { name: tag.local, line, attributes, children: [], text: "" };
    innermost().children.push(element);
    open.push(element);
  });
  parser.on("text", (text) => {
    innermost().text += text.trim();
  });
  parser.on("closetag", () => open.pop());
  parser.write(xml).close();
  return document.children[0] ?? document;
}

/** Every element of this name, at any depth, in document order. */
export const every = (root: XmlElement, name: string): XmlElement[] =>
  [root, ...root.children.flatMap((child) => every(child, name))].filter(
    (element, at) => at > 0 || element.name === name,
  );

export const child = (parent: XmlElement | undefined, name: string): XmlElement | undefined =>
  parent?.children.find((element) => element.name === name);
