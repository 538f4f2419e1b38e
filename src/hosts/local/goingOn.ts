/**
 * The words that go on as somebody began to type. None where what stands there is one of them already: Tab must not make
 * "main" a "main A" where there is a run called main.
 */
export function goingOn(begun: string, words: readonly string[]): string[] {
  const begins = begun.toLowerCase();
  const all = words.map((word) => word.toLowerCase());
  if (begins === "" || all.includes(begins)) return [];
  return words.filter((_, place) => all[place]?.startsWith(begins) === true);
}
