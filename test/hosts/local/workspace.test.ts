import type { OpenBook } from "../../../src/hosts/local/openBook";
import { type KeptState, workspaceOf } from "../../../src/hosts/local/workspace";
import { bookOf, sheetOf } from "./gridOfOurs";

const first: OpenBook = { workbook: bookOf(sheetOf([])), file: "first.xlsx", unsaved: false };

type Outcome = "kept" | "parted" | "failed";

/** What the page's user answers, and whether the budget can be a file. */
interface Answers {
  readonly chosen?: string;
  readonly saves?: boolean;
}

/** A page around a store that answers when it is told to. */
function page(found: Parameters<typeof workspaceOf>[7] = "nothing", answers: Answers = {}) {
  const said: [string, KeptState][] = [];
  const writes: { readonly book: OpenBook; readonly answer: (outcome: Outcome) => Promise<void> }[] = [];
  let risk = false;
  let stands = 0; // what stands in the grid
  const done: string[] = [];
  const workspace = workspaceOf(
    {
      workbook: () => bookOf(sheetOf([{ at: "A1", value: stands }])),
      show: async () => void done.push("replaced"),
      focus: () => undefined,
      save: async () => {
        done.push("saved");
        return answers.saves ?? true;
      },
    },
    {
      load: async () => "nothing",
      keep: (book) =>
        new Promise((resolve) => {
          writes.push({ book, answer: (outcome) => (resolve(outcome), settled()) });
        }),
      forget: async () => true,
    },
    {
      ask: async (_, offered) => offered.indexOf(answers.chosen ?? offered[0]!),
      askAside: () => new Promise(() => undefined),
      quiet: () => void done.push("quiet"),
    },
    { say: (words, state) => void said.push([words, state]) },
    (is) => {
      risk = is;
    },
    { isThere: async () => false, forget: async () => undefined },
    first,
    found,
  );
  return {
    workspace,
    done,
    writes,
    line: () => said.at(-1)!,
    risk: () => risk,
    edit: async (value: number): Promise<void> => {
      stands = value;
      workspace.touched();
      await settled();
    },
  };
}

/** Lets everything that waits for no clock come to its end. */
const settled = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));
const valueIn = ({ workbook }: OpenBook): unknown => (workbook.sheets[0]!.cells[0] as { value: unknown }).value;

describe("an edit", () => {
  test("is written at once, without a pause, and the line says Kept only when the store has it", async () => {
    const { workspace, writes, line, risk, edit } = page();
    workspace.touched();
    expect(line()).toEqual(["Keeping ...", "waiting"]);
    expect(risk()).toBe(true);
    await edit(1);
    expect(writes.map(({ book }) => valueIn(book))).toEqual([1]);
    expect(line()[1]).toBe("waiting");
    await writes[0]!.answer("kept");
    expect(line()).toEqual(["Kept in this browser.", "kept"]);
    expect(risk()).toBe(false);
  });

  test("that comes while another is written is written after it, and until then nothing is called kept", async () => {
    const { writes, line, risk, edit } = page();
    await edit(1);
    await edit(2);
    await edit(3);
    expect(writes).toHaveLength(1);
    await writes[0]!.answer("kept");
    expect(line()).toEqual(["Keeping ...", "waiting"]);
    expect(risk()).toBe(true);
    expect(writes.map(({ book }) => valueIn(book))).toEqual([1, 3]);
    await writes[1]!.answer("kept");
    expect(line()[1]).toBe("kept");
    expect(risk()).toBe(false);
  });

  test.each(["failed", "parted"] as const)("whose keeping %s is at risk until a file has it", async (outcome) => {
    const { workspace, writes, line, risk, edit } = page();
    await edit(1);
    await writes[0]!.answer(outcome);
    expect(line()).toEqual([expect.stringMatching(/^Not kept: /), "not kept"]);
    expect(risk()).toBe(true);
    workspace.saved();
    expect(risk()).toBe(false);
  });

  test("beside a store that is left alone is at risk", async () => {
    const { writes, risk, edit } = page("unreadable");
    expect(risk()).toBe(false);
    await edit(1);
    expect(writes).toEqual([]);
    expect(risk()).toBe(true);
  });
});

describe("another budget in place of one whose changes no file has", () => {
  const opened = async (answers: Answers): Promise<{ opens: boolean; done: string[] }> => {
    const { workspace, writes, edit, done } = page("nothing", answers);
    await edit(1);
    const opening = workspace.open(first, "This file");
    await settled();
    for (let written = 0; written < writes.length; written++) await writes[written]!.answer("kept");
    return { opens: await opening, done };
  };

  test("saves it first where its user wants that", async () => {
    expect(await opened({ chosen: "Save it first" })).toEqual({ opens: true, done: ["saved", "replaced", "quiet"] });
  });

  test("stays out where it cannot be saved", async () => {
    expect(await opened({ chosen: "Save it first", saves: false })).toEqual({ opens: false, done: ["saved"] });
  });

  test("replaces it, or not, as its user says", async () => {
    expect(await opened({ chosen: "Replace it" })).toEqual({ opens: true, done: ["replaced", "quiet"] });
    expect(await opened({ chosen: "Keep it" })).toEqual({ opens: false, done: [] });
  });
});
