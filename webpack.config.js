// One build for Excel and for the local sheet: dist/ holds the cell functions, the pane, the local page and the manifest.
const { createHash } = require("node:crypto");
const path = require("node:path");
const swc = require("@swc/core");
const CopyPlugin = require("copy-webpack-plugin");
const CustomFunctionsMetadataPlugin = require("custom-functions-metadata-plugin");
const HtmlPlugin = require("html-webpack-plugin");
const TerserPlugin = require("terser-webpack-plugin");
const { require: requireTypeScript } = require("tsx/cjs/api");
const { DefinePlugin } = require("webpack");

const { finishMetadata } = requireTypeScript("./scripts/finishMetadata.ts", __filename);
const { functionFiles, scriptOf } = requireTypeScript("./scripts/functionFiles.ts", __filename);
const { BUILT_FOR } = requireTypeScript("./scripts/site/builtFor.ts", __filename);
const { syntaxFault } = requireTypeScript("./scripts/syntax.ts", __filename);
const { STYLES, usedStyles, wordsOfPage } = requireTypeScript("./scripts/usedStyles.ts", __filename);
const { WORDS, wordsOfRows } = requireTypeScript("./scripts/wordsOfRows.ts", __filename);
const vendorFiles = require("./src/hosts/local/vendorFiles.json");

/** The generator cannot express all that functions.json needs; what is missing is added when it has written. */
class FinishMetadataPlugin {
  apply(compiler) {
    const { Compilation, sources } = compiler.webpack;
    compiler.hooks.compilation.tap("FinishMetadata", (compilation) => {
      compilation.hooks.processAssets.tap(
        { name: "FinishMetadata", stage: Compilation.PROCESS_ASSETS_STAGE_REPORT },
        () => {
          const asset = compilation.getAsset("functions.json");
          if (asset === undefined) throw new Error("the generator wrote no functions.json: see its errors above");
          const finished = finishMetadata(JSON.parse(asset.source.source().toString()), BUILT_FOR);
          compilation.updateAsset("functions.json", new sources.RawSource(`${JSON.stringify(finished, null, 2)}\n`));
        },
      );
    });
  }
}

/** Stands in the files of the functions until what they hold is known, and is as long as what takes its place. */
const PARTS = "ductLedgerParts0000000000000000";

/**
 * The files of the functions find each other by a name that no other build uses: a later file of another version, from
 * whatever cache on the way, is one that is not there, and never computes with the first.
 */
class OneVersionPlugin {
  apply(compiler) {
    const { Compilation, sources } = compiler.webpack;
    const afterMinified = Compilation.PROCESS_ASSETS_STAGE_OPTIMIZE_SIZE + 1;
    compiler.hooks.compilation.tap("OneVersion", (compilation) => {
      compilation.hooks.processAssets.tap({ name: "OneVersion", stage: afterMinified }, (assets) => {
        const files = Object.keys(assets).filter((file) => file.endsWith(".js"));
        const codes = files.map((file) => assets[file].source().toString());
        const hash = createHash("sha256").update(codes.join("")).digest("hex").slice(0, 16);
        const name = PARTS.replace(/0+$/, hash);
        files.forEach((file, at) => {
          const named = new sources.ReplaceSource(assets[file]);
          for (const { index } of codes[at].matchAll(new RegExp(PARTS, "g")))
            named.replace(index, index + PARTS.length - 1, name);
          compilation.updateAsset(file, named);
        });
      });
    });
  }
}

/**
 * Makes a file small, then, where it holds what is newer than ES2020, writes it in words of ES2020: scripts/syntax.ts says why.
 * In this order, since a class that was rewritten is no longer seen to be unused.
 */
async function minify(input, sourceMap) {
  const small = await TerserPlugin.swcMinify(input, sourceMap, { compress: { passes: 3 }, mangle: true }, false);
  if (syntaxFault(small.code) === null) return small;
  const [filename] = Object.keys(input);
  const { code, map } = await swc.transform(small.code, {
    filename,
    configFile: false,
    swcrc: false,
    isModule: false,
    minify: true,
    sourceMaps: true,
    inputSourceMap: JSON.stringify(small.map),
    jsc: { target: "es2020", minify: { format: { comments: "some" } } },
  });
  const fault = syntaxFault(code);
  if (fault !== null) throw new Error(`An older Safari would not run this: ${filename} ${fault}`);
  return { code, map: { ...JSON.parse(map), sources: [filename], sourcesContent: undefined } };
}

const shared = {
  mode: "production",
  devtool: "source-map",
  context: __dirname,
  resolve: { extensions: [".ts", ".tsx", ".js"] },
  performance: { hints: false },
  optimization: {
    minimizer: [
      new TerserPlugin({
        exclude: /^vendor\//, // the grid's own files stay byte for byte as they were installed, so that they may be exchanged
        extractComments: false, // notices of a licence stay where they are; the texts stand in licences.txt
        minify,
        parallel: false, // swc has threads of its own
      }),
    ],
  },
  module: {
    rules: [
      { include: ["src/core", "src/reference"].map((room) => path.resolve(room)), sideEffects: false }, // what a page does not use stays away
      {
        test: /[\\/]psychrolib\.js$/,
        loader: path.resolve("scripts/onlyUsedMethods.js"),
        options: { declarations: path.resolve("src/core/air/psychrolib.d.ts") },
      },
      { test: /\.tsx?$/, loader: path.resolve("scripts/withoutTypes.js") },
    ],
  },
  output: { path: path.resolve("dist"), filename: "[name].js" },
};

