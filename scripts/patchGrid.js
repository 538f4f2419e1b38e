// Runs after `npm ci`. The grid's library computes all arguments of IF, IFERROR and IFNA before it chooses one: whole systems of
// ducts would be solved for a branch that nobody sees. Here the code that it makes of a formula computes what the choice needs,
// as Excel does. An array or a text as the condition still computes both, as before, so that the answer is the same. And where it
// computes a whole sheet, it goes through every blank cell up to the last row and column, of which the example has four
// hundred thousand: here it passes over those that hold nothing and held no formula. And it indents the code of a formula anew for
// each call around each call, though nobody reads it: here not, which was a third of what taking a formula apart took.
const fs = require("node:fs");
const path = require("node:path");

const folder = path.join(path.dirname(require.resolve("@odoo/o-spreadsheet/package.json")), "dist");

/** Whether an argument of a call is needed: an expression in the code of a formula, in which `first` is its first argument. */
function needed(name, at, first) {
  const one = `(${first}?.length === 1 && ${first}[0].length === 1 ? ${first}[0][0] : ${first})`; // a cell that stands for itself
  const value = `${one}?.value`;
  if (name === "IF" && at === 1) return `Array.isArray(${one}) || ${value} || ${value} === ""`;
  if (name === "IF" && at === 2) return `Array.isArray(${one}) || !${value} || typeof ${value} === "string"`;
  if ((name === "IFERROR" || name === "IFNA") && at === 1) return `Array.isArray(${one}) || ${value}?.[0] === "#"`;
  return "true";
}

/** Whether a position holds nothing and held no formula that filled others. */
const isNothing = (position) =>
  `this.getters.getCell(${position})===void 0&&!this.spreadingRelations.isArrayFormula(${position})`;

/** The library's own text, and what takes its place: a variable that a branch not taken leaves undefined; the branches; blanks; indenting. */
const changes = {
  "o_spreadsheet.cjs": [
    ["code.append(`const ${variableName} = ", "code.append(`var ${variableName} = "],
    [
      "code.append(...args);\n\t\t\t\t\tconst fnName = ast.value.toUpperCase();",
      `const fnName = ast.value.toUpperCase();
					${needed}
					args.forEach((arg, at) => code.append(\`if (\${needed(fnName, at, args[0].returnExpression)}) {\`, arg, "}"));`,
    ],
    [
      "if (this.nextRangesToUpdate.hasPosition(position)) continue;\n",
      `if (${isNothing("position")} || this.nextRangesToUpdate.hasPosition(position)) continue;\n`,
    ],
    [
      'function indentCode(code) {\n\tlet result = "";',
      'function indentCode(code) {\n\treturn code;\n\tlet result = "";',
    ],
  ],
  "o_spreadsheet.min.iife.js": [
    ["t.append(`const ${e} = ", "t.append(`var ${e} = "],
    [
      "i.append(...n);let u=e.value.toUpperCase();",
      `let u=e.value.toUpperCase();${needed}n.forEach((e,t)=>i.append(\`if (\${needed(u,t,n[0].returnExpression)}) {\`,e,"}"));`,
    ],
    [
      "if(this.nextRangesToUpdate.hasPosition(n))continue;",
      `if(${isNothing("n")}||this.nextRangesToUpdate.hasPosition(n))continue;`,
    ],
    ["function Mc(e){let t=``", "function Mc(e){return e;let t=``"],
  ],
};

for (const [name, pairs] of Object.entries(changes)) {
  const file = path.join(folder, name);
  let text = fs.readFileSync(file, "utf8");
  const missing = pairs.filter(([, now]) => !text.includes(now)); // a part of them may have been changed by an earlier version of this
  if (missing.length === 0) continue;
  for (const [before, now] of missing) {
    if (text.split(before).length !== 2)
      throw new Error(`${name} is another version than scripts/patchGrid.js is for: it has no single "${before}"`);
    text = text.replace(before, () => now);
  }
  const said = "/* Changed on 2026-11-30: see scripts/patchGrid.js of Duct Ledger */"; // its licence asks for it
  text = `${said}\n${text.replace(/^\/\* Changed on .*\n/, "")}`;
  fs.rmSync(file); // a copy of the folder may share the file
  fs.writeFileSync(file, text);
}
