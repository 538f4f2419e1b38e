import { syntaxFault } from "../../scripts/syntax";

test.each([
  ["optional chaining and a default", "const a = b?.c ?? 1;"],
  ["a lookahead", "/a(?=b)(?!c)/.test(a);"],
  ["a group with a name", "/(?<year>\\d+)/.test(a);"],
  ["an escaped bracket before a comment of markup", "/\\(?<!--/.test(a);"],
  ["a method that Safari 15.4 has", "a.at(-1).replaceAll(b, c);"],
  ["a function of that name of one's own", "toSorted(a);"],
])("an older Safari runs %s", (_, script) => {
  expect(syntaxFault(script)).toBeNull();
});

test.each([
  ["class A { static { this.b = 1; } }", "holds what came after ES2020 (Unexpected token (1:17))"],
  ["class A { b = 1; }", "holds what came after ES2020 (Unexpected token (1:12))"],
  ["class A { #b() {} }", "holds what came after ES2020 (Unexpected character '#' (1:10))"],
  ["a ??= 1;", "holds what came after ES2020 (Unexpected token (1:4))"],
  ["/a/v.test(b);", "holds what came after ES2020 (Invalid regular expression flag (1:1))"],
  ["/(?<!\\w)a/.test(b);", "holds a lookbehind: (?<!\\w)a"],
  ["/(?<=\\w)a/.test(b);", "holds a lookbehind: (?<=\\w)a"],
  ['new RegExp("(?<!a)" + b);', "holds a lookbehind: (?<!a)"],
  ["new RegExp(String.raw`(?<!${a})`);", "holds a lookbehind: (?<!"],
  ["a.toSorted();", "calls .toSorted(), which Safari 15.4 does not have"],
  ["Object.groupBy(a, b);", "calls .groupBy(), which Safari 15.4 does not have"],
])("it does not run %s", (script, fault) => {
  expect(syntaxFault(script)).toBe(fault);
});
