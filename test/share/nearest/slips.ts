/** What people type in place of a name, drawn by lot. */

const LETTERS = [..."abcdefghijklmnopqrstuvwxyz"];
const FOREIGN = [
  ...["cheese", "Schlauch", "dust collector", "unknown", "tbd", "nozzle", "pipe thing", "hotte", "new", "other", "xyz"],
  ...["test run", "vacuum", "saw", "big planer", "wood thing", "metal", "old one", "4 inch", "?", "main duct"],
];

export interface Slip {
  readonly how: string;
  readonly text: string;
}

/** One of these names with a slip of the hand, a part of it, or a text that has nothing to do with it. */
export function slipOf(names: readonly string[], lot: () => number): Slip {
  const pick = <Item>(items: readonly Item[]): Item => items[Math.floor(lot() * items.length)]!;
  const name = pick(names);
  const words = name.split(" ");
  const chance = lot();
  if (chance < 0.5) return one(name, lot);
  if (chance < 0.62) return { how: "two slips", text: one(one(name, lot).text, lot).text };
  if (chance < 0.7) return { how: "a slip, other case and hyphens", text: one(name, lot).text.toUpperCase().replaceAll(" ", "-") }; // prettier-ignore
  if (chance < 0.78) return { how: "its beginning", text: name.slice(0, 3 + Math.floor(lot() * Math.max(1, name.length - 3))) }; // prettier-ignore
  if (chance < 0.84) return { how: "one of its words, with a slip", text: one(pick(words), lot).text };
  if (chance < 0.9) return { how: "a word left out", text: words.filter((_, at) => at !== Math.floor(lot() * words.length) || words.length === 1).join(" ") }; // prettier-ignore
  if (chance < 0.95) return { how: "its first word and another", text: `${words[0]!} ${pick(FOREIGN)}` };
  return { how: "another text", text: pick(FOREIGN) };
}

function one(name: string, lot: () => number): Slip {
  const at = Math.floor(lot() * name.length);
  const letter = LETTERS[Math.floor(lot() * LETTERS.length)]!;
  const [before, behind] = [name.slice(0, at), name.slice(at + 1)];
  const kinds: readonly Slip[] = [
    { how: "a letter left out", text: before + behind },
    { how: "a letter twice", text: before + name.slice(at, at + 1) + name.slice(at) },
    { how: "two letters swapped", text: before + behind.slice(0, 1) + name.slice(at, at + 1) + behind.slice(1) },
    { how: "another letter", text: before + letter + behind },
    { how: "a letter more", text: before + letter + name.slice(at) },
  ];
  return kinds[Math.floor(lot() * kinds.length)]!;
}
