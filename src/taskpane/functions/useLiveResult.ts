import { useEffect, useMemo, useState } from "react";
import type { SheetHost } from "../../hosts/host";
import type { Calculated } from "../../sheets/calculated";
import type { FunctionAnswer, Matrix } from "./callFunction";
import { cellsOfBook } from "./cellsOfBook";
import type { FunctionMetadata } from "../../hosts/functionsFile";
import { ofTheBook } from "./ofTheBook";
import { calculate } from "./pageWorker";
import { argumentOf, readTyped, type Typed } from "./typed";
import { itemAt } from "../../reference/itemAt";

const PAUSE = 200; // ms without a key before it is computed

export interface LiveResult {
  readonly given: Texts; // what was typed, and the book's own units and air where nothing was
  readonly typed: readonly Typed[];
  readonly answer: FunctionAnswer | string; // a sentence while there is none
  readonly book: Calculated | null;
}

/** By parameter. */
export type Texts = Readonly<Record<string, string>>;

/** What the form would write, and what it would give, with what the cells hold now. */
export function useLiveResult(metadata: FunctionMetadata, texts: Texts, host: SheetHost | null): LiveResult {
  const [book, setBook] = useState<Calculated | null>(null);
  const [answer, setAnswer] = useState<FunctionAnswer | string>("");
  useEffect(() => {
    if (host === null) return;
    let wanted = true;
    let asked = 0; // only the last question's answer counts: an earlier one may come after it
    let timer: ReturnType<typeof setTimeout> | undefined;
    // A host that cannot be read now leaves the form as it is: numbers still compute.
    const read = (): void => {
      const question = (asked += 1);
      void host.readBook().then(
        (fresh) => wanted && question === asked && setBook(fresh),
        () => undefined,
      );
    };
    read();
    const end = host.follow((what) => {
      if (what === "selection") return; // no cell is another then, and reading a book takes Excel a while
      clearTimeout(timer);
      timer = setTimeout(read, PAUSE);
    });
    return () => {
      wanted = false;
      clearTimeout(timer);
      end();
    };
  }, [host]);

  const given = useMemo(() => ({ ...ofTheBook(metadata, book), ...texts }), [metadata, texts, book]);
  const typed = useMemo(
    () => metadata.parameters.map(({ name }) => readTyped(given[name] ?? "", book?.workbook.names ?? [])),
    [metadata, given, book],
  );
  useEffect(() => {
    let wanted = true;
    const timer = setTimeout(() => {
      const asked = question(metadata, typed, book);
      if (typeof asked === "string") return setAnswer(asked);
      void calculate({ id: metadata.id, args: asked }).then((fresh) => wanted && setAnswer(fresh));
    }, PAUSE);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [metadata, typed, book]);
  return { given, typed, answer, book };
}

/** The arguments to call with, or what is missing for that. */
function question(
  metadata: FunctionMetadata,
  typed: readonly Typed[],
  book: Calculated | null,
): (Matrix | null)[] | string {
  const missing = metadata.parameters.find(
    ({ optional }, i) => optional !== true && itemAt(typed, i).kind === "nothing",
  );
  if (missing !== undefined) return `The result shows here once ${missing.name} is given.`;
  let unknown = "";
  const args = typed.map((one) =>
    argumentOf(one, (reference) => {
      const cells = book === null ? null : cellsOfBook(book, reference);
      if (cells === null) unknown = reference;
      return cells;
    }),
  );
  if (unknown === "") return args;
  return book === null
    ? `Without a sheet nobody knows what stands in ${unknown}; the formula can still be copied.`
    : `Name the sheet too, as in ${book.workbook.sheets[0]?.name ?? "Runs"}!B4, to see the result here before it is written.`;
}
