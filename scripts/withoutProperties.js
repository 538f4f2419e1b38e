// A loader of webpack for a table: it leaves out the properties of its rows that the options name, and what is spread into them by such a name.
// All else stays where it is, and each line its place.
const ts = require("typescript");

function withoutProperties(code, names) {
  const file = ts.createSourceFile("table.ts", code, ts.ScriptTarget.Latest);
  const left = [];
  const visit = (node) => {
    if (ts.isObjectLiteralElement(node) && names.includes((node.name ?? node.expression).text)) left.push(node);
    else ts.forEachChild(node, visit);
  };
  visit(file);
  return left.reduceRight((rest, node) => {
    const end = node.end + /^\s*,?/.exec(rest.slice(node.end))[0].length;
    return rest.slice(0, node.pos) + rest.slice(node.pos, end).replace(/[^\n]/g, " ") + rest.slice(end);
  }, code);
}

module.exports = function withoutPropertiesOfRows(code) {
  return withoutProperties(code, this.getOptions().names);
};
module.exports.withoutProperties = withoutProperties;
