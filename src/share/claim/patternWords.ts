/**
 * Every text that a pattern of the typed units takes. Such a pattern is made of letters, (one|other), [ab], a sign behind a backslash, and a ?
 * behind any of them; another would be a mistake of ours.
 */
export function wordsOf({ source }: RegExp): readonly string[] {
  const text = source.replace(/^\^|\$$/g, "");
  let at = 0;
  const crossed = (heads: readonly string[], tails: readonly string[]): string[] =>
    heads.flatMap((head) => tails.map((tail) => head + tail));
  function either(): string[] {
    const all = sequence();
    while (text[at] === "|") {
      at++;
      all.push(...sequence());
    }
    return all;
  }
  function sequence(): string[] {
    let words = [""];
    while (at < text.length && text[at] !== "|" && text[at] !== ")") {
      const piece = one();
      const isOptional = text[at] === "?";
      if (isOptional) at++;
      words = crossed(words, isOptional ? ["", ...piece] : piece);
    }
    return words;
  }
  function one(): string[] {
    const sign = text[at++]!;
    if (sign === "(") {
      const all = either();
      at++;
      return all;
    }
    if (sign === "[") {
      const end = text.indexOf("]", at);
      const all = [...text.slice(at, end)];
      at = end + 1;
      return all;
    }
    if (sign === "\\") return [text[at++]!];
    if (/[*+.{^$]/.test(sign)) throw new Error(`a pattern of typed units has a ${sign}, which nothing here lists`);
    return [sign];
  }
  return either();
}