const LATER = path.resolve("src/functions/later.ts");
/** What brings tables and texts comes first in its file: what is alike packs best close together. */
const FIRST = ["reference.ts", "cautions.ts", "about.ts"];

const [TELL_NOTES, TELL_WORDS] = ["tellNotes.ts", "tables/tellWords.ts"].map((file) =>
  path.resolve("src/functions", file),
);
/** Tables that functions.js computes by, without what only a table shows of them. */
const WITHOUT_WORDS = [
  ...["fittings", "hoods"].map((folder) => path.resolve("src/reference", folder)),
  ...["gateConditions", "leakageClasses", "materials", "tradeSizes", "transport"].map(referenceFile),
];
/** Columns of tables, without what only a sheet shows of them. */
const WITHOUT_LOOKS = ["readingColumns", "runColumns", "throttleColumns"].map(referenceFile);

/** Notes that only functions of later files say; nothing else asks for them. */
const withoutLaterNotes = without(["laterNoteWords"], [referenceFile("noteWords")]);

const filesIn = (script) => functionFiles.filter((file) => scriptOf(file) === script);
const laterEntry = (script, before) => ({
  import: oneEntry([before, ...filesIn(script).sort((one, other) => placeOf(one) - placeOf(other))]),
  dependOn: "functions",
});

const functions = {
  ...shared,
  name: "functions",
  entry: {
    functions: oneEntry(filesIn("functions.js"), comeLater("functionsLater.js", "functionsTables.js")),
    functionsLater: laterEntry("functionsLater.js", TELL_NOTES),
    functionsTables: laterEntry("functionsTables.js", TELL_WORDS),
  },
  // they run on a page, in a worker and in Node alike
  output: { ...shared.output, globalObject: "globalThis", publicPath: "", chunkLoadingGlobal: PARTS },
  module: {
    rules: [
      ...shared.module.rules,
      { resource: isLater, loader: path.resolve("scripts/associateLater.js"), options: { from: LATER } },
      without(WORDS, WITHOUT_WORDS),
      without(["width", "hint", "choices"], WITHOUT_LOOKS),
      withoutLaterNotes,
    ],
  },
  plugins: [
    new CustomFunctionsMetadataPlugin({ output: "functions.json", input: functionFiles }),
    new DefinePlugin({ WORDS_OF_ROWS: JSON.stringify(wordsOfRows()) }),
    new FinishMetadataPlugin(),
    new OneVersionPlugin(),
  ],
};

const pages = {
  ...shared,
  name: "pages",
  entry: { taskpane: "./src/taskpane/main.tsx", local: "./src/hosts/local/main.ts" },
  // a part that a page loads later is of the page's own version or none
  output: { ...shared.output, chunkFilename: "[id].[contenthash].js" },
  module: { rules: [...shared.module.rules, withoutLaterNotes] },
  plugins: [
    pane("taskpane.html", true),
    pane("pane.html", false),
    new HtmlPlugin({
      filename: "index.html",
      template: "src/hosts/local/index.html",
      chunks: ["local"],
      scriptLoading: "defer",
    }),
    new CopyPlugin({
      patterns: [
        "manifest.xml",
        "assets/*.png",
        ...vendorFiles.map(({ from, to }) => ({ from: path.resolve("node_modules", from), to })),
        ...STYLES.map(({ from, to }) => ({ from: path.resolve("node_modules", from), to, transform: usedOnPage })),
      ],
    }),
  ],
};

function placeOf(file) {
  const place = FIRST.indexOf(path.basename(file));
  return place === -1 ? FIRST.length : place;
}

/** The font of the signs lies in vendor/, as it was installed. */
function usedOnPage(css) {
  return usedStyles(css.toString(), wordsOfPage()).replaceAll("../fonts/", "vendor/font-awesome/fonts/");
}

/** One entry that imports all files: of several ones each would be a module of its own, which the bundle pays for. */
function oneEntry(files, also = "") {
  return `data:text/javascript,${files.map((file) => `import ${placeIn(file)};`).join("")}${also}`;
}

/** The words that hand the functions of later files to the host; a function's file is named for it. */
function comeLater(...scripts) {
  const files = scripts.map((script) => [
    `${script}?${PARTS}`,
    filesIn(script).map((file) => path.basename(file, ".ts").toUpperCase()),
  ]);
  return `import { comeLater } from ${placeIn(LATER)};comeLater(...${JSON.stringify(files)});`;
}

function isLater(file) {
  return functionFiles.includes(file) && scriptOf(file) !== "functions.js";
}

/** Leaves properties of these names out of the rows of tables. */
function without(names, tables) {
  return { include: tables, loader: path.resolve("scripts/withoutProperties.js"), options: { names } };
}

function referenceFile(name) {
  return path.resolve("src/reference", `${name}.ts`);
}

function placeIn(file) {
  return `"./${path.relative(__dirname, file).split(path.sep).join("/")}"`;
}

/** The same pane twice: inside Excel with office.js and the cell functions, beside the local sheet without either. */
function pane(filename, office) {
  return new HtmlPlugin({
    filename,
    template: "src/taskpane/taskpane.html",
    chunks: ["taskpane"],
    scriptLoading: "defer",
    templateParameters: { office },
  });
}

module.exports = [functions, pages];
