const path = require("node:path");
const { require: requireTypeScript } = require("tsx/cjs/api");

const { functionFiles } = requireTypeScript("./scripts/functionFiles.ts", __filename);

// The rooms of src/ and the only directions in which one may import another. A room always may import itself.
const rooms = {
  reference: [],
  core: ["reference"],
  functions: ["core", "reference"],
  sheets: ["reference"],
  share: ["sheets", "functions", "core", "reference"],
  hosts: ["sheets", "share", "reference"],
  taskpane: ["hosts", "sheets", "share", "functions", "reference", "core"],
};

const PANE_PARTS = "badge button checkbox input label progress provider radio search select tabs text theme".split(" ");

// Packages a room may import. Physics needs no page, no Office and no spreadsheet: what is not named here is refused.
const packages = {
  core: ["psychrolib", "fastest-levenshtein"],
  share: ["@borgar/fx"],
  hosts: ["@odoo/o-spreadsheet", "hucre", "fflate", "@borgar/fx", "idb-keyval", "saxes", "fastest-levenshtein"], // of the first only types; the library itself is a file of its own on the page
  taskpane: [
    "react",
    "react-dom",
    "@griffel/react",
    "chart.js",
    ...PANE_PARTS.map((part) => `@fluentui/react-${part}`),
  ],
};

const functionEntries = functionFiles.map((file) => path.relative(__dirname, file).split(path.sep).join("/"));
const entries = `^(${functionEntries.join("|").replaceAll(".", "[.]")}|src/(functions/(later|tellNotes|tables/tellWords)[.]ts|taskpane/main[.]tsx|hosts/[^/]+/main[.]ts))$`;

const roomRules = Object.entries(rooms).map(([room, mayImport]) => ({
  name: `${room}-imports-only-${mayImport.join("-") || "itself"}`,
  comment: `src/${room} may import ${["itself", ...mayImport].join(", ")}`,
  severity: "error",
  from: { path: `^src/${room}/` },
  to: { path: "^src/", pathNot: `^src/(${[room, ...mayImport].join("|")})/` },
}));

const packageRules = Object.keys(rooms).map((room) => ({
  name: `${room}-packages`,
  comment: `src/${room} may import these packages: ${packages[room]?.join(", ") ?? "none"}`,
  severity: "error",
  from: { path: `^src/${room}/` },
  to: {
    dependencyTypesNot: ["local"],
    pathNot: ["^src/", ...(packages[room] ?? []).map((name) => `node_modules/(@types/)?${name}/`)],
  },
}));

module.exports = {
  forbidden: [
    ...roomRules,
    ...packageRules,
    {
      name: "share-reads-signatures",
      comment: "of the functions a copy needs what they take; how they compute is written again in plain formulas",
      severity: "error",
      from: { path: "^src/share/" },
      to: {
        path: "^src/functions/",
        pathNot: [...functionEntries.map((file) => `^${file}$`), "^src/functions/signature[.]ts$"],
      },
    },
    {
      name: "pane-reads-guides",
      comment: "the pane shows what is said of the functions; the host computes them",
      severity: "error",
      from: { path: "^src/taskpane/" },
      to: { path: "^src/functions/", pathNot: "^src/functions/(tasks|guide)[.]ts$" },
    },
    {
      name: "src-stands-alone",
      comment: "what ships must not lean on tests or tools",
      severity: "error",
      from: { path: "^src/" },
      to: { path: "^(test|scripts)/" },
    },
    { name: "no-circle", severity: "error", from: {}, to: { circular: true } },
    {
      name: "no-dead-file",
      comment: "a file of src/ that no entry of the build reaches ships nothing",
      severity: "error",
      from: { path: entries },
      to: { path: "^src/", pathNot: [entries, "[.](d[.]ts|json)$"], reachable: false },
    },
    {
      name: "no-orphan",
      comment: "a file of tests or scripts that nothing imports is dead",
      severity: "error",
      from: {
        orphan: true,
        path: "^(test|scripts)/",
        pathNot: ["[.]d[.]ts$", "[.]test[.]tsx?$", "^scripts/[^/]+[.][jt]s$"],
      },
      to: {},
    },
    {
      name: "unresolvable",
      comment: "an import that leads nowhere",
      severity: "error",
      from: {},
      to: { couldNotResolve: true, pathNot: "^@stryker-mutator/" }, // which `npm run mutate` fetches
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "^(dist|coverage)/" },
    tsPreCompilationDeps: true, // an import of types crosses a room's wall, too
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      extensions: [".ts", ".tsx", ".js", ".json"],
      exportsFields: ["exports"],
      conditionNames: ["import", "require", "node", "default"], // some packages come as modules only
    },
  },
};
