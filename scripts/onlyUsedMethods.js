// A loader of webpack for a library that is one object with all its methods, so that nothing in it is seen to be unused: it leaves out
// the methods that neither the declarations name, which say what we call, nor a method that stays. The rest is as it came.
const { readFileSync } = require("node:fs");
const { parse } = require("acorn");

/** The names in the declarations that are called. */
const declaredIn = (types) => [...types.matchAll(/(\w+)\(/g)].map(([, name]) => name);

const ownNames = (code) => [...code.matchAll(/\bthis\.(\w+)/g)].map(([, name]) => name);

const methodName = ({ type, expression }) =>
  type === "ExpressionStatement" &&
  expression.type === "AssignmentExpression" &&
  expression.left.type === "MemberExpression" &&
  expression.left.object.type === "ThisExpression" &&
  expression.right.type === "FunctionExpression"
    ? expression.left.property.name
    : null;

function withUsedMethods(code, called) {
  const statements = parse(code, { ecmaVersion: "latest" }).body.flatMap((one) =>
    one.type === "FunctionDeclaration" ? one.body.body : [],
  );
  const methods = new Map(statements.flatMap((one) => (methodName(one) === null ? [] : [[methodName(one), one]])));
  const textOf = ({ start, end }) => code.slice(start, end);
  const without = (left) =>
    [...left].sort((one, other) => other.start - one.start).reduce((rest, { start, end }) => rest.slice(0, start) + rest.slice(end), code); // prettier-ignore
  const stays = new Set();
  const keep = (name) => {
    if (stays.has(name) || !methods.has(name)) return;
    stays.add(name);
    ownNames(textOf(methods.get(name))).forEach(keep);
  };
  [...called, ...ownNames(without(methods.values()))].forEach(keep);
  return without([...methods].flatMap(([name, method]) => (stays.has(name) ? [] : [method])));
}

module.exports = function onlyUsedMethods(code) {
  const { declarations } = this.getOptions();
  this.addDependency(declarations);
  return withUsedMethods(code, declaredIn(readFileSync(declarations, "utf8")));
};
module.exports.withUsedMethods = withUsedMethods;
