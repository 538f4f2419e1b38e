import fc from "fast-check";
import { referenceTables } from "../../../src/reference";
import { entriesOf, type Entry, find } from "../../../src/taskpane/tables/search";
import { bluePipe, inventedTable, redPipe } from "./inventedTable";

const invented = entriesOf([inventedTable([redPipe, bluePipe])]);
const keysFound = (search: string): unknown[] => find(invented, search, "IP").map(({ row }) => row[0]);

describe("find, over invented pipes", () => {
  test.each([
    ["", ["red", "blue 15"]],
    ["  ?! ", ["red", "blue 15"]],
    ["rouge", ["red"]],
    ["ROHRCHEN", ["blue 15"]],
    ["röhrchen blaues", ["blue 15"]],
    ["pipe bore", ["red", "blue 15"]],
    ["red", ["red", "blue 15"]],
    ["book", ["red", "blue 15"]],
    ["memory", ["blue 15"]],
    ["weak", ["blue 15"]],
    ["1.5", ["blue 15"]],
    ["1,5", ["blue 15"]],
    ["15", ["blue 15"]],
    ["5", []],
    ["4.76251", ["red"]],
    ["4.763", ["red"]],
    ["red rouge brass", []],
    ["<b>rouge</b>", []],
  ])("%p finds %p", (search, keys) => expect(keysFound(search)).toEqual(keys));

  test("a row that has the words in its name comes before one that only mentions them", () => {
    const mentioning = entriesOf([inventedTable([bluePipe, redPipe])]);
    expect(find(mentioning, "red", "SI").map(({ row }) => row[0])).toEqual(["red", "blue 15"]);
  });
});

const entries = entriesOf(referenceTables);
const anyEntry = fc.constantFrom(...entries);
const anyWord = fc.oneof(
  fc.string({ unit: "grapheme" }),
  fc.double({ min: 0, max: 5000, noNaN: true }).map(String),
  anyEntry.chain(({ text }) => fc.constantFrom(...text.split(/\s+/))),
);

describe("find, over the reference tables", () => {
  test("every row stands once among the entries", () => {
    expect(entries).toHaveLength(referenceTables.reduce((sum, { rows }) => sum + rows.length, 0));
    expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
    const all = find(entries, "", "SI");
    expect(entries.every((entry, i) => all[i] === entry)).toBe(true);
  });

  const isFoundAmong = (rows: readonly Entry[], entry: Entry): boolean =>
    [entry.row[0], entry.row[1]].every((called) => find(rows, String(called), "SI").includes(entry));

  test("every row is found by its own label, and by its key, beside a row of each unit: whether a word is one depends on them all", () => {
    const ofUnits = [...new Map(entries.flatMap((entry) => entry.amounts.map(({ unit }) => [unit, entry]))).values()];
    expect(entries.filter((entry) => !isFoundAmong([...ofUnits, entry], entry)).map(({ id }) => id)).toEqual([]);
  });

  test("and so among all rows", () => {
    fc.assert(fc.property(anyEntry, (entry) => expect(isFoundAmong(entries, entry)).toBe(true)));
  });

  test("every row is found by each of its numbers", () => {
    fc.assert(
      fc.property(anyEntry, (entry) => {
        const plain = entry.row.filter((cell) => typeof cell === "number" && /^[\d.]+$/.test(String(cell)));
        for (const number of plain) expect(find(entries, String(number), "SI").includes(entry)).toBe(true);
      }),
    );
  });

  test("adding a word never adds a row", () => {
    fc.assert(
      fc.property(fc.array(anyWord, { maxLength: 3 }), anyWord, (words, another) => {
        const before = new Set(find(entries, words.join(" "), "SI"));
        for (const entry of find(entries, [...words, another].join(" "), "SI")) expect(before.has(entry)).toBe(true);
      }),
    );
  });

  test.each([
    ["galvanized steel", "galvanised steel"],
    ["Galvanised STEEL", "galvanised steel"],
    ["aluminum duct", "aluminium"],
    ["flex hose", "hose"],
  ])("%p finds the material %p", (search, key) => {
    expect(find(entries, search, "SI").map(({ row }) => row[0])).toContain(key);
  });
});

