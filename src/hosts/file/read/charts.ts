import type { Chart, Series } from "../../../sheets/workbook";
import { readReference } from "../../../sheets/rangeRef";
import { rectangleText } from "../../../sheets/rectangle";
import { fromFileText } from "../xlsxText";
import type { Package } from "./package";
import { relationId } from "./package";
import { child, childrenOf, down, everywhere, numberOf, type XmlNode } from "./xml";

const INK = "#20343d"; // of a line whose colour the program chose

/** Charts of points joined by lines whose cells stand on the sheet itself; others cannot be described. */
export function chartsOf(file: Package, sheet: string, sheetName: string): Chart[] {
  const relations = file.relations(sheet);
  return relations
    .filter(({ kind }) => kind === "drawing")
    .flatMap(({ part }) => {
      const root = file.xml(part);
      const charts = file.relations(part);
      return root.children.flatMap((anchor) => {
        const id = everywhere(anchor, "chart").map(relationId)[0];
        const chart = charts.find((one) => one.kind === "chart" && one.id === id)?.part;
        const over = coveredBy(anchor);
        const space = chart === undefined ? undefined : file.xml(chart);
        return over === null || space === undefined ? [] : chartIn(space, over, sheetName);
      });
    });
}

function coveredBy(anchor: XmlNode): string | null {
  const at = (end: string, name: string): number | undefined => numberOf(down(anchor, end, name)?.text);
  const [column, row, endColumn, endRow] = [at("from", "col"), at("from", "row"), at("to", "col"), at("to", "row")];
  if (column === undefined || row === undefined || endColumn === undefined || endRow === undefined) return null;
  // the format names the cell in which the chart ends; ours end at its upper left corner
  const within = (name: string): boolean => (at("to", name) ?? 0) > 0;
  const [right, bottom] = [endColumn + (within("colOff") ? 1 : 0), endRow + (within("rowOff") ? 1 : 0)];
  if (right < column + 1 || bottom < row + 1) return null;
  return rectangleText({ top: row + 1, left: column + 1, bottom, right });
}

function chartIn(space: XmlNode, over: string, sheetName: string): Chart[] {
  const plot = down(space, "chart", "plotArea");
  const scatter = child(plot, "scatterChart");
  const lines = childrenOf(scatter, "ser");
  const x = lines.map((line) => rangeOf(child(line, "xVal"), sheetName))[0];
  if (scatter === undefined || x == null) return [];
  const series = lines.flatMap((line, index): Series[] => {
    const range = rangeOf(child(line, "yVal"), sheetName);
    return range === null ? [] : [{ name: nameOf(line) ?? `Line ${index + 1}`, range, ink: inkOf(line) }];
  });
  const [across, up] = childrenOf(plot, "valAx").map(titleOf);
  const title = titleOf(child(space, "chart"));
  return [
    {
      kind: "line through points",
      over,
      title: title ?? "",
      x: { title: across ?? "", range: x },
      y: { title: up ?? "", series },
    },
  ];
}

function rangeOf(node: XmlNode | undefined, sheetName: string): string | null {
  const formula = node === undefined ? undefined : everywhere(node, "f")[0]?.text;
  const reference = formula === undefined ? null : readReference(formula);
  return reference === null || reference.sheet.toLowerCase() !== sheetName.toLowerCase()
    ? null
    : rectangleText(reference);
}

/** A series' name is written out, or kept with the cell that it comes from. */
function nameOf(line: XmlNode): string | undefined {
  const name = child(line, "tx");
  const words = name === undefined ? undefined : everywhere(name, "v")[0]?.text;
  return words === undefined ? undefined : fromFileText(words);
}

function inkOf(line: XmlNode): string {
  const stroke = down(line, "spPr", "ln");
  const colour = stroke === undefined ? undefined : everywhere(stroke, "srgbClr")[0]?.attributes.val;
  return /^[0-9a-f]{6}$/i.test(colour ?? "") ? `#${colour!.toLowerCase()}` : INK;
}

function titleOf(node: XmlNode | undefined): string | undefined {
  const title = child(node, "title");
  const words = title === undefined ? [] : everywhere(title, "t").map(({ text }) => text);
  return words.length === 0 ? undefined : fromFileText(words.join(""));
}
