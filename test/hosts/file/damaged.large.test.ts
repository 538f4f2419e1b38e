import { strToU8, zipSync } from "fflate";
import { FileRefusal } from "../../../src/hosts/file/fileRefusal";
import { readBook } from "../../../src/hosts/file/readBook";
import { writeBook } from "../../../src/hosts/file/writeBook";
import { lots } from "../../support/lots";
import { partsOf, zipped } from "../../support/xlsxParts";
import { sampleBook } from "./sampleBook";

const CUTS = 150;
const SEEDS = [1, 2, 3, 4]; // of each kind of damage to single places
const TURNED_BITS = 40; // for each seed
const EXCHANGED_LETTERS = 20;

let whole: Uint8Array;
beforeAll(async () => {
  whole = await writeBook(sampleBook, { title: "x" });
});

/** Numbers from 0 up to a limit. */
function seeded(seed: number): (limit: number) => number {
  const lot = lots(seed);
  return (limit) => Math.floor(lot() * limit);
}

/** Reads, or refuses with a sentence; anything else that is thrown fails the test. */
async function outcome(bytes: Uint8Array): Promise<"read" | "refused"> {
  try {
    await readBook(bytes);
    return "read";
  } catch (error) {
    expect(error).toBeInstanceOf(FileRefusal);
    expect((error as FileRefusal).message).toMatch(/^This file .*\.$/);
    return "refused";
  }
}

describe("a damaged file is read or refused, and nothing else happens", () => {
  test("cut short anywhere, it is refused", async () => {
    const pick = seeded(7);
    for (let round = 0; round < CUTS; round++) {
      const length = pick(whole.length);
      expect([length, await outcome(whole.subarray(0, length))]).toEqual([length, "refused"]);
    }
  });

  test.each(SEEDS)("with a bit turned over (seed %i), it is refused wherever a cell could differ", async (seed) => {
    const pick = seeded(seed);
    const before = JSON.stringify(await readBook(whole), plain);
    for (let round = 0; round < TURNED_BITS; round++) {
      const bytes = whole.slice();
      const [at, bit] = [pick(bytes.length), pick(8)];
      bytes[at] = bytes[at]! ^ (1 << bit);
      if ((await outcome(bytes)) === "refused") continue;
      const same = JSON.stringify(await readBook(bytes), plain) === before; // only a time or the like was hit
      expect([at, same]).toEqual([at, true]);
    }
  });

  test.each(SEEDS)("with letters of its parts exchanged (seed %i), it is read or refused", async (seed) => {
    const pick = seeded(seed * 1000);
    const parts = [...partsOf(whole)];
    const seen = new Set<string>();
    for (let round = 0; round < EXCHANGED_LETTERS; round++) {
      const [name, xml] = parts[pick(parts.length)]!;
      const at = pick(xml.length);
      const letters = ["<", ">", "&", '"', "0", "9999999999", "-1", "A1:XFD1048576", "'", "\u0000", ""];
      const broken = xml.slice(0, at) + letters[pick(letters.length)]! + xml.slice(at + 1);
      const bytes = zipSync(
        Object.fromEntries(parts.map((part) => [part[0], strToU8(part[0] === name ? broken : part[1])])),
      );
      seen.add(await outcome(bytes));
    }
    expect(seen).toEqual(new Set(["read", "refused"]));
  });

  test.each([1, 2])("with a part missing (seed %i), it is read or refused", async (seed) => {
    const parts = [...partsOf(whole)];
    const from = seed === 1 ? 0 : Math.floor(parts.length / 2);
    for (let index = from; index < parts.length; index += 2) {
      const rest = parts.filter((_, other) => other !== index);
      expect(["read", "refused"]).toContain(
        await outcome(zipSync(Object.fromEntries(rest.map(([name, xml]) => [name, strToU8(xml)])))),
      );
    }
  });
});

/** Parts of a workbook that nothing is read from. */
const UNREAD = [
  "[Content_Types].xml",
  "docProps/app.xml",
  "xl/charts/_rels/chart1.xml.rels",
  "xl/drawings/vmlDrawing1.vml",
  "xl/metadata.xml",
];

test.each([
  ["a document type", '<!DOCTYPE w [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]>', ""],
  ["a hundred thousand elements, each in the other", "<x>".repeat(1e5), "</x>".repeat(1e5)],
])("%s is refused in every part that is read", async (_, before, after) => {
  const parts = partsOf(whole);
  const refused: string[] = [];
  for (const [name, xml] of parts) {
    const [declaration = ""] = /^<\?xml.*?\?>\s*/.exec(xml) ?? [];
    const spoilt = declaration + before + xml.slice(declaration.length) + after;
    if ((await outcome(zipped(new Map(parts).set(name, spoilt)))) === "refused") refused.push(name);
  }
  expect([...parts.keys()].filter((name) => !refused.includes(name)).sort()).toEqual(UNREAD);
});

const plain = (_: string, value: unknown): unknown => (value instanceof Map ? Object.fromEntries(value) : value);
