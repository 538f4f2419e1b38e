import { readFileSync } from "node:fs";
import ts from "typescript";

/** What the published typings say of one member of a class or of a plain object of Excel's API. */
export interface Member {
  readonly isMethod: boolean;
  readonly isReadonly: boolean;
  readonly level: number; // 9 for ExcelApi 1.9; Infinity for what is not in a numbered set
  readonly types: readonly string[]; // of a property, or what its overloads answer
  readonly parameters: readonly (readonly string[])[]; // types, by overload
}

export interface Kind {
  readonly isClass: boolean; // of objects that stand for something in Excel; the rest are plain data
  readonly members: ReadonlyMap<string, Member>;
}

const kinds = new Map<string, Kind | null>();

/** A class or an interface of the typings' namespace Excel; null if they have none of that name. */
export function kindNamed(name: string): Kind | null {
  if (!kinds.has(name)) kinds.set(name, readKind(name));
  return kinds.get(name)!;
}

let text = "";

/** The typings are large, so only the declaration that is asked for is parsed. */
function readKind(name: string): Kind | null {
  if (text === "") {
    const all = readFileSync(require.resolve("@types/office-js/index.d.ts"), "utf8");
    const from = all.indexOf("\ndeclare namespace Excel {");
    text = all.slice(from, all.indexOf("\ndeclare namespace Word {", from));
  }
  const from = ["class", "interface"]
    .map((word) => text.search(new RegExp(`\\n    ${word} ${name}\\b`)))
    .find((at) => at > -1);
  if (from === undefined) return null;
  const declared = text.slice(from, text.indexOf("\n    }", from) + "\n    }".length);
  const [statement] = ts.createSourceFile("excel.d.ts", declared, ts.ScriptTarget.Latest, true).statements;
  if (!statement || !(ts.isClassDeclaration(statement) || ts.isInterfaceDeclaration(statement))) return null;
  return { isClass: ts.isClassDeclaration(statement), members: membersOf(statement) };
}

function membersOf(declared: ts.ClassDeclaration | ts.InterfaceDeclaration): Map<string, Member> {
  const members = new Map<string, Member>();
  for (const member of declared.members) {
    if (!member.name || !ts.isIdentifier(member.name)) continue;
    const isMethod = ts.isMethodDeclaration(member) || ts.isMethodSignature(member);
    if (!isMethod && !ts.isPropertyDeclaration(member) && !ts.isPropertySignature(member)) continue;
    const before = members.get(member.name.text);
    const type = member.type?.getText() ?? "any";
    members.set(member.name.text, {
      isMethod,
      isReadonly: ts.getModifiers(member)?.some(isReadonlyWord) ?? false,
      level: Math.min(before?.level ?? Infinity, levelOf(member.getFullText())),
      types: [...(before?.types ?? []), type],
      parameters: [
        ...(before?.parameters ?? []),
        isMethod ? member.parameters.map((each) => each.type?.getText() ?? "any") : [],
      ],
    });
  }
  return members;
}

const isReadonlyWord = ({ kind }: { kind: ts.SyntaxKind }): boolean => kind === ts.SyntaxKind.ReadonlyKeyword;

/** "[Api set: ExcelApi 1.9]". Reading and writing may differ in their sets: then the later one counts. */
function levelOf(text: string): number {
  const set = /\[Api set: ([^\]]*)\]/.exec(text)?.[1];
  if (set === undefined) return 0; // load, context and the like, which every version has
  if (/Desktop|Online|Preview|BETA/i.test(set)) return Infinity;
  return Math.max(...[...set.matchAll(/\b1[.](\d+)/g)].map((match) => Number(match[1])), -1) || 0;
}
