/**
 * Characters that XML has no way to say, and halves of a pair, which no encoding has: the file format writes them as
 * _x000B_, and the underscore of a text that already looks so as _x005F_ (ECMA-376 part 1, ST_Xstring).
 */
const UNSAYABLE = /[\u0000-\u0008\u000b-\u001f\ufffe\uffff\ud800-\udfff]/gu; // by "u" a whole pair is one character, so that only halves are found

const escaped = (character: string): string =>
  `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`;

export const toFileText = (text: string): string =>
  text.replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_").replace(UNSAYABLE, escaped);

export const fromFileText = (text: string): string =>
  text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)));

/**
 * Put before an error's name while hucre writes, so that a text that reads like an error stays a text and an error does
 * not become one. No text can hold this character by itself: toFileText has escaped it.
 */
export const MARK = "\uffff";
