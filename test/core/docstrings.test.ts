import fs from "node:fs";
import path from "node:path";
import ts from "typescript";
import { sources } from "../../src/reference/sources";

const CORE = path.join(__dirname, "../../src/core");

/** What is defined by ourselves or by geometry needs no book. */
const NO_BOOK = ["house", "geometry", "points"];

/** What needs no `@returns`: nothing, and a verdict on a claim, whose type says it. */
const SAID_BY_TYPE = ["void", "Judged", "Verdict"];

interface Described {
  readonly name: string;
  readonly doc: string;
  readonly parameters: readonly string[];
  readonly gives: boolean; // something that its type does not say already
}

/** Every function that a file of the core gives to others, with its docstring. */
function functionsOf(file: string): Described[] {
  const text = fs.readFileSync(path.join(CORE, file), "utf8");
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  return tree.statements.flatMap((statement) => {
    const exported = ts.canHaveModifiers(statement)
      ? ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)
      : false;
    const made = ts.isVariableStatement(statement) ? statement.declarationList.declarations[0] : undefined;
    const code = ts.isFunctionDeclaration(statement) ? statement : made?.initializer;
    if (exported !== true || code === undefined || !(ts.isFunctionDeclaration(code) || ts.isArrowFunction(code)))
      return [];
    const name = (made ?? (statement as ts.FunctionDeclaration)).name!.getText();
    const docs = ts.getJSDocCommentsAndTags(statement).filter(ts.isJSDoc);
    return [
      {
        name: `${file}: ${name}`,
        doc: docs.map((one) => one.getText()).join("\n"),
        parameters: code.parameters.map((one) => one.name.getText()),
        gives: !SAID_BY_TYPE.includes(code.type?.getText() ?? ""),
      },
    ];
  });
}

const named = (doc: string): string[] => [...doc.matchAll(/@param (\w+)/g)].map((match) => match[1]!);

const described = fs
  .readdirSync(CORE, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !file.endsWith(".d.ts"))
  .flatMap(functionsOf);
const computations = described.filter(({ doc }) => doc.includes("@returns"));

test("there are functions to look at", () => expect(described.length).toBeGreaterThan(80));

test("all say what they return", () => {
  const silent = described.filter(({ gives, doc }) => gives && !doc.includes("@returns"));
  expect(silent.map(({ name }) => name)).toEqual([]);
});

describe.each(described)("$name", ({ doc, parameters }) => {
  test("says what it is", () => expect(doc).toMatch(/^\/\*\*\s+(\* )?\S/));

  test("describes arguments that it has, in their order", () => {
    const given = parameters.filter((parameter) => /^\w+$/.test(parameter)); // one that is taken apart has no name
    if (given.length === parameters.length) expect(given.filter((one) => named(doc).includes(one))).toEqual(named(doc));
  });
});

describe.each(computations)("$name", ({ doc, parameters }) => {
  test("describes all of its arguments or none", () => {
    expect([0, parameters.length]).toContain(named(doc).length);
  });

  test("names a source that exists", () => {
    const cited = [...doc.matchAll(/@source (\w+)/g)].map((match) => match[1]!);
    expect(cited.length).toBeGreaterThan(0);
    for (const source of cited) expect([...Object.keys(sources), ...NO_BOOK]).toContain(source);
  });
});
