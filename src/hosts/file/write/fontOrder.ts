/** The parts of a font as Open XML's schema puts them one after the other (ISO/IEC 29500-1, CT_Font). */
const ORDER = [
  ...["b", "i", "strike", "condense", "extend", "outline", "shadow", "u", "vertAlign"],
  ...["sz", "color", "name", "family", "charset", "scheme"],
];

/** A font's parts come in any order from hucre; a program that checks a file by the schema would call it damaged. */
export const orderedFonts = (styles: string): string =>
  styles.replace(/(<font>)(.*?)(<\/font>)/gs, (_, open: string, parts: string, close: string) => {
    const elements = parts.match(/<[^>]*\/>/g) ?? [];
    return open + elements.sort((one, other) => placeOf(one) - placeOf(other)).join("") + close;
  });

const placeOf = (element: string): number => ORDER.indexOf(/<(\w+)/.exec(element)?.[1] ?? "");
