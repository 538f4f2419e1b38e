import { referenceTables } from "../../../reference";
import { gateConditions } from "../../../reference/gateConditions";
import { leakageClasses } from "../../../reference/leakageClasses";
import { materials } from "../../../reference/materials";
import { unitOf } from "../../../reference/quantities";
import { plain } from "../../../core/naming/findNamed";
import { fittingsNamed, type NamedValue, rowNamed } from "./namedValue";

/** What an argument of a call shows, by its place: a text, a number, or several of them; empty where it is left out. */
export type ShownArguments = (place: number) => readonly (string | number)[];

type Reader = (args: ShownArguments) => NamedValue[];

const texts = (args: ShownArguments, at: number): string[] => args(at).filter((one) => typeof one === "string");
const numbers = (args: ShownArguments, at: number): number[] => args(at).filter((one) => typeof one === "number");
const orNone = (values: readonly number[]): readonly (number | null)[] => (values.length === 0 ? [null] : values);

const inchOf = (args: ShownArguments, units: number): number =>
  unitOf("diameter", texts(args, units).some((word) => plain(word) === "si") ? "SI" : "IP").factor;

const material =
  (at: number): Reader =>
  (args) =>
    texts(args, at).flatMap((name) => rowNamed(materials, name));

/** Entries of a list in a duct of the diameter that the call gives. */
const fitting =
  (at: number, diameter: number, units: number): Reader =>
  (args) => {
    const inch = inchOf(args, units);
    const ducts = orNone(numbers(args, diameter));
    return texts(args, at).flatMap((list) =>
      ducts.flatMap((duct) => fittingsNamed(list, inch, duct === null ? null : duct * inch)),
    );
  };

const coefficient: Reader = (args) =>
  texts(args, 0).flatMap((list) =>
    orNone(numbers(args, 1)).flatMap((shape) =>
      orNone(numbers(args, 2)).flatMap((angle) => fittingsNamed(list, inchOf(args, 3), null, { shape, angle })),
    ),
  );

/** A value of REFERENCE: what its row says of itself. */
const reference: Reader = (args) => {
  const table = referenceTables.find(({ name }) => texts(args, 0).some((word) => plain(word) === plain(name)));
  if (table === undefined) return [];
  const [basis, weak] = ["basis", "weak"].map((name) => table.columns.findIndex((column) => column.name === name));
  const keys = texts(args, 1).map(plain);
  return table.rows
    .filter(([key]) => keys.includes(plain(String(key))))
    .map((row) => ({ name: String(row[0]), weakness: row[weak!] === "" ? "" : String(row[basis!]) }));
};

const readers: Readonly<Record<string, readonly Reader[]>> = {
  FRICTION: [material(2)],
  RUNLOSS: [material(3)],
  LOSSCOEFFICIENT: [coefficient],
  FITTINGLOSS: [fitting(2, 1, 5)],
  EQUIVLENGTH: [fitting(0, 2, 5), material(3)],
  HOODSUCTION: [fitting(2, 1, 4)],
  HOODAIRFLOW: [fitting(2, 1, 4)],
  GATELEAK: [(args) => texts(args, 0).flatMap((name) => rowNamed(gateConditions, name))],
  SEAMLEAK: [(args) => texts(args, 0).flatMap((name) => rowNamed(leakageClasses, name))],
  REFERENCE: [reference],
};

/** What one call takes from the tables by name. A whole table, as BUDGET takes it, is read by its own headers. */
export const namesInCall = (name: string, args: ShownArguments): NamedValue[] =>
  (readers[name] ?? []).flatMap((read) => read(args));
