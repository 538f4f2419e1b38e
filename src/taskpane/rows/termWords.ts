/** A column's or fact's name as it stands above its value: a word with a capital, a symbol such as r/D as it is. */
export const termWords = (name: string): string =>
  /^[a-z]{2}/.test(name) ? `${name.charAt(0).toUpperCase()}${name.slice(1)}` : name;
