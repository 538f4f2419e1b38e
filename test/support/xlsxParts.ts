import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { SaxesParser, type SaxesTagPlain } from "saxes";

/** The parts of a workbook file as text, by name. */
export const partsOf = (bytes: Uint8Array): Map<string, string> =>
  new Map(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));

export const zipped = (parts: Iterable<readonly [string, string]>): Uint8Array =>
  zipSync(Object.fromEntries([...parts].map(([name, text]) => [name, strToU8(text)])));

/** All elements of a part in order; fails where it is not well-formed. */
export function elementsOf(xml: string): SaxesTagPlain[] {
  const elements: SaxesTagPlain[] = [];
  const parser = new SaxesParser();
  parser.on("error", (error) => {
    throw error;
  });
  parser.on("opentag", (tag) => {
    elements.push(tag);
  });
  parser.write(xml).close();
  return elements;
}

/** Values of an attribute on all elements of a name. */
export const valuesOf = (xml: string, element: string, attribute: string): string[] =>
  elementsOf(xml).flatMap(({ name, attributes }) =>
    name === element && attributes[attribute] !== undefined ? [attributes[attribute]] : [],
  );
