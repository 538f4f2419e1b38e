// A loader of webpack for a function of a later file: what it calls CustomFunctions, to hand itself over, is ours instead of the host's.
module.exports = function associateLater(code) {
  const from = this.utils.contextify(this.context, this.getOptions().from); // it stands in the source map, which is the same wherever one builds
  return `${code}\nimport { CustomFunctions } from ${JSON.stringify(from)};\n`;
};
