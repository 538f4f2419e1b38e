// A loader of webpack for our own files: the language as every host reads it, without types and tags. Each file by itself, in a thread of its
// own; `npm run types` is what checks the types.
const swc = require("@swc/core");

module.exports = function withoutTypes(code) {
  const done = this.async();
  const options = {
    filename: this.resourcePath,
    sourceFileName: this.resourcePath,
    configFile: false,
    swcrc: false,
    sourceMaps: true,
    jsc: {
      parser: { syntax: "typescript", tsx: this.resourcePath.endsWith("x") },
      target: "es2020",
      transform: { react: { runtime: "automatic" }, useDefineForClassFields: false },
    },
  };
  swc.transform(code, options).then(({ code, map }) => done(null, code, JSON.parse(map)), done);
};
