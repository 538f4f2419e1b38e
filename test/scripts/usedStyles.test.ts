import { usedStyles } from "../../scripts/usedStyles";

const words = new Set(["btn", "small", "title", "turn", "disabled"]);

test.each([
  ["a rule whose class the page has stays", ".btn{color:red}", ".btn{color:red}"],
  ["another goes", ".card{color:red}", ""],
  ["of a list the selectors that are used stay", ".btn,.card,.small>.card,a{top:0}", ".btn,a{top:0}"],
  ["so do elements and what all have", "*,::after,a:hover{top:0}:root{--x:1}", "*,::after,a:hover{top:0}:root{--x:1}"],
  [
    "a class that may be missing asks for nothing",
    ".btn:not(.card,.deck):hover{top:0}",
    ".btn:not(.card,.deck):hover{top:0}",
  ],
  ["an attribute that the page has no word for goes", "[data-theme=dark],abbr[title]{top:0}", "abbr[title]{top:0}"],
  [
    "a condition stays around what it holds",
    "@media (width>1px){.btn{top:0}.card{top:1px}}",
    "@media (width>1px){.btn{top:0}}",
  ],
  ["and goes when it holds nothing", "@media print{.card{top:1px}}.btn{top:0}", ".btn{top:0}"],
  [
    "an animation stays where it has a word",
    "@keyframes turn{to{top:0}}@keyframes spin{to{top:0}}",
    "@keyframes turn{to{top:0}}",
  ],
  ["a font stays", "@font-face{font-family:Some}", "@font-face{font-family:Some}"],
  ["brackets inside a text are no rule", '.btn{content:"};{.card"}.card{top:0}', '.btn{content:"};{.card"}'],
  [
    "a charset is no rule, and another note than a licence's goes",
    '@charset "UTF-8";/* note */.btn{top:0}',
    ".btn{top:0}",
  ],
  ["a licence's notice stays", "/*! MIT {x} */.card{top:0}.btn{top:0}", "/*! MIT {x} */\n.btn{top:0}"],
])("%s", (_, css, used) => {
  expect(usedStyles(css, words)).toBe(used);
});
