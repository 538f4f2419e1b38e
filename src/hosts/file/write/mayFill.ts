import { type AstExpression as Node, parse, tokenize } from "@borgar/fx";
import { ourName } from "../../../sheets/ourCalls";

/** Functions of ours that answer with a table whatever they are given. */
const TABLES = new Set([
  ...[
    "BUDGET",
    "SOLVE",
    "SCENARIOS",
    "GAINS",
    "LEAKGAINS",
    "OPERATINGPOINT",
    "FANLAW",
    "FANCURVE",
    "TRAVERSEPOINTS",
    "CLAIM",
    "DIFFERENCE",
    "UNCERTAINTY",
    "BUDGETUNCERTAINTY",
    "GAINUNCERTAINTY",
    "CALIBRATE",
    "CALIBRATEDRUNS",
    "CALIBRATEDCURVE",
    "CALIBRATEDUNCERTAINTY",
    "TOGETHER",
    "SIZES",
  ],
  ...["REFERENCE", "CAUTIONS", "ABOUT"],
]);

/** Of a function that reads a table into one answer: how many of its arguments are read so. */
const READS_TABLES: Readonly<Record<string, number>> = { TRAVERSE: 1, FANPRESSURE: 1 };

/** Functions of the spreadsheet that fill cells, and those that make one value of many. */
const FILL = new Set("FILTER SORT SORTBY UNIQUE SEQUENCE RANDARRAY VSTACK HSTACK TOCOL TOROW TAKE DROP".split(" "));
const ONE_VALUE = new Set(
  [
    "SUM SUMIF SUMIFS SUMPRODUCT COUNT COUNTA COUNTIF COUNTIFS AVERAGE MAX MIN MATCH ROWS COLUMNS",
    "AND OR TEXTJOIN CONCAT",
  ]
    .join(" ")
    .split(" "),
);

/**
 * Whether a formula may fill more cells than its own, today or once its inputs are there. It must be marked so in the file, or
 * Excel would show its first value alone for ever; where it need not be, LibreOffice keeps the value only without the mark.
 */
export function mayFill(formula: string): boolean {
  if (!/duct\.|FILTER|SORT|UNIQUE|SEQUENCE|RANDARRAY|STACK|TOCOL|TOROW|TAKE|DROP/i.test(formula)) return false;
  try {
    return fills(parse(tokenize(formula, { mergeRefs: true })));
  } catch {
    return false; // no formula that a program could compute
  }
}

function fills(node: Node): boolean {
  if (node.type !== "CallExpression") return childrenOf(node).some(fills);
  const name = node.callee.name.toUpperCase();
  const args = childrenOf(node);
  const ours = ourName(name);
  if (ours === null ? FILL.has(name) : TABLES.has(ours)) return true;
  if (ONE_VALUE.has(name)) return false;
  if (name === "INDEX") return !isOneCell(args.slice(1)) && args.slice(0, 1).some(fills);
  const spreads = args.slice(ours === null ? 0 : READS_TABLES[ours]);
  return spreads.some((argument) => fills(argument) || (ours !== null && isSeveral(argument)));
}

/** A row and a column that are not 0, which means all of them. */
const isOneCell = (place: readonly Node[]): boolean =>
  place.length === 2 && place.every((node) => !(node.type === "Literal" && node.value === 0));

function isSeveral(node: Node): boolean {
  if (node.type === "ReferenceIdentifier") return /[:[]/.test(node.value);
  return node.type !== "CallExpression" && childrenOf(node).some(isSeveral);
}

/** Arguments of a call or an operator; those left out are null, whatever the type says. */
const childrenOf = (node: Node): Node[] =>
  "arguments" in node ? (node.arguments as (Node | null)[]).filter((argument) => argument !== null) : [];
