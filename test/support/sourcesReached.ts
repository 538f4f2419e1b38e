/** Which sources the core functions name that a cell function calls, found in the code itself: who calls whom, and each docstring. */
import path from "node:path";
import ts from "typescript";

const ROOT = path.resolve(__dirname, "../..");

/** Ids that stand above every function and constant of the core that is reached, by the name of the cell function. */
export function sourcesReached(): ReadonlyMap<string, ReadonlySet<string>> {
  const { config } = ts.readConfigFile(path.join(ROOT, "tsconfig.json"), (file) => ts.sys.readFile(file)) as {
    config: object;
  };
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, ROOT);
  const files = ts.sys.readDirectory(path.join(ROOT, "src/functions"), [".ts"]);
  // only our own names are followed, so the libraries' declarations, most of what would be read, are left out
  const program = ts.createProgram(files, { ...options, noEmit: true, noLib: true, types: [] });
  const checker = program.getTypeChecker();
  const known: Known = new Map();
  const found = new Map<string, ReadonlySet<string>>();
  for (const file of program.getSourceFiles().filter(({ fileName }) => fileName.includes("/src/functions/")))
    for (const statement of file.statements) {
      const name = ts.isFunctionDeclaration(statement) ? tagOf(statement, "customfunction")[0] : undefined;
      if (name !== undefined) found.set(name.split(/\s/)[0]!, walk(statement, checker, known));
    }
  return found;
}

/** What a statement says and names, by the statement: most are reached by many functions. */
type Known = Map<ts.Node, { readonly ids: readonly string[]; readonly named: ReadonlySet<ts.Node> }>;

function walk(start: ts.Node, checker: ts.TypeChecker, known: Known): Set<string> {
  const ids = new Set<string>();
  const seen = new Set<ts.Node>([start]);
  for (const node of seen) {
    const read = known.get(node) ?? readOf(node, checker);
    known.set(node, read);
    read.ids.forEach((id) => ids.add(id));
    read.named.forEach((declared) => seen.add(declared)); // and the loop goes on to it
  }
  return ids;
}

function readOf(node: ts.Node, checker: ts.TypeChecker) {
  const isOfCore = node.getSourceFile().fileName.includes("/src/core/");
  const ids = isOfCore ? [...wordsBefore(node).matchAll(SOURCE)].map(([, tagged, said]) => tagged ?? said!) : [];
  const named = new Set<ts.Node>();
  const visit = (child: ts.Node): void => {
    const declared = ts.isIdentifier(child) ? declarationOf(child, checker) : null;
    if (declared !== null) named.add(declared);
    ts.forEachChild(child, visit);
  };
  ts.forEachChild(node, visit);
  return { ids, named };
}

/** The statement of our own that a word in the code stands for; types are none. */
function declarationOf(word: ts.Identifier, checker: ts.TypeChecker): ts.Node | null {
  const symbol = checker.getSymbolAtLocation(word);
  const target =
    symbol !== undefined && symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
  const declared = target?.valueDeclaration;
  if (declared === undefined || !/\/src\/(?:core|functions)\//.test(declared.getSourceFile().fileName)) return null;
  if (ts.isFunctionDeclaration(declared)) return declared;
  const isTop = ts.isVariableDeclaration(declared) && ts.isSourceFile(declared.parent.parent.parent);
  return isTop ? declared.parent.parent : null;
}

/** A docstring's tag, or a remark on a constant: "Source: haaland1983." */
const SOURCE = /@source\s+(\w+)|Source: (\w+)/g;

const wordsBefore = (node: ts.Node): string =>
  node.getSourceFile().text.slice(node.getFullStart(), node.getStart(node.getSourceFile()));

const tagOf = (node: ts.Node, tag: string): string[] =>
  ts
    .getJSDocTags(node)
    .flatMap(({ tagName, comment }) => (tagName.text === tag ? [ts.getTextOfJSDocComment(comment) ?? ""] : []));