/** What the rows of the table machines that a search finds show, "key: airflow in cfm". */
const machinesFound = (search: string, system: "IP" | "SI" = "IP"): string[] =>
  find(entries, search, system)
    .filter(({ table }) => table.name === "machines")
    .map(({ table, row }) => `${row[0]}: ${row[table.columns.findIndex(({ unit }) => unit === "cfm")]}`);

describe("find, by what the rows show", () => {
  test("a number with its unit finds the rows that have it in that unit", () => {
    const found = find(entries, "350 cfm", "IP");
    expect(found.length).toBeGreaterThan(5);
    for (const { table, row } of found) {
      const airflows = row.filter((_, column) => table.columns[column]!.unit === "cfm");
      expect(airflows).toContain(350);
    }
    expect(machinesFound("350 cfm")).toContain("table saw 10 in: 350");
    expect(machinesFound("350 mm")).not.toContain("table saw 10 in: 350");
  });

  test("a unit finds the rows that show it", () => {
    expect(machinesFound("table saw cfm")[0]).toBe("table saw 10 in: 350");
    expect(find(entries, "table saw cfm", "IP").every(({ table }) => table.name !== "hoods")).toBe(true);
  });

  // 820 m3/h of the table are 820 / 1.699011 = 482.6 cfm, since 1 cfm = 0.028316846592 x 60 m3/h
  test("a number finds the value that it rounds or cuts off, and 5 does not find 4.76", () => {
    for (const search of ["482", "482.6", "483"])
      expect(machinesFound(search).map((line) => Number(line.split(": ")[1]).toFixed(1))).toContain("482.6");
    expect(keysFound("5")).toEqual([]);
  });

  test("a number as it is typed comes before one that is nearly so", () => {
    const nearly = [...redPipe.slice(0, 3), 100.2, null, ...redPipe.slice(5)];
    const exactly = [...bluePipe.slice(0, 3), 100, null, null, null, ...bluePipe.slice(7)];
    const found = find(entriesOf([inventedTable([nearly, exactly])]), "100 mm", "SI");
    expect(found.map(({ row }) => row[0])).toEqual(["blue 15", "red"]);
  });
});

describe("find, in this order", () => {
  test("what is called just so is first of all", () => {
    for (const key of ["hose", "wood dust", "gate", "branch 30"]) expect(find(entries, key, "IP")[0]!.row[0]).toBe(key);
  });

  test("a number that is part of a name comes before one of the row's values", () => {
    const [first] = find(entries, "4-piece 1.5", "IP");
    expect(first!.row[0]).toBe("elbow 4-piece 1.5");
  });

  test("what is called as it was typed comes before what has the words apart", () => {
    const names = find(entries, "table saw", "IP").map(({ row }) => String(row[1]));
    const apart = names.findIndex((name) => name.startsWith("Band saw"));
    expect(names.slice(0, apart).length).toBeGreaterThan(5);
    for (const name of names.slice(0, 5)) expect(name).toMatch(/^Table saw/);
  });

  test("what is printed in the user's units comes first", () => {
    const printed = (system: "IP" | "SI") => find(entries, "table saw cfm", system)[0]!.printedIn;
    expect([printed("IP"), printed("SI")]).toEqual(["IP", "SI"]);
  });

  test.each(["table saw", "planer", "Germany wood dust", "OSHA 5 mg/m3", "trgs"])(
    "%s: what is repealed comes last",
    (search) => {
      const repealed = find(entries, search, "SI").map((entry) => entry.repealed);
      expect(repealed).toEqual([...repealed].sort((one, other) => Number(one) - Number(other)));
    },
  );

  test("rows of a repealed edition, and limits that are no longer in force, are known as such", () => {
    const keys = entries.flatMap(({ repealed, row }) => (repealed ? [row[0]] : []));
    expect(keys).toContain("table saw 80 and 100 mm 2008");
    expect(keys).not.toContain("table saw 10 in");
    for (const { table, row, repealed } of entries) {
      const inForce = row[table.columns.findIndex(({ name }) => name === "in force")];
      if (inForce !== undefined) expect(repealed).toBe(inForce === "no");
    }
  });
});
