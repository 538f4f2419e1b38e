/** A text as a formula writes it. A quote inside is CHAR(34): written twice, the grid of the local sheet takes it for two texts. */
export const quotedText = (text: string): string => `"${text.replaceAll('"', '"&CHAR(34)&"')}"`;

/** A number as a formula writes it, safe behind any operator. */
export function numberText(value: number): string {
  const text = String(value).toUpperCase();
  return value < 0 ? `(${text})` : text;
}
