// Runs after `npm ci`. The grid's library computes all arguments of IF, IFERROR and IFNA before it chooses one: whole systems of
// ducts would be solved for a branch that nobody sees. Here the code that it makes of a formula computes what the choice needs,
// as Excel does. An array or a text as the condition still computes both, as before, so that the answer is the same.
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

/** The library's own text, and what takes its place: a variable that a branch not taken leaves undefined; and the branches. */
const changes = {
  "o_spreadsheet.cjs": [
    ["code.append(`const ${variableName} = ", "code.append(`var ${variableName} = "],
    [
      "code.append(...args);\n\t\t\t\t\tconst fnName = ast.value.toUpperCase();",
      `const fnName = ast.value.toUpperCase();
					${needed}
					args.forEach((arg, at) => code.append(\`if (\${needed(fnName, at, args[0].returnExpression)}) {\`, arg, "}"));`,
    ],
  ],
  "o_spreadsheet.min.iife.js": [
    ["t.append(`const ${e} = ", "t.append(`var ${e} = "],
    [
      "i.append(...n);let u=e.value.toUpperCase();",
      `let u=e.value.toUpperCase();${needed}n.forEach((e,t)=>i.append(\`if (\${needed(u,t,n[0].returnExpression)}) {\`,e,"}"));`,
    ],
  ],
};

for (const [name, pairs] of Object.entries(changes)) {
  const file = path.join(folder, name);
  let text = fs.readFileSync(file, "utf8");
  if (pairs.every(([, now]) => text.includes(now))) continue;
  for (const [before, now] of pairs) {
    if (text.split(before).length !== 2)
      throw new Error(`${name} is another version than scripts/patchGrid.js is for: it has no single "${before}"`);
    text = text.replace(before, () => now);
  }
  text = `/* Changed on 2026-11-28: see scripts/patchGrid.js of Duct Ledger */\n${text}`; // its licence asks for it
  fs.rmSync(file); // a copy of the folder may share the file
  fs.writeFileSync(file, text);
}
