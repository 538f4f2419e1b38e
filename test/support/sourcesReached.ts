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
  const found = new Map<string, ReadonlySet<string>>();
  for (const file of program.getSourceFiles().filter(({ fileName }) => fileName.includes("/src/functions/")))
    for (const statement of file.statements) {
      const name = ts.isFunctionDeclaration(statement) ? tagOf(statement, "customfunction")[0] : undefined;
      if (name !== undefined) found.set(name.split(/\s/)[0]!, walk(statement, checker));
    }
  return found;
}

function walk(start: ts.Node, checker: ts.TypeChecker): Set<string> {
  const ids = new Set<string>();
  const seen = new Set<ts.Node>([start]);
  const open = [start];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    if (node.getSourceFile().fileName.includes("/src/core/"))
      for (const [, tagged, said] of wordsBefore(node).matchAll(SOURCE)) ids.add(tagged ?? said!);
    const visit = (child: ts.Node): void => {
      if (ts.isIdentifier(child)) {
        const declared = declarationOf(child, checker);
        if (declared !== null && !seen.has(declared)) {
          seen.add(declared);
          open.push(declared);
        }
      }
      ts.forEachChild(child, visit);
    };
    ts.forEachChild(node, visit);
  }
  return ids;
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
