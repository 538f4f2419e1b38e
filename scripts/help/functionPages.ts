import { cautions } from "../../src/reference/cautions";
import type { FunctionAnswer, Matrix, Question } from "../../src/taskpane/functions/callFunction";
import type { FunctionGuide, Task } from "../../src/functions/guide";
import type { FunctionMetadata, FunctionsFile, ParameterMetadata } from "../../src/hosts/functionsFile";
import { exampleCall, filledUp } from "../../src/taskpane/functions/exampleCall";
import { sourceOfGuide } from "../../src/taskpane/functions/sourceOfGuide";
import { functionFile } from "../../src/taskpane/help/files";
import { formulaOf } from "../functionFiles";
import { code, escaped, type HelpPage, link, list, paragraph, section, table } from "./html";
import { displayed, inLine } from "./tex";

/** One page for each function of functions.json, in the pane's order. */
export const functionPages = (
  file: FunctionsFile,
  tasks: readonly Task[],
  answer: (question: Question) => FunctionAnswer,
): HelpPage[] => {
  const guides = new Map(tasks.flatMap(({ functions }) => functions.map((guide) => [guide.name, guide] as const)));
  return file.functions.map((metadata) => {
    const guide = guides.get(metadata.name);
    if (guide === undefined) throw new Error(`no task of the pane names the function ${metadata.name}`);
    return functionPage(metadata, guide, answer);
  });
};

function functionPage(
  metadata: FunctionMetadata,
  guide: FunctionGuide,
  answer: (question: Question) => FunctionAnswer,
): HelpPage {
  const given = metadata.parameters.map(({ name, optional }) => (optional === true ? `[${name}]` : name));
  return {
    file: functionFile(metadata.name),
    title: `DUCT.${metadata.name}`,
    lead: metadata.description,
    body: [
      `<p class="call">${code(`=DUCT.${metadata.name}(${given.join(", ")})`).markup}</p>`,
      formulas(metadata.name, guide),
      args(metadata.parameters),
      example(metadata, guide, answer),
      section("Limits", paragraph(guide.limits) + more(guide)),
      cautionsOf(guide),
      errors(metadata, guide, answer),
      section("Source", paragraph(`${sourceOfGuide(guide)}.`)),
    ].join("\n"),
  };
}

/** Where a page of its own says more. */
const more = ({ page }: FunctionGuide): string =>
  page === undefined ? "" : `<p>${link(page.file, page.title).markup}</p>`;

/** What can hurt someone at the task that the function leads to. */
function cautionsOf({ cautions: keys = [] }: FunctionGuide): string {
  const rows = cautions.filter(({ key }) => keys.includes(key));
  return rows.length === 0 ? "" : section("Cautions", list(rows.map(({ label, text }) => `${label}. ${text}`)));
}

function formulas(name: string, { maths }: FunctionGuide): string {
  const formula = formulaOf(name);
  if (formula === undefined) return section("What it does", paragraph(maths));
  return section(
    "Formula",
    [
      paragraph(`${maths}. Inside, everything is computed in SI units; the cells convert once.`),
      ...formula.tex.map(displayed),
      table(
        "What the letters stand for",
        ["Letter", "Quantity"],
        Object.entries(formula.letters).map(([letter, words]) => [inLine(letter), words]),
      ),
    ].join("\n"),
  );
}

function args(parameters: readonly ParameterMetadata[]): string {
  if (parameters.length === 0) return section("Arguments", paragraph("None."));
  return section(
    "Arguments",
    table(
      "A range is allowed wherever one cell is, unless the words say one cell",
      ["Argument", "Needed", "What it is, its unit and its range"],
      parameters.map(({ name, optional, description }) => [code(name), optional === true ? "no" : "yes", description]),
    ),
  );
}

/** The example as one types it, with what the very functions of this build answer. */
function example(
  metadata: FunctionMetadata,
  guide: FunctionGuide,
  answer: (question: Question) => FunctionAnswer,
): string {
  const { formula, tables, args: values } = exampleCall(metadata.name, guide.example);
  const result = answer({ id: metadata.id, args: filledUp(values, metadata.parameters.length) });
  return section(
    "Example",
    [
      paragraph(`${guide.example.asks}:`),
      `<pre>${code(formula).markup}</pre>`,
      tables.map(({ range, rows }) => cellTable(`Cells ${range}`, rows)).join("\n"),
      answerMarkup(result),
    ].join("\n"),
  );
}

function answerMarkup(result: FunctionAnswer): string {
  if ("error" in result) return paragraph(`shows ${result.error}: ${result.message}`);
  const [first] = result.rows;
  if (result.rows.length === 1 && first?.length === 1)
    return `<p>gives <strong>${escaped(shown(first[0]!))}</strong></p>`;
  return cellTable("fills these cells", result.rows.slice(0, ROWS)) + moreRows(result.rows.length);
}

const ROWS = 30; // of an answer; longer ones are tables with pages of their own

const moreRows = (rows: number): string => (rows > ROWS ? paragraph(`and ${rows - ROWS} rows more.`) : "");

function cellTable(caption: string, cells: Matrix): string {
  const [header = [], ...rows] = cells.map((row) => row.map((cell) => shown(cell)));
  const isHeader = header.every((cell) => Number.isNaN(Number(cell)) || cell === "");
  return isHeader && rows.length > 0
    ? table(caption, header, rows)
    : table(
        caption,
        header.map((_, index) => `${index + 1}`),
        [header, ...rows],
      );
}

const shown = (cell: string | number | boolean | null): string =>
  typeof cell === "number" ? String(Number(cell.toPrecision(6))) : String(cell ?? "");

/** What the cell says when an argument is wrong: asked of the functions, one argument at a time. */
function errors(
  metadata: FunctionMetadata,
  guide: FunctionGuide,
  answer: (question: Question) => FunctionAnswer,
): string {
  const { args: values } = exampleCall(metadata.name, guide.example);
  const whole = filledUp(values, metadata.parameters.length);
  const rows = metadata.parameters.flatMap((parameter, at) =>
    wrongValues(values[at]).flatMap((wrong) => {
      const spoilt = whole.map((value, index) => (index === at ? [[wrong]] : value));
      const result = answer({ id: metadata.id, args: spoilt });
      return "error" in result && result.message !== ""
        ? [[`${parameter.name} is ${typeof wrong === "string" ? `“${wrong}”` : wrong}`, result.error, result.message]]
        : [];
    }),
  );
  const general = list([
    "A needed cell that is blank gives a blank result where the rest of its row is blank too.",
    "In a range, only the cell of the wrong row shows its sentence; the others are computed.",
    "#NAME? means that the add-in is not loaded here; #SPILL! that the answer needs cells that are filled.",
  ]);
  const table_ = rows.length === 0 ? "" : table("What the cell says", ["When", "Shows", "Sentence"], rows);
  return section("Errors", table_ + general);
}

/** Values that most arguments refuse, of the kind that slips into a sheet. */
const wrongValues = (right: Matrix | null | undefined): (string | number)[] =>
  typeof right?.[0]?.[0] === "number" || right === null || right === undefined ? [-1, "wide"] : ["nonsense"];
